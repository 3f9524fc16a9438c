#!/bin/sh
# clang-tidy on the files that one list names. $1: source folder, $2: build folder, $3: the list.
set -eu
root=$1
build=$2
list=$3
cd "$root"
analyzer="--extra-arg=-Xclang --extra-arg=-analyzer-config --extra-arg=-Xclang --extra-arg=mode=shallow"
[ -z "${TIDY_DEEP:-}" ] || analyzer=""

# What the compiler is told in the room of the list's first file, less the file itself.
first=$(head -n 1 "$list")
case $first in
    engine/cli/*) target=toehold ;;
    engine/headers/*) target=toehold_common_headers ;;
    */*/*) target=toehold_$(echo "$first" | cut -d / -f 2) ;;
    *) target=toehold-window ;;
esac
flags=$(grep -F "\"command\"" "$build/compile_commands.json" | grep -F "CMakeFiles/$target.dir/" | grep -vF c++-header | head -n 1 |
    sed -e 's/.*"command": "//' -e 's/",$//' -e 's/\\\\/\\/g' -e 's/\\"/"/g' -e 's/^[^ ]*ccache //' -e 's/^[^ ]* //' \
        -e 's/ -o [^ ]* -c .*//' -e 's/-Winvalid-pch -include [^ ]*//')
if [ -z "$flags" ]; then
    echo "$target is not compiled in $build" >&2
    exit 1
fi

# tidy FILE OPTION: as the first file is compiled; what it says goes to the standard output.
tidy() {
    eval "clang-tidy --config-file=\"$root/.clang-tidy\" $2 --quiet $analyzer \"$1\" -- $flags" 2>/dev/null
}

count=$(wc -l <"$list")
if [ "$count" -eq 1 ]; then
    tidy "$first" ""
    exit
fi
sed "s|.*|#include \"$root/&\"|" "$list" >"$list.cpp"
# A file's local may bear the name of another file's constant; g++ warns of shadows where they are real.
flags="$flags -Wno-shadow"
if tidy "$list.cpp" --checks=-bugprone-suspicious-include >/dev/null; then
    exit 0
fi
# What is found may come of reading them together: each half is read by itself.
split -l $(((count + 1) / 2)) "$list" "$list-half-"
status=0
for half in "$list-half-"*; do
    "$0" "$root" "$build" "$half" || status=1
done
exit $status
