#!/usr/bin/python3
"""Stock that holds: for each guard the least shipped plate, anchor and blocking, one detail each in data/stock.

stock.py PROGRAM make    starts each guard with `toehold new`, tries every shipped plate and block with `toehold size`,
                         takes the lightest steel, then the lowest cost, that leaves 3 % of every strength in hand, and
                         writes data/stock/*.xml and data/papers/stock-table.txt
stock.py PROGRAM check   reviews the details as they are: all adequate, none hides a caution it should have, the plates are
                         the shipped ones, and the table says what they are
"""
import functools
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

DATA = pathlib.Path(__file__).resolve().parents[2] / "data"
STOCK = DATA / "stock"
TABLE = DATA / "papers" / "stock-table.txt"
SPACE = "{urn:toehold:base-detail:1}"
PLATES_SPACE = "{urn:toehold:plates:1}"
MOST_RATIO = 0.97

# Height in, occupancy, spacing of the posts in ft. A public guard is 42 in high; that 36 in is refused is checked too.
GUARDS = [(36, "dwelling", None), (42, "dwelling", None), (42, "public", 4), (42, "public", 5), (42, "public", 6)]
TOO_LOW = (36, "public", 4)
ANCHORS = {"bolts": ("yes", ["bolt-3/8", "bolt-7/16"]), "lags": ("no", ["lag-3/8", "lag-7/16"])}
# Framing as shipped: southern pine No. 2, wet, joists 16 in apart over 8 ft, 5/4 boards.
PRESETS = {"dwelling": ("2x10", "2x2x3/16 steel"), "public": ("2x12", "2 1/2x2 1/2x3/16 steel")}


def run(program, *words, accept=(0,)):
    ran = subprocess.run([program, *map(str, words)], capture_output=True, text=True,
                         env=dict(os.environ, TOEHOLD_DATA=str(DATA), LANGUAGE="", LC_ALL="C.UTF-8"))
    if ran.returncode not in accept:
        sys.exit(f"{' '.join(map(str, words))}: exit status {ran.returncode}\n{ran.stderr}")
    return ran.stdout


def name_of(guard, anchors):
    height, occupancy, spacing = guard
    return f"guard-{height}-in-{occupancy}{f'-{spacing}-ft' if spacing else ''}-{anchors}"


def start(program, guard, access, file):
    height, occupancy, spacing = guard
    joists, post = PRESETS[occupancy]
    rail = ["--tributary-length", f"{spacing} ft"] if spacing else []
    run(program, "new", "-o", file, "--force", "--height", f"{height} in", "--occupancy", occupancy, "--post", post,
        "--decking", "wood-southern-pine", "--joist-size", joists, "--joist-spacing", "16 in", "--place", "between-joists",
        "--access-below", access, *rail)
    return joists


@functools.cache
def shipped_plates():
    """Rectangular steel ones by id."""
    found = {}
    for file in sorted((DATA / "plates").glob("*.xml")):
        for plate in ElementTree.parse(file).getroot().iter(f"{PLATES_SPACE}plate"):
            if plate.find(f"{PLATES_SPACE}rectangle") is not None and plate.get("metal") == "steel-a36":
                found[plate.get("id")] = plate
    return found


# Make


def ranges(joists, anchors):
    deep = joists.split("x")[1]
    shallower = {"10": "8", "12": "10"}[deep]
    words = ["plate=" + ",".join(shipped_plates()), "anchor=" + ",".join(anchors), "blocks=upright",
             f"block-size=4x{shallower},4x{deep}"]
    lags = anchors[0].startswith("lag")
    words += ["length=8,10,12", "backing=none"] if lags else ["backing=washer,3x1/4"]
    return [word for vary in words for word in ("--vary", vary)]


def fits(choices):
    """Each hole is 1/16 in over its anchor, or more."""
    hole = shipped_plates()[choices["plate"]].find(f"{PLATES_SPACE}hole").get("diameter")
    anchor = choices["anchor"].split()[0].split("-")[1]
    return inches_in(hole) >= inches_in(anchor) + 0.0625 - 1e-9


def least(outcome):
    holding = [one for one in outcome["holding"]
               if one["score"]["governing_ratio"] <= MOST_RATIO and fits(one["choices"])]
    if not holding:
        sys.exit(f"{outcome['file']}: no shipped plate holds")
    return min(holding, key=lambda one: (round(one["score"]["weight_lb"], 3), one["score"]["steel_cost"], one["candidate"]))


