#!/bin/sh
# clang-tidy on every source of the engine and the window. $1: source folder, $2: build folder with compile_commands.json.
set -eu
cd "$1"
find engine gui -name '*.cpp' | sort | xargs -P 2 -n 3 clang-tidy -p "$2" --quiet
