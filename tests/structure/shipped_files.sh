#!/bin/sh
# Every XML file in data/ fits the schema of its kind, which its namespace names.
set -eu
cd "$1/data"
status=0
for file in $(find . -name '*.xml' | sort); do
    kind=$(grep -o 'urn:toehold:[a-z-]*' "$file" | head -n 1 | cut -d: -f3)
    xmllint --nonet --noout --schema "schema/$kind.xsd" "$file" || status=1
done
exit $status
