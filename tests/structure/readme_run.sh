#!/bin/sh
# The run that README shows is what the program prints. $1: source folder, $2: the program.
# Called as `readme_run.sh SOURCE PROGRAM write`, it puts the present output into README instead.
set -eu
cd "$1"
detail=data/demo/heron-landing-short-lags-in-flat-block.xml
shown=$(mktemp)
real=$(mktemp)
trap 'rm -f "$shown" "$real"' EXIT
"$2" check "$detail" >"$real" || [ $? -eq 1 ]
if [ "${3:-}" = write ]; then
    awk -v real="$real" -v command="\$ toehold check $detail" '
        inside && /^```$/ { inside = 0 }
        !inside { print }
        $0 == command { inside = 1; while ((getline line < real) > 0) print line }' README.md >"$shown"
    cp "$shown" README.md
    exit 0
fi
awk -v command="\$ toehold check $detail" '
    inside && /^```$/ { exit }
    inside { print }
    $0 == command { inside = 1 }' README.md >"$shown"
diff "$shown" "$real"
