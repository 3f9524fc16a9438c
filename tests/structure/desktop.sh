#!/bin/sh
# The desktop entry passes the standard's validator, its file types and its icon are well-formed XML, and every type the
# entry opens is described. $1: source folder.
set -eu
cd "$1/gui/packaging"
desktop-file-validate toehold.desktop
xmllint --nonet --noout toehold.xml toehold.svg
for type in $(sed -n 's/^MimeType=//p' toehold.desktop | tr ';' ' '); do
    grep -qF "type=\"$type\"" toehold.xml || { echo "$type is not described in toehold.xml" >&2; exit 1; }
done
