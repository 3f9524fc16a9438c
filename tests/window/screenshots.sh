#!/bin/sh
# The pictures of the window in gui/screenshots, by the program of tests. $1: build folder, in which test_window is built.
set -eu
cd "$(dirname "$0")/../.."
folder=$PWD/gui/screenshots
mkdir -p "$folder"
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
TOEHOLD_SCREENSHOTS=$folder LC_ALL=C.UTF-8 LANGUAGE= NO_AT_BRIDGE=1 GTK_A11Y=none GSETTINGS_BACKEND=memory HOME=$home \
    XDG_CONFIG_HOME=$home XDG_STATE_HOME=$home XDG_DATA_HOME=$home XDG_CACHE_HOME=$home \
    xvfb-run -a -s "-screen 0 1400x900x24 -nolisten tcp" "$1/tests/test_window" "[.screenshots]"
ls -l "$folder"
