#!/bin/sh
# The runs that README shows are what the program prints. $1: source folder, $2: the program.
# Called as `readme_run.sh SOURCE PROGRAM write`, it puts the present output into README instead.
set -eu
cd "$1"
toehold=$2
shown=$(mktemp)
real=$(mktemp)
trap 'rm -f "$shown" "$real"' EXIT
status=0
for input in data/demo data/demo/heron-landing-short-lags-in-flat-block.xml; do
    command="\$ toehold check $input"
    "$toehold" check "$input" >"$real" 2>/dev/null || [ $? -eq 1 ]
    if [ "${3:-}" = write ]; then
        awk -v real="$real" -v command="$command" '
            inside && /^```$/ { inside = 0 }
            !inside { print }
            $0 == command { inside = 1; while ((getline line < real) > 0) print line }' README.md >"$shown"
        cp "$shown" README.md
        continue
    fi
    awk -v command="$command" '
        inside && /^```$/ { exit }
        inside { print }
        $0 == command { inside = 1 }' README.md >"$shown"
    diff "$shown" "$real" || status=1
done
exit $status