KEYS = {"plate": lambda label: f"plate={label}", "anchor": lambda label: f"anchor={label}",
        "length": lambda label: f"length={label.removesuffix(' in')}", "backing": lambda label: f"backing={label}",
        "blocks": lambda label: "blocks=" + label.split()[0]}


def narrowed(choices):
    """The ranges that hold this one candidate."""
    words = []
    for key, label in choices.items():
        if key in KEYS and label not in ("to suit", "screws"):
            words += ["--vary", KEYS[key](label)]
    block = choices["blocks"].split()[-1]
    return words + ["--vary", f"block-size={block}"]


def make_one(program, guard, kind, folder):
    access, anchors = ANCHORS[kind]
    name = name_of(guard, kind)
    base = folder / f"{name}.xml"
    joists = start(program, guard, access, base)
    outcome = json.loads(run(program, "size", base, "--json", *ranges(joists, anchors)))
    chosen = least(outcome)
    found = folder / name
    run(program, "size", base, "-o", found, *narrowed(chosen["choices"]))
    written = list(found.glob("*.xml"))
    if len(written) != 1:
        sys.exit(f"{name}: {len(written)} details instead of one")
    height, occupancy, spacing = guard
    title = f"Stock, {height} in guard, {occupancy}{f', posts {spacing} ft apart' if spacing else ''}, {kind}"
    note = ("Invented framing. The least of the shipped plates, anchors and blocks that holds with 3 % of every strength "
            "in hand; its hardware is not chosen yet.")
    text = written[0].read_text(encoding="utf-8")
    text = re.sub(r' name="[^"]*" note="[^"]*"', f' name="{title}"\n             note="{note}"', text, count=1)
    (STOCK / f"{name}.xml").write_text(text, encoding="utf-8")
    print(name, chosen["choices"], chosen["score"], flush=True)


def make(program):
    STOCK.mkdir(exist_ok=True)
    folder = pathlib.Path(tempfile.mkdtemp())
    try:
        for guard in GUARDS:
            for kind in ANCHORS:
                make_one(program, guard, kind, folder)
    finally:
        shutil.rmtree(folder)
    TABLE.write_text(table(reviews(program)), encoding="utf-8")


# The table


def reviews(program):
    """What the program says of each detail, by name."""
    names = [name_of(guard, kind) for guard in GUARDS for kind in ANCHORS]
    said = json.loads(run(program, "check", "--json", *(STOCK / f"{name}.xml" for name in names), accept=(0, 1)))
    return dict(zip(names, said))


def inches(text):
    """`0.375 in` as 3/8, `10 in` as 10."""
    value = float(text.removesuffix(" in"))
    for part in (1, 2, 4, 8, 16):
        if abs(value * part - round(value * part)) < 1e-9:
            whole, over = divmod(round(value * part), part)
            return f"{whole or ''}{' ' if whole and over else ''}{f'{over}/{part}' if over else ''}" or "0"
    return f"{value:g}"


def row(guard, kind, review):
    root = ElementTree.parse(STOCK / f"{name_of(guard, kind)}.xml").getroot()
    plate = root.find(f"{SPACE}plate")
    rectangle = plate.find(f"{SPACE}rectangle")
    blocks = {block.get("size") for block in root.iter(f"{SPACE}block")}
    bolt, lag = next(root.iter(f"{SPACE}through-bolt"), None), next(root.iter(f"{SPACE}lag-screw"), None)
    backing = next(root.iter(f"{SPACE}backing-plate"), None)
    if bolt is not None:
        below = f", {inches(backing.get('width'))} in plates below" if backing is not None else ", washers below"
        anchors = bolt.get("size").removeprefix("bolt-") + " in bolts" + below
    else:
        anchors = f"{lag.get('size').removeprefix('lag-')} x {inches(lag.get('length'))} in lag screws"
    for block in root.iter(f"{SPACE}block"):
        end = next(block.iter(f"{SPACE}connector"))
    height, occupancy, spacing = guard
    size = " x ".join(inches(rectangle.get(side)) for side in ("width", "depth"))
    return [f"{height} in, {occupancy}{f', {spacing} ft' if spacing else ''}",
            f"{size} x {inches(plate.get('thickness'))} in", anchors, "two " + ", ".join(sorted(blocks)),
            f"{float(end.get('uplift').removesuffix(' lbf')):,.0f} lb", f"{review['governing']['ratio']:.2f}"]


