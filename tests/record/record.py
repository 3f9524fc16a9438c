#!/usr/bin/python3
"""Holds the program to the forces that version 0.5.0's mechanics gives thirteen demo details and 100 drawn at random, each
under one push and one stiffness (one_state.py).

record.py PROGRAM check 2/8          compares the second of eight parts of all details
record.py PROGRAM check 'drawn-01*'  compares the details of these names
record.py PROGRAM write              makes the record anew, with the program whose numbers shall be kept

`numbers/` holds one file a detail (see reduced.py), `keys.txt` every name in the JSON with the kinds of its value,
`differences.md` what may differ because a fault was mended.
"""
import fnmatch
import json
import pathlib
import re
import subprocess
import sys

from reduced import compare, reduced

HERE = pathlib.Path(__file__).parent


def details():
    return sorted(path for path in (HERE / "details").glob("*.xml") if "<base-detail" in path.read_text(encoding="utf-8"))


def review(program, path):
    ran = subprocess.run([program, "check", "--json", path], capture_output=True, text=True)
    if ran.returncode not in (0, 1):
        sys.exit(f"{path}: exit status {ran.returncode}\n{ran.stderr}")
    return json.loads(ran.stdout)


def kind(value):
    return {dict: "object", list: "array", str: "text", bool: "yes-no", type(None): "null"}.get(type(value), "number")


def objects(value, path=""):
    """Every object in the document with its path."""
    if isinstance(value, dict):
        yield path, value
        for key, inside in value.items():
            yield from objects(inside, f"{path}.{key}" if path else key)
    elif isinstance(value, list):
        for inside in value:
            yield from objects(inside, path + "[]")


def recorded_keys():
    keys = {}
    for text in (HERE / "keys.txt").read_text(encoding="utf-8").splitlines():
        path, key, *kinds = text.split()
        keys.setdefault(path, {})[key] = kinds
    return keys


def wrong_keys(document, keys):
    for path, found in objects(document):
        for key, kinds in keys.get(path or ".", {}).items():
            if key not in found:
                yield f"{path or 'the document'} has no {key}"
            elif kind(found[key]) not in kinds:
                yield f"{path or 'the document'}: {key} is {kind(found[key])}, was {' or '.join(kinds)}"


def mended():
    """Lines of differences.md: - `detail` `label`: reason. Both are patterns as of a shell."""
    text = (HERE / "differences.md").read_text(encoding="utf-8")
    return re.findall(r"^- `([^`]+)` `([^`]+)`: \S", text, re.MULTILINE)


def chosen(paths, choice):
    if re.fullmatch(r"\d+/\d+", choice):
        part, parts = map(int, choice.split("/"))
        return paths[part - 1::parts]
    return [path for path in paths if fnmatch.fnmatchcase(path.stem, choice)]


def check(program, choice):
    keys, allowed, failures = recorded_keys(), mended(), 0
    paths = details()
    names = {path.stem for path in paths}
    for record in (HERE / "numbers").glob("*.txt"):
        if record.stem not in names:
            sys.exit(f"{record}: its detail is gone")
    for path in chosen(paths, choice):
        record = HERE / "numbers" / (path.stem + ".txt")
        document = review(program, path)
        lines = record.read_text(encoding="utf-8").splitlines()
        found = [("keys", sentence) for sentence in sorted(set(wrong_keys(document, keys)))]
        found += compare(lines, reduced(document))
        for label, sentence in found:
            if any(fnmatch.fnmatchcase(path.stem, one) and fnmatch.fnmatchcase(label, about) for one, about in allowed):
                continue
            failures += 1
            print(f"{path.stem}: {label}: {sentence}")
    if failures:
        sys.exit(f"{failures} differences from version 0.5.0 that differences.md does not list")


def write(program):
    folder = HERE / "numbers"
    folder.mkdir(exist_ok=True)
    for old in folder.glob("*.txt"):
        old.unlink()
    keys = {}
    for path in details():
        document = review(program, path)
        (folder / (path.stem + ".txt")).write_text("\n".join(reduced(document)) + "\n", encoding="utf-8")
        for place, found in objects(document):
            for key, value in found.items():
                keys.setdefault((place or ".", key), set()).add(kind(value))
    text = "".join(f"{place} {key} {' '.join(sorted(kinds))}\n" for (place, key), kinds in keys.items())
    (HERE / "keys.txt").write_text(text, encoding="utf-8")


program, action = sys.argv[1], sys.argv[2]
if action == "write":
    write(program)
else:
    check(program, sys.argv[3])
