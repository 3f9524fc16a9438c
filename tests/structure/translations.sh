#!/bin/sh
# Every word that the window shows stands translated in every catalog of data/locale. $1: source folder.
set -eu
cd "$1"
words=$(mktemp)
trap 'rm -f "$words"' EXIT
data/locale/update.sh "$words"
for catalog in data/locale/*.po; do
    msgcmp "$catalog" "$words"
done
