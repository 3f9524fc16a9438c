"""A review's JSON as lines of numbers, and the comparison of two such sets of lines.

A line is a label and its numbers: `bearing | 467.509686643 11.062464363 220d`.
After a number, `d` marks a direction in degrees, compared modulo 360, and `<` a residual, of which only the size counts.
`-` stands for null. Sentences, titles, subjects and the order of lines are left out: they may change.
"""
import collections
import math

RELATIVE = 1e-9
FLOOR = 1e-9  # in the number's own unit, for those that cancel out to nothing
DIRECTION_DEG = 1e-5  # where a pull is largest it does not change with the direction, so that the search finds it less closely
LARGEST_RESIDUAL = 1e-8  # the engine's own bound


def number(value, mark=""):
    if value is None:
        return "-"
    return f"{value:.12g}{mark}"


def line(label, *numbers):
    return label + " | " + " ".join(numbers) if numbers else label


def direction(value):
    return number(value, "d")


def word(text):
    return text.replace(" ", "_") or "1"


def totals(values):
    """The whole of a long column of numbers in a few of them."""
    return [number(one) for one in (sum(values), math.sqrt(sum(value * value for value in values)), min(values), max(values))]


def of_anchor(one):
    keys = ["tension_lb", "shear_lb", "hand_tension_lb", "rigid_tension_lb", "flexible_tension_lb", "tension_low_lb",
            "proof_tension_lb", "hand_to_anchor_tension_lb", "stiffness_lb_per_in", "embedment_in", "thread_in_block_in",
            "x_in", "y_in"]
    return line("anchor " + one["id"], direction(one["direction_deg"]), *(number(one[key]) for key in keys))


def of_proof(proof):
    yield line("proof", *(number(proof[key], "<") for key in ("force_residual", "moment_residual", "complementarity_residual")))
    if proof["plate"]:
        plate = proof["plate"]
        yield line("proof plate", number(plate["unknowns"]), number(plate["reduced_unknowns"]))
        yield line("proof plate errors", number(plate["mesh_error"]), number(plate["reduction_error"]))


def of_field(field):
    nodes = field["nodes"]
    yield line("field", number(len(nodes)), number(len(field["triangles"])),
               number(sum(sum(triangle) for triangle in field["triangles"])))
    yield line("field places", *totals([node["x_in"] for node in nodes]), *totals([node["y_in"] for node in nodes]))
    yield line("field state", direction(field["direction_deg"]), *totals([node["lift_in"] for node in nodes]),
               *totals([node["pressure_psi"] for node in nodes]))


def reduced(review):
    """Every force of a review, and what it moves, as lines in an order of their own."""
    lines = ["demand" if review["no_demand"] is None else "no demand"]
    lines += map(of_anchor, review["anchors"])
    if review["bearing"]:
        bearing = review["bearing"]
        lines.append(line("bearing", number(bearing["peak_psi"]), number(bearing["contact_area_in2"]),
                          direction(bearing["direction_deg"])))
    lines += [line("load " + one["id"], number(one["push_lb"]), number(one["down_lb"]), number(one["height_in"]),
                   number(one["load_factor"])) for one in review["loads"] if one["push_lb"] > 0.0]
    if review["bending"]:
        bending = review["bending"]
        lines.append(line("bending", number(bending["prying"]), direction(bending["prying_direction_deg"]),
                          *(number(bending[key]) for key in ("softest_lb_in_per_rad", "rigid_softest_lb_in_per_rad",
                                                             "blocks_change"))))
    for key, lines_of in (("proof", of_proof), ("plate_field", of_field)):
        if review[key]:
            lines += lines_of(review[key])
    return sorted(lines)


def same_number(recorded, found):
    if recorded == found:
        return True
    if "-" in (recorded, found):
        return False
    mark = recorded[-1] if recorded[-1] in "d<" else ""
    if mark == "<":
        return float(found[:-1]) <= LARGEST_RESIDUAL
    if mark == "d":
        return abs((float(recorded[:-1]) - float(found[:-1]) + 180.0) % 360.0 - 180.0) <= DIRECTION_DEG
    was, now = float(recorded), float(found)
    return abs(now - was) <= FLOOR + RELATIVE * abs(was)


def disagreements(recorded, found):
    """Places of the numbers that differ; None where the two lines cannot be the same one."""
    was, now = recorded.split(), found.split()
    if len(was) != len(now):
        return None
    return [place for place, (one, other) in enumerate(zip(was, now)) if not same_number(one, other)]


def label(text):
    return text.split(" | ")[0]


def numbers(text):
    return text.split(" | ")[1] if " | " in text else ""


def compare(recorded, found):
    """Pairs (label, sentence) of what is not the same. Lines of one label may stand in any order."""
    groups = collections.defaultdict(lambda: ([], []))
    for side, lines in enumerate((recorded, found)):
        for one in lines:
            groups[label(one)][side].append(numbers(one))
    for name, (was, now) in sorted(groups.items()):
        alone = []
        for one in was:
            match = next((other for other in now if disagreements(one, other) == []), None)
            if match is None:
                alone.append(one)
            else:
                now.remove(match)
        for one in alone:
            near = [other for other in now if disagreements(one, other) is not None]
            if not near:
                yield name, f"recorded and not found: {one or 'the line itself'}"
                continue
            nearest = min(near, key=lambda other: len(disagreements(one, other)))
            now.remove(nearest)
            pairs = ", ".join(f"number {place + 1} was {one.split()[place]}, is {nearest.split()[place]}"
                              for place in disagreements(one, nearest)[:8])
            yield name, f"of {len(one.split())} numbers {len(disagreements(one, nearest))} differ: {pairs}"
        for other in now:
            yield name, f"found and not recorded: {other or 'the line itself'}"