HEAD = """Stock that holds

The least of the shipped plates, anchors and blocking for a guard post between joists, with 3 % of every strength
in hand: the lightest steel, then the lowest cost. Dwelling: 2 x 2 x 3/16 in post, 2x10 joists. Public: 2 1/2 x 2 1/2 x 3/16
in post, 2x12 joists. Joists 16 in apart over 8 ft, southern pine No. 2, wet, 5/4 boards; framing invented. Blocks on edge
under each row of anchors; hardware at each end is what its report must allow, up and down. D/C: demand over capacity of the
check nearest its limit. A public guard of 36 in is refused: 42 in are required (IBC 2021 1015.3).

"""


def table(reviewed):
    rows = [["guard", "plate", "anchors", "blocks", "hardware", "D/C"]]
    rows += [row(guard, kind, reviewed[name_of(guard, kind)]) for guard in GUARDS for kind in ANCHORS]
    widths = [max(len(one[column]) for one in rows) for column in range(len(rows[0]))]
    lines = ["  ".join(cell.ljust(width) for cell, width in zip(one, widths)).rstrip() for one in rows]
    lines.insert(1, "-" * max(len(line) for line in lines))
    return HEAD + "\n".join(lines) + "\n"


# Check


def same_plate(own, shipped):
    """The same cut, whatever digits it is written with."""
    def cut(plate, space):
        rectangle = plate.find(f"{space}rectangle")
        places = [(hole.get("id"), *(inches_in(hole.get(key)) for key in ("x", "y", "diameter")))
                  for hole in plate.iter(f"{space}hole")]
        return ([inches_in(rectangle.get("width")), inches_in(rectangle.get("depth")), inches_in(plate.get("thickness")),
                 plate.get("metal")], places)
    return cut(own, SPACE) == cut(shipped, PLATES_SPACE)


def inches_in(text):
    """`-2 1/2 in` and `-2.5 in` as a number."""
    sign = -1.0 if text.startswith("-") else 1.0
    total = 0.0
    for word in text.removesuffix(" in").lstrip("-").split():
        over, _, under = word.partition("/")
        total += float(over) / float(under or 1)
    return round(sign * total, 6)


def wrong_with(name, review):
    if review["verdict"] != "adequate":
        yield f"{name}: {review['verdict']}, {review['governing']['check']} at {review['governing']['ratio']}"
    elif review["governing"]["ratio"] > MOST_RATIO:
        yield f"{name}: {review['governing']['check']} at {review['governing']['ratio']:.3f}, over {MOST_RATIO}"
    if "hardware-not-chosen" not in [finding["id"] for finding in review["findings"]]:
        yield f"{name}: does not say that its hardware is not chosen"
    own = ElementTree.parse(STOCK / f"{name}.xml").getroot().find(f"{SPACE}plate")
    shipped = shipped_plates().get(own.get("id"))
    if shipped is None or not same_plate(own, shipped):
        yield f"{name}: its plate {own.get('id')} is not as shipped"


def wrong_with_too_low(program):
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder) / "low.xml"
        start(program, TOO_LOW, "yes", file)
        said = json.loads(run(program, "check", "--json", file, accept=(1,)))
    if "guard-height" not in [finding["id"] for finding in said["findings"] if finding["severity"] == "fails"]:
        yield "a public guard of 36 in is not refused"


def check(program):
    reviewed = reviews(program)
    wrong = [line for name, review in reviewed.items() for line in wrong_with(name, review)]
    wrong += wrong_with_too_low(program)
    strangers = {file.stem for file in STOCK.glob("*.xml")} - set(reviewed)
    wrong += [f"{name}: in no row of the table" for name in sorted(strangers)]
    if TABLE.read_text(encoding="utf-8") != table(reviewed):
        wrong.append("data/papers/stock-table.txt is not what the details are; run stock.py PROGRAM make")
    sys.exit("\n".join(wrong) if wrong else 0)


if __name__ == "__main__":
    {"make": make, "check": check}[sys.argv[2]](sys.argv[1])
