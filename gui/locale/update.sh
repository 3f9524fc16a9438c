#!/bin/sh
# Gathers the window's English words into toehold.pot and brings the translations up to it; with an argument, into that
# file, and leaves the translations alone. Words that the rooms without a toolkit show are marked TOEHOLD_MARK there.
set -eu
words=${1:-}
cd "$(dirname "$0")/.."
find window editing desk solving -name '*.cpp' -o -name '*.h' | sort |
    xargs xgettext --from-code=UTF-8 --language=C++ --sort-by-file --no-wrap --add-comments=TRANSLATOR \
        --keyword=_ --keyword=wxTRANSLATE --keyword=wxGetTranslation --keyword=wxPLURAL:1,2 --keyword=TOEHOLD_MARK \
        --package-name=toehold --copyright-holder='' --output="${words:-locale/toehold.pot}"
[ -z "$words" ] || exit 0
for translation in locale/*.po; do
    [ -e "$translation" ] || continue
    msgmerge --quiet --update --backup=none --no-wrap --sort-by-file "$translation" locale/toehold.pot
done
