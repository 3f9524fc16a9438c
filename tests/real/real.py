#!/usr/bin/python3
"""Everyday details, each with an engineer's hand verdict at its head and a row in verdicts.csv, held against the program.

real.py PROGRAM NAME   reviews tests/real/NAME.xml with PROGRAM (evaluate.cpp) and compares verdict, first cause and
                       ratios with the row
real.py PROGRAM        compares all of them, and prints what the program says beside what the hand says
real.py table          the table itself: a row a file, enough of them, and the builds that must hold

A row of verdicts.csv holds
  verdict       ADEQUATE, INADEQUATE or INCOMPLETE
  first cause   ids of checks or findings, with | between those that the hand cannot tell apart. ADEQUATE: the check
                nearest its limit; INADEQUATE: the first cause, a check or the finding that comes before the checks;
                INCOMPLETE: what is not specified. `guard-load*` is any id that begins so.
  ratios        check=low..high, the largest ratio of that check over all its parts: a hand ratio leaves room for the
                share of stiffness, the range of it and the direction of the push, which the hand does not see
  and the three once more where the finer computation is believed against the hand; the file then says why under ARGUED.
"""
import csv
import fnmatch
import json
import pathlib
import subprocess
import sys

HERE = pathlib.Path(__file__).parent
LEAST_DETAILS = 24
MUST_HOLD = (
    "dwelling-full-depth-blocks",  # a steel post on a dwelling's wood deck
    "dwelling-aluminum-on-composite-full-depth",  # an aluminum post on composite boards
    "dwelling-4x4-post-in-shoe",  # a 4x4 wood post in a shoe
    "public-full-depth-6-ft",  # a public deck at 42 in with 50 plf over 6 ft
)


def rows():
    with open(HERE / "verdicts.csv", newline="", encoding="utf-8") as table:
        return {row[0]: row[1:] for row in list(csv.reader(table))[1:]}


def held(row):
    """Verdict, cause and ratios to hold the program to: the hand's, or the argued ones where there are any."""
    hand, argued = row[:3], row[3:]
    return [later or first for first, later in zip(hand, argued)]


def review(program, name):
    ran = subprocess.run([program, HERE / f"{name}.xml"], capture_output=True, text=True)
    if ran.returncode != 0:
        sys.exit(f"{name}: exit status {ran.returncode}\n{ran.stderr}")
    return json.loads(ran.stdout)


def ids(found, key, value):
    return sorted({one["id"] for one in found if one[key] in value})


def causes(reviewed):
    """What the program blames, as the column `first cause` means it."""
    checks, findings = reviewed["checks"], reviewed["findings"]
    if reviewed["verdict"] == "adequate":
        return [reviewed["governing"]["check"]]
    if reviewed["verdict"] == "incomplete":
        return ids(checks, "status", ("missing_evidence",)) + ids(findings, "severity", ("missing",))
    if reviewed["first_finding"]:
        return [reviewed["first_finding"]["id"]]
    return [reviewed["first_cause"]["check"]]


def largest_ratios(reviewed):
    largest = {}
    for one in reviewed["checks"]:
        ratio = float("inf") if one["ratio"] is None else one["ratio"]
        largest[one["id"]] = max(ratio, largest.get(one["id"], 0.0))
    return largest


def expected_ratios(text):
    for one in text.split():
        check, between = one.split("=")
        low, high = between.split("..")
        yield check, float(low), float(high)


def differences(reviewed, verdict, cause, ratios):
    said = reviewed["verdict"].upper()
    if said != verdict:
        yield f"verdict {said}, by hand {verdict}"
    found = causes(reviewed)
    accepted = cause.split("|")
    if verdict == said and not any(fnmatch.fnmatch(one, pattern) for one in found for pattern in accepted):
        yield f"first cause {', '.join(found) or 'none'}, by hand {cause}"
    largest = largest_ratios(reviewed)
    for check, low, high in expected_ratios(ratios):
        if check not in largest:
            yield f"{check} was not checked"
        elif not low <= largest[check] <= high:
            yield f"{check} at {largest[check]:.2f}, by hand {low:.2f} to {high:.2f}"


def check_table():
    wrong = []
    files, table = {path.stem for path in HERE.glob("*.xml")}, rows()
    wrong += [f"{name} has no row" for name in sorted(files - set(table))]
    wrong += [f"{name} has no file" for name in sorted(set(table) - files)]
    if len(files) < LEAST_DETAILS:
        wrong.append(f"{len(files)} details; at least {LEAST_DETAILS} were promised")
    wrong += [f"{name} must hold" for name in MUST_HOLD if table.get(name, [""])[0] != "ADEQUATE"]
    for path in sorted(HERE.glob("*.xml")):
        text = path.read_text(encoding="utf-8")
        if "HAND VERDICT" not in text:
            wrong.append(f"{path.stem} has no hand verdict")
        if any(table.get(path.stem, [])[3:]) != ("ARGUED" in text):
            wrong.append(f"{path.stem}: an argued row needs its argument in the file, and the other way round")
    return wrong


def check_all(program):
    bad = 0
    for name, row in sorted(rows().items()):
        reviewed = review(program, name)
        found = list(differences(reviewed, *held(row)))
        bad += bool(found)
        print(f"{'differs' if found else 'agrees '} {name}: {reviewed['verdict']}, {', '.join(causes(reviewed))}", *found, sep="\n    ")
    sys.exit(f"{bad} differ" if bad else 0)


def main(arguments):
    if arguments == ["table"]:
        wrong = check_table()
    elif len(arguments) == 1:
        check_all(arguments[0])
        return
    else:
        program, name = arguments
        wrong = [f"{name}: {one}" for one in differences(review(program, name), *held(rows()[name]))]
    sys.exit("\n".join(wrong) if wrong else 0)


if __name__ == "__main__":
    main(sys.argv[1:])
