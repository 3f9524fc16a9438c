#!/bin/sh
# clang-tidy on every source of the engine and the window. $1: source folder, $2: build folder with compile_commands.json.
# Most of the time goes into the headers of libraries, so a room's files are read some at a time as one; files that do not
# go together (they use one name for two things) are read one by one.
# The static analyzer goes shallow, which takes a tenth of its time; with TIDY_DEEP=1 in the environment it goes deep.
set -eu
root=$(cd "$1" && pwd)
build=$(cd "$2" && pwd)
here=$(cd "$(dirname "$0")" && pwd)
cd "$root"
batches=$(mktemp -d)
trap 'rm -rf "$batches"' EXIT
# A batch is of one folder of the build: its files are compiled alike. Each check has small helpers of its own, many of
# one name.
find engine/* gui/* -prune -type d | while read -r room; do
    together=10
    [ "$room" != engine/checks ] || together=5
    find "$room" -name '*.cpp' | sort | split -a 3 -l "$together" - "$batches/$(echo "$room" | tr / -)-"
done
find engine gui -maxdepth 1 -name '*.cpp' | sort | split -l 1 - "$batches/top-"
ls "$batches"/* | xargs -P 2 -n 1 "$here/tidy_batch.sh" "$root" "$build"
