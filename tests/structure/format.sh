#!/bin/sh
# Every source is as clang-format would write it.
set -eu
cd "$1"
find engine gui tests -name '*.cpp' -o -name '*.h' -o -name '*.c' | sort | xargs clang-format --dry-run -Werror
