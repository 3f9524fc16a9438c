#!/usr/bin/python3
"""Faults that an audit of the verdicts found in version 0.5.0, and the tests that would have failed on it.

audit.py ROOT        fails where a line has no case with its tag, or a case a tag that is no line
audit.py ROOT list   prints every line with its cases

A case carries the line's tag beside its others: TEST_CASE("...", "[closed-form][A6]"); `test_checks "[A6]"` runs it.
"""
import pathlib
import re
import sys

LINES = {
    # The verdict was ADEQUATE where it must not be.
    "A1": "loads of the file took the place of the code's",
    "A2": "plates that cannot be built passed",
    "A3": "too little corrosion protection passed, and aluminum on treated wood",
    "A4": "a weld below the least size was a note",
    "A5": "filler and temper of aluminum were not matched",
    "A6": "no shear at fastened ends, NDS 3.4.3.3",
    "A7": "no 5 in limit across the grain, NDS 12.5.1.3",
    "A8": "tips of lag screws from 5/8 in up",
    "A9": "giving framing was solved at nominal stiffness alone",
    "A10": "joists were judged without the deck's own load",
    "A11": "weld on the nominal wall, without the plate's flexibility",
    "A12": "oversize holes passed without a word",
    "A13": "wind took the live load's factors",
    "A14": "a time effect factor that the standard does not have",
    "A15": "the boards' thickness was left out of the framing's statics",
    "A16": "holes named like other parts lost their checks",
    "A17": "files that cannot be read were passed over in a folder",
    "A18": "slots beside the post, limits met exactly, moves of 0.001 in",
    "A19": "clause numbers",
    # The verdict was INADEQUATE where an engineer accepts.
    "B1": "one joist's screws held the whole push",
    "B2": "bearing at the elastic peak",
    "B3": "torsion on two thirds of the shear strength, added linearly",
    "B4": "every lumber counted as incised",
    "B5": "composite boards could not pass",
    "B6": "round flanges failed on a strip of no width",
    "B7": "plate strips alone, without the field and the yield lines",
    "B8": "the wall beside a weld in shear whatever the force's direction",
    "B9": "a tube's diagonal by the linear sum",
    "B10": "aluminum and stainless on the elastic modulus, slender walls without a number",
    "B11": "bolt shear always on the root, end distances of angles",
    "B12": "bed and anchors halved and doubled independently",
    "B13": "movement beyond h/12 failed",
    "B14": "F593 by size, southern pine's size factor, light loads below the axis",
    "B15": "a row over the seam of a pair was refused without advice",
}
CASE = re.compile(r'TEST_CASE\(\s*"((?:[^"\\]|\\.)*)"\s*,\s*"([^"]*)"')
TAG = re.compile(r"\[([AB]\d+)\]")


def tagged(root):
    """Of every tag, its cases as `file: name`."""
    found = {}
    for path in sorted((root / "tests").rglob("*.cpp")):
        for name, tags in CASE.findall(path.read_text(encoding="utf-8")):
            for tag in TAG.findall(tags):
                found.setdefault(tag, []).append(f"{path.relative_to(root / 'tests')}: {name}")
    return found


def main(arguments):
    found = tagged(pathlib.Path(arguments[0]))
    if arguments[1:] == ["list"]:
        for tag, words in LINES.items():
            print(f"{tag} {words}", *found.get(tag, []), sep="\n    ")
    wrong = [f"no test carries [{tag}]: {words}" for tag, words in LINES.items() if tag not in found]
    wrong += [f"[{tag}] is no line of the audit: {found[tag][0]}" for tag in sorted(set(found) - set(LINES))]
    sys.exit("\n".join(wrong) if wrong else 0)


main(sys.argv[1:])
