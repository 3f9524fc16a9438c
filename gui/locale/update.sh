#!/bin/sh
# Gathers the window's English words into toehold.pot and brings the translations up to it. Words that the rooms
# without a toolkit show are marked TOEHOLD_MARK there.
set -eu
cd "$(dirname "$0")/.."
find window editing desk solving -name '*.cpp' -o -name '*.h' | sort |
    xargs xgettext --from-code=UTF-8 --language=C++ --sort-by-file --no-wrap --add-comments=TRANSLATOR \
        --keyword=_ --keyword=wxTRANSLATE --keyword=wxGetTranslation --keyword=wxPLURAL:1,2 --keyword=TOEHOLD_MARK \
        --package-name=toehold --copyright-holder='' --output=locale/toehold.pot
for translation in locale/*.po; do
    [ -e "$translation" ] || continue
    msgmerge --quiet --update --backup=none --no-wrap --sort-by-file "$translation" locale/toehold.pot
done
