#!/bin/sh
# A room of the engine includes only itself and the rooms before it; the window includes only public rooms; no engine
# file includes a GUI header. Prints each include that breaks this, and fails if there is one.
set -eu
cd "$1"
rooms="units format mechanics resistance model catalog xml demand job checks review search study wording export drawing paper plugin cli"
public="units format model catalog xml demand job checks review search study wording export drawing paper"
status=0

# allowed FOLDER "ROOMS": every quoted include of the folder that has a path must start with one of the rooms.
allowed() {
    pattern=$(echo "$2" | tr -s ' ' '|' | sed 's/^|//')
    if grep -rnE '^#include "[a-z_]+/' "$1" --include='*.h' --include='*.cpp' | grep -vE "#include \"($pattern)/"; then
        echo "$1 may include only: $2" >&2
        status=1
    fi
}

below=""
for room in $rooms; do
    case $room in
        # A standard's formula knows no mechanics solver, though it may measure a shape; a solver knows no standard.
        mechanics) allowed engine/mechanics "mechanics" ;;
        resistance) allowed engine/resistance "units mechanics/plane resistance" ;;
        *) allowed "engine/$room" "${below# } $room" ;;
    esac
    below="$below $room"
done
gui_below=""
for room in editing solving session window; do
    allowed "gui/$room" "$public$gui_below $room"
    gui_below="$gui_below $room"
done

if grep -rnE '#include *[<"]wx/' gui/editing gui/solving gui/session; then
    echo "a room of the window that needs no toolkit includes one" >&2
    status=1
fi

if grep -rnE '#include *[<"]wx/' engine; then
    echo "the engine includes a GUI header" >&2
    status=1
fi
exit $status
