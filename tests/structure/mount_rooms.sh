#!/bin/sh
# Rooms that serve every kind of mount name none: a second kind must not touch them. Prints each line that does, and
# fails if there is one. Plates as documents of their own (listed, validated) are no mount.
set -eu
cd "$1"
kinds='on_deck|PlateOnDeck|PlateReference|plate_on_deck|on_side|SideFastened|side_fastened'
shapes='model::Plate\b|PlateField|PlateAccuracy|model::Layers|model::Weld\b'
status=0

# refuse PATTERN FILES...: no line of the files, comments left out, may match.
refuse() {
    pattern=$1
    shift
    if grep -nE "$pattern" "$@" /dev/null | grep -vE '^[^:]*:[0-9]+: *//'; then status=1; fi
}

sources() { for room in "$@"; do [ ! -d "$room" ] || find "$room" -name '*.h' -o -name '*.cpp' | sort; done; }

refuse "$kinds|$shapes" $(sources engine/review engine/export engine/output engine/wording engine/paper/layout gui/solving)
refuse "$kinds" $(sources engine/cli gui/editing/document gui/session gui/window)
refuse "$kinds" gui/editing/document.h gui/editing/fields.h gui/editing/fields/fields.cpp gui/editing/handles.h gui/editing/edits.h \
    gui/editing/hand_tools.h gui/editing/sheet_words.h gui/editing/picked.h gui/editing/snap.h
[ $status = 0 ] || echo "these rooms serve every mount and may not name one" >&2
exit $status
