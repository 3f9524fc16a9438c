#!/bin/sh
# The papers and printed reviews that README links, made by the program: `sample_papers.sh ROOT TOEHOLD` fails where their words are no longer
# the program's, `sample_papers.sh ROOT TOEHOLD write` makes them anew, with pictures of their pages. The report's words
# hold residuals, which differ from build to build: of it only the headings are compared.
set -eu
cd "$1"
toehold=$2
demo=data/demo
kept=data/papers
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
export TOEHOLD_DATA="$PWD/data"
holding=$demo/heron-landing-lags-in-deep-blocks.xml
failing=$demo/heron-landing-short-lags-in-flat-block.xml
project=data/projects/heron-landing-three-posts.xml
wishes="--date 2026-11-25"

# check INPUT NAME
check() { "$toehold" check "$1" >"$made/$2.txt" 2>/dev/null || [ $? -eq 1 ]; }
check $demo check-folder
check $failing check-review
check $project check-project

# shellcheck disable=SC2086  # options, split on purpose
{
    "$toehold" report $holding $wishes -o "$made/report.pdf"
    "$toehold" draw $holding $wishes -o "$made/shop-drawing.pdf"
    "$toehold" draw $holding $wishes -o "$made/cutting-file.dxf"
    "$toehold" site $holding $wishes -o "$made/site-sheet.pdf"
    "$toehold" compare $failing $holding $wishes -o "$made/comparison.pdf" || [ $? -eq 1 ]
    cp $failing $demo/heron-landing-plates.xml "$made"
    remarked=$made/${failing##*/}
    "$toehold" remark "$remarked" --about anchor-withdrawal --by "Reviewer" --date 2026-11-25 \
        "Thread reaches 1 1/2 in into the block. Longer screws, or bolts through?"
    "$toehold" remark "$remarked" --about member-end-connection --by "Reviewer" --date 2026-11-25 \
        "Nails in end grain alone. What holds the block when the push runs along the rail?"
    "$toehold" letter "$remarked" $wishes -o "$made/comment-letter.pdf"
} >"$made/said"

pictures() {
    for paper in shop-drawing site-sheet; do
        pdftoppm -r 75 -png -singlefile "$made/$paper.pdf" "$made/$paper"
    done
    pdftoppm -r 45 -png -l 4 "$made/report.pdf" "$made/page"
    montage "$made"/page*.png -tile 4x1 -geometry +4+4 -background '#808080' "$made/report.png"
}

if [ "${3:-}" = write ]; then
    pictures
    mkdir -p $kept
    for paper in report.pdf shop-drawing.pdf cutting-file.dxf site-sheet.pdf comparison.pdf comment-letter.pdf report.png \
        shop-drawing.png site-sheet.png check-folder.txt check-review.txt check-project.txt; do
        cp "$made/$paper" $kept/
    done
    exit 0
fi

status=0
# words FOLDER PAPER
words() {
    case $2 in
        report.pdf) pdftotext -layout "$1/$2" - | grep -E '^ *[0-9]+ +[A-Z]' | sed 's/[ 0-9]*$//' | sort -u ;;
        *.pdf) pdftotext -layout "$1/$2" - ;;
        *) cat "$1/$2" ;;
    esac
}
for paper in report.pdf shop-drawing.pdf cutting-file.dxf site-sheet.pdf comparison.pdf comment-letter.pdf \
    check-folder.txt check-review.txt check-project.txt; do
    words $kept $paper >"$made/kept.txt"
    words "$made" $paper >"$made/now.txt"
    if ! diff "$made/kept.txt" "$made/now.txt"; then
        echo "$kept/$paper is not what the program writes now: sh tests/structure/sample_papers.sh . TOEHOLD write" >&2
        status=1
    fi
done
exit $status
