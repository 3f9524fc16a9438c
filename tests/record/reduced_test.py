#!/usr/bin/python3
"""That the comparison sees what it must: any number 3e-9 off, a line lost, one too many; and not the order of lines."""
import math
import pathlib

from reduced import LARGEST_RESIDUAL, compare, label, numbers

folder = pathlib.Path(__file__).parent / "numbers"
lines = (folder / "heron-landing-over-a-joist.txt").read_text(encoding="utf-8").splitlines()
assert list(compare(lines, lines[::-1])) == []

disturbed = 0
for place, line in enumerate(lines):
    assert len(list(compare(lines, lines[:place] + lines[place + 1:]))) == 1, line
    assert len(list(compare(lines, lines + [line]))) == 1, line
    values = numbers(line).split()
    for index, value in enumerate(values):
        if value == "-":
            other = "0"
        elif value.endswith("<"):
            other = f"{10 * LARGEST_RESIDUAL}<"
        elif value.endswith("d"):
            other = f"{float(value[:-1]) + 2e-5:.12g}d"
        else:
            other = f"{float(value) + math.copysign(2e-9 + 3e-9 * abs(float(value)), float(value)):.12g}"
        changed = label(line) + " | " + " ".join(values[:index] + [other] + values[index + 1:])
        found = list(compare(lines, lines[:place] + [changed] + lines[place + 1:]))
        assert len(found) == 1 and found[0][0] == label(line), (line, index, found)
        disturbed += 1
assert disturbed > 80
assert list(compare(["bearing | 1 2 359.999999d"], ["bearing | 1 2 0d"])) == []
