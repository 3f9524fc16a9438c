#!/usr/bin/python3
"""The shipped situations of posts fastened to the side of a member, held to what their notes say.

situations.py PROGRAM NAME   reviews data/situations/side/NAME.xml with PROGRAM (../real/evaluate.cpp) and compares
                             verdict and first cause with the row of verdicts.csv
situations.py PROGRAM        compares all of them, and prints what the program says
situations.py table          the table itself: fourteen files, a row a file, half of them not to be built, and each note
                             says that it is invented and which of the two it is

A row of verdicts.csv holds the file's name, ADEQUATE, INADEQUATE or INCOMPLETE, and the first cause as in
../real/verdicts.csv: for what is to be built the check nearest its limit; else what the note gives as the reason.
"""
import csv
import pathlib
import sys
import xml.etree.ElementTree

HERE = pathlib.Path(__file__).parent
SITUATIONS = HERE.parents[1] / "data" / "situations" / "side"
sys.path.insert(0, str(HERE.parent / "real"))
import real  # noqa: E402

COUNT = 14
INVENTED = "Invented example."
BUILD, NOT_BUILD = "To be built so:", "Not to be built so:"


def rows():
    with open(HERE / "verdicts.csv", newline="", encoding="utf-8") as table:
        return {row[0]: row[1:] for row in list(csv.reader(table))[1:]}


def note_of(path):
    return xml.etree.ElementTree.parse(path).getroot().get("note", "")


def check_table():
    files, table = {path.stem: path for path in SITUATIONS.glob("*.xml")}, rows()
    wrong = [f"{name} has no row" for name in sorted(set(files) - set(table))]
    wrong += [f"{name} has no file" for name in sorted(set(table) - set(files))]
    if len(files) != COUNT:
        wrong.append(f"{len(files)} situations, not {COUNT}")
    refused = sum(row[0] != "ADEQUATE" for row in table.values())
    if 2 * refused != len(table):
        wrong.append(f"{refused} of {len(table)} are not to be built; half were promised")
    for name in sorted(set(files) & set(table)):
        claim = BUILD if table[name][0] == "ADEQUATE" else NOT_BUILD
        if not note_of(files[name]).startswith(f"{INVENTED} {claim}"):
            wrong.append(f"{name}: its note does not begin with '{INVENTED} {claim}'")
    return wrong


def differences(program, name, row):
    reviewed = real.review(program, SITUATIONS / name)
    return reviewed, [one.replace("by hand", "by its note") for one in real.differences(reviewed, *row, "")]


def check_all(program):
    bad = 0
    for name, row in sorted(rows().items()):
        reviewed, found = differences(program, name, row)
        bad += bool(found)
        said = f"{reviewed['verdict']}, {', '.join(real.causes(reviewed))}"
        print(f"{'differs' if found else 'agrees '} {name}: {said}", *found, sep="\n    ")
    sys.exit(f"{bad} differ" if bad else 0)


def main(arguments):
    if arguments == ["table"]:
        wrong = check_table()
    elif len(arguments) == 1:
        check_all(arguments[0])
        return
    else:
        program, name = arguments
        wrong = [f"{name}: {one}" for one in differences(program, name, rows()[name])[1]]
    sys.exit("\n".join(wrong) if wrong else 0)


if __name__ == "__main__":
    main(sys.argv[1:])
