#!/usr/bin/python3
"""Sizes of the source files. $1: source folder; with `figures` behind it, prints them.

Fails where a file is over 400 lines or where files include each other in a circle.
"""
import pathlib
import re
import statistics
import sys

MOST_LINES = 400


def sources(root):
    for room in ("engine", "gui"):
        for path in sorted((root / room).rglob("*")):
            if path.suffix in (".h", ".cpp"):
                yield path.relative_to(root).as_posix(), path.read_text(encoding="utf-8")


def includes(files):
    """Of every file, those of ours that it includes."""
    found = {}
    for name, text in files.items():
        room = name.split("/")[0]
        quoted = re.findall(r'^#include "([^"]+)"', text, re.MULTILINE)
        places = [(f"{room}/{one}", f"engine/{one}") for one in quoted]
        found[name] = [next(place for place in pair if place in files) for pair in places if set(pair) & set(files)]
    return found


def depths(included):
    """Of every file, how many files deep its includes go; the files of a circle, if there is one."""
    known, circle = {}, []

    def depth(name, above):
        if name in above:
            circle.extend(above[above.index(name):])
            return 0
        if name not in known:
            known[name] = max((1 + depth(one, above + [name]) for one in included[name]), default=0)
        return known[name]

    for name in included:
        depth(name, [])
    return known, circle


def main(root, figures):
    files = dict(sources(root))
    lines = {name: text.count("\n") for name, text in files.items()}
    deep, circle = depths(includes(files))
    wrong = [f"{name}: {count} lines, at most {MOST_LINES}" for name, count in lines.items() if count > MOST_LINES]
    if circle:
        wrong.append("these include each other: " + ", ".join(sorted(set(circle))))
    if figures:
        units = {}
        for name, count in lines.items():
            unit = name.rsplit(".", 1)[0]
            units[unit] = units.get(unit, 0) + count
        print(f"{len(files)} files, {sum(lines.values())} lines; a unit is a source with its header")
        print(f"{len(units)} units of {statistics.median(units.values()):.0f} lines in the middle")
        print(f"largest file {max(lines.values())} lines")
        print(f"includes {statistics.median(deep.values()):.0f} deep in the middle, {max(deep.values())} at most")
    for sentence in wrong:
        print(sentence)
    sys.exit(1 if wrong else 0)


main(pathlib.Path(sys.argv[1]), "figures" in sys.argv[2:])
