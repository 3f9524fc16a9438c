#!/bin/sh
# Every word that the window shows stands translated in every catalog of gui/locale. $1: source folder.
set -eu
cd "$1"
words=$(mktemp)
trap 'rm -f "$words"' EXIT
gui/locale/update.sh "$words"
for catalog in gui/locale/*.po; do
    msgcmp "$catalog" "$words"
done
