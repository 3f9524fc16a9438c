#!/bin/sh
# Gathers the English words into toehold.pot and brings the translations up to it; with an argument, into that file, and
# leaves the translations alone. Words of rooms without a toolkit are the literals of `phrase("...")`.
set -eu
words=${1:-}
cd "$(dirname "$0")/../.."
find engine gui -name '*.cpp' -o -name '*.h' | sort |
    xargs xgettext --from-code=UTF-8 --language=C++ --sort-by-file --no-wrap --add-comments=TRANSLATOR \
        --keyword=_ --keyword=wxTRANSLATE --keyword=wxGetTranslation --keyword=wxPLURAL:1,2  \
        --keyword=phrase --flag=phrase:1:no-c-format --package-name=toehold --copyright-holder='' --output="${words:-data/locale/toehold.pot}"
[ -z "$words" ] || exit 0
for translation in data/locale/*.po; do
    [ -e "$translation" ] || continue
    msgmerge --quiet --update --backup=none --no-wrap --sort-by-file "$translation" data/locale/toehold.pot
done
