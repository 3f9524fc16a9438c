"""Base details drawn at random, as XML of version 1: every kind of part a detail of version 0.5.0 may have."""
import random
from xml.sax.saxutils import quoteattr

SPECIES = ["southern-pine", "douglas-fir-larch", "hem-fir", "spruce-pine-fir"]
STEEL = ["steel-a36", "steel-a572-50", "stainless-304", "stainless-316"]
ALUMINUM = ["aluminum-6061-t6", "aluminum-6005a-t61", "aluminum-6061-t6-weld-5356"]
STEEL_TUBE = ["steel-a500-b", "steel-a500-c", "stainless-304", "stainless-316l"]
ALUMINUM_TUBE = ["aluminum-6061-t6", "aluminum-6063-t6", "aluminum-6063-t5", "aluminum-6005a-t61"]
SIZES = ["1/4", "5/16", "3/8", "7/16", "1/2", "5/8"]


class Draw(random.Random):
    def number(self, low, high, unit, digits=3):
        return f"{round(self.uniform(low, high), digits):g} {unit}"

    def inches(self, low, high):
        """Mostly in inches, decimal or to the sixteenth, now and then in millimeters."""
        kind = self.randrange(6)
        if kind == 0:
            return self.number(25.4 * low, 25.4 * high, "mm", 1)
        if kind == 1:
            whole, sixteenths = divmod(max(1, round(16 * self.uniform(low, high))), 16)
            return " ".join([str(whole)] * (whole > 0) + [f"{sixteenths}/16"] * (sixteenths > 0)) + " in"
        return self.number(low, high, "in")

    def pounds(self, low, high):
        return self.number(4.448e-3 * low, 4.448e-3 * high, "kN", 4) if self.random() < 0.1 else self.number(low, high, "lbf", 1)

    def chance(self, share):
        return self.random() < share


def element(tag, children=(), /, **attributes):
    """None leaves an attribute out; an underscore in a name stands for a hyphen."""
    said = "".join(f" {key.rstrip('_').replace('_', '-')}={quoteattr(str(value))}"
                   for key, value in attributes.items() if value is not None)
    inside = "".join(children)
    return f"<{tag}{said}>{inside}</{tag}>" if inside else f"<{tag}{said}/>"


def inch(value):
    return f"{value:.6g} in"


class Base:
    """One detail; places and sizes that its parts share."""

    def __init__(self, seed):
        self.draw = Draw(seed)
        draw = self.draw
        self.seed = seed
        self.sound = draw.chance(0.4)  # strong connections and small pushes, so that some of them hold
        self.aluminum = draw.chance(0.25)
        self.width = draw.choice([5, 5.5, 6, 7, 8, 9.5]) + draw.choice([0, 0, draw.uniform(-0.3, 0.3)])
        self.depth = self.width if draw.chance(0.6) else draw.uniform(5.0, 10.0)
        self.bay = draw.choice([12.0, 14.5, 16.0])
        self.swapped = draw.chance(0.3)  # joists along x
        self.bore = draw.choice([0.4375, 0.4375, 0.5, 0.5625])
        self.framing_kind = draw.choice(["supported", "supported", "supported", "joists"] if self.sound else
                                        ["none", "joists", "blocks", "blocks", "blocks", "supported", "supported",
                                         "supported", "supported", "beside-rim"])

    def text(self):
        parts = [self.guard(), self.post(), self.plate()]
        if self.sound or self.draw.chance(0.85):
            parts.append(self.weld())
        parts += self.anchors() + [self.layers(), self.framing(), self.loads(), self.basis(), self.remarks()]
        lines = "\n  ".join(part for part in parts if part)
        return ('<?xml version="1.0" encoding="UTF-8"?>\n'
                f'<base-detail xmlns="urn:toehold:base-detail:1" name="drawn at random, {self.seed}">\n  {lines}\n'
                "</base-detail>\n")

    def guard(self):
        draw = self.draw
        return element("guard", height="42 in" if self.sound else draw.choice(["36 in", "42 in", "3'-6\"", "1067 mm", draw.inches(30, 60)]),
                       plate_below_surface=draw.choice([None, None, None, draw.inches(0.5, 3)]),
                       occupancy=draw.choice([None, "other", "one-and-two-family"]))

    def post(self):
        draw = self.draw
        metal = draw.choice(ALUMINUM_TUBE if self.aluminum else STEEL_TUBE)
        kind = draw.choice(["square-tube", "square-tube", "rectangular-tube", "round-tube", "wood"])
        if kind == "square-tube":
            return element("post", shape=kind, width=draw.choice(["2 in", "2 1/2 in", "3 in", draw.inches(1.5, 3.5)]),
                           wall=draw.choice(["1/8 in", "3/16 in", "1/4 in", draw.inches(0.1, 0.3)]), metal=metal)
        if kind == "rectangular-tube":
            return element("post", shape=kind, width=draw.inches(1.5, 2.5), depth=draw.inches(2, 4),
                           wall=draw.inches(0.1, 0.3), metal=metal)
        if kind == "round-tube":
            return element("post", shape=kind, diameter=draw.choice(["1.9 in", "2.375 in", draw.inches(1.5, 3.5)]),
                           wall=draw.inches(0.1, 0.25),
                           metal=metal if self.aluminum else draw.choice(["steel-a53-b", "steel-a500-b-round", "stainless-304"]))
        shoe_wall = draw.uniform(0.12, 0.25)
        shoe = element("shoe", attachment=draw.choice(["welded", "bolted"]), width=inch(3.5 + 2 * shoe_wall),
                       depth=inch(3.5 + 2 * shoe_wall), wall=inch(shoe_wall), height=draw.inches(4, 12),
                       metal=draw.choice(ALUMINUM if self.aluminum else STEEL),
                       **({"allowable_moment": draw.number(4000, 15000, "lbf in", 0), "moment_source": "test report"}
                          if draw.chance(0.6) else {}))
        return element("post", [shoe], shape="wood", width="3.5 in", depth="3.5 in", species=draw.choice(SPECIES),
                       grade="no-2", notched="yes" if not self.sound and draw.chance(0.3) else "no")

    def outline(self):
        draw, w, d = self.draw, self.width, self.depth
        kind = draw.choice(["rectangle", "rectangle", "circle", "polygon"])
        if kind == "rectangle":
            place = {"x": draw.number(-0.6, 0.6, "in"), "y": draw.number(-0.6, 0.6, "in")} if draw.chance(0.25) else {}
            return element(kind, width=inch(w), depth=inch(d),
                           corner_radius=draw.choice([None, "1/4 in", draw.inches(0.1, 1)]), **place)
        if kind == "circle":
            return element(kind, diameter=inch(1.25 * max(w, d)))
        a, b = 0.5 * w + 0.2, 0.5 * d + 0.2
        c, e = draw.uniform(0.3, 0.9) * a, draw.uniform(0.3, 0.9) * b
        shapes = [[(-a, -b), (a, -b), (a, e), (c, b), (-a, b)],                      # a corner cut off
                  [(-a, -b), (a, -b), (a, b - 0.9), (a - 0.9, b), (-a, b)],
                  [(-a, -b), (0, -b - 0.7), (a, -b), (a, b), (-a, b)],               # five sides
                  [(-a, -b), (a, -b), (a, b), (0.45 * a, b), (0.45 * a, b + 1), (-a, b + 1)]]  # an L
        return element(kind, [element("corner", x=inch(x), y=inch(y)) for x, y in draw.choice(shapes)])

    def plate(self):
        draw = self.draw
        count = 4 if self.sound else draw.choice([2, 3, 4, 4, 4, 4, 4, 5, 6])
        ids = draw.choice([list("ABCDEF"), list("ABCDEF"), ["1", "2", "3", "4", "5", "6"],
                           ["plate", "B1", "weld", "heel-left", "a", "post"]])
        reach_x, reach_y = 0.5 * self.width - 0.95, 0.5 * self.depth - 0.95
        jitter = draw.choice([0.0, 0.0, 0.2])
        corners = [(-1, -1), (1, -1), (1, 1), (-1, 1), (0, -1), (0, 1)]
        if count == 3:
            corners = [(-1, -1), (1, -1), (0, 1)]
        if count == 2:
            corners = draw.choice([[(0, -1), (0, 1)], [(-1, -1), (1, -1)], [(-1, -1), (1, 1)]])
        self.holes, made = ids[:count], []
        for id_, (x, y) in zip(self.holes, corners):
            x = x * reach_x + draw.uniform(-jitter, jitter)
            y = y * reach_y + draw.uniform(-jitter, jitter)
            if draw.chance(0.15):
                made.append(element("slot", id=id_, x=inch(x), y=inch(y), width=inch(self.bore),
                                    length=inch(self.bore + draw.uniform(0.1, 0.4)),
                                    angle=draw.choice([None, "90 deg", draw.number(-90, 90, "deg")])))
            else:
                made.append(element("hole", id=id_, x=inch(x), y=inch(y), diameter=inch(self.bore)))
        return element("plate", [self.outline()] + made, metal=draw.choice(ALUMINUM if self.aluminum else STEEL),
                       thickness=draw.choice(["1/4 in", "3/8 in", "1/2 in", "5/8 in", "10 mm", draw.inches(0.2, 0.8)]))

    def weld(self):
        draw = self.draw
        filler = draw.choice(["er5356", "er4043"] if self.aluminum else ["e70", "e60", "e316l"])
        return element("weld", leg=draw.choice(["1/8 in", "3/16 in", "1/4 in", draw.inches(0.1, 0.3)]), filler=filler)

    def anchor_group(self, holes):
        draw = self.draw
        size = {0.4375: "3/8", 0.5: "7/16", 0.5625: "1/2"}[self.bore]
        if draw.chance(0.15):
            size = SIZES[max(0, SIZES.index(size) - 1)]
        washer = element("washer", size=draw.choice(["washer-narrow-", "washer-wide-"]) + size) if draw.chance(0.7) else ""
        kind = draw.choice(["lag", "lag", "bolt"] if self.sound else ["lag", "lag", "lag", "wood-screw", "bolt", "bolt", "reported"])
        if kind == "lag":
            fastener = element("lag-screw", size="lag-" + size, thread=draw.choice([None, None, draw.inches(1, 2.5)]),
                               length=draw.choice(["6 in", "7 in"] if self.sound else ["4 in", "6 in", "8 in", draw.inches(3, 9)]))
        elif kind == "wood-screw":
            fastener = element("wood-screw", size=draw.choice(["wood-screw-14", "wood-screw-20", "wood-screw-24"]),
                               length=draw.inches(3, 6), thread=draw.choice([None, draw.inches(1, 2.5)]))
            washer = ""
        elif kind == "bolt":
            below = draw.choice([
                *[""] * (not self.sound), element("washer-below", size="washer-wide-" + size), element("washer-below", size="washer-wide-" + size),
                element("backing-plate", width=draw.inches(1.5, 4), depth=draw.inches(1.5, 4),
                        thickness=draw.inches(0.1, 0.4), metal=draw.choice(STEEL))])
            fastener = element("through-bolt", [below], size="bolt-" + size,
                               grade=draw.choice(["a307", "a325-n", "a449", "f593-cw"]))
        else:
            length = draw.uniform(4, 9)
            say = lambda value: value if draw.chance(0.8) else None
            fastener = element("reported-fastener", name="structural screw", report=say("report of a test"),
                               diameter=draw.inches(0.2, 0.4), length=inch(length), thread=inch(draw.uniform(1.5, 3.5)),
                               withdrawal=say(draw.number(150, 450, "lbf/in", 1)), tension=say(draw.pounds(800, 3000)),
                               lateral=say(draw.pounds(200, 700)), minimum_penetration=draw.inches(1, 2),
                               minimum_edge=say(draw.inches(0.5, 1.5)), minimum_end=say(draw.inches(1, 4)),
                               minimum_spacing=say(draw.inches(1, 3)))
        preload = draw.pounds(50, 1500) if draw.chance(0.12) else None
        return element("anchors", [fastener, washer], holes=" ".join(holes) if holes else None, preload=preload,
                       corrosion_protection=None if not self.sound and draw.chance(0.5) else "hot-dip galvanized, ASTM A153")

    def anchors(self):
        if len(self.holes) > 2 and self.draw.chance(0.25):
            return [self.anchor_group(self.holes[:2]), self.anchor_group([])]
        return [self.anchor_group(self.draw.choice([[], self.holes]))]

    def layers(self):
        draw, parts = self.draw, []
        if draw.chance(0.75):
            material = draw.choice(["wood-southern-pine", "wood-douglas-fir", "wood-western-cedar", "wood-redwood"]
                                   + ["composite-generic", "pvc-generic"] * (not self.sound))
            fasteners = element("fasteners", diameter=draw.inches(0.13, 0.25), length=draw.inches(2, 3.5),
                                per_crossing=draw.randint(1, 3), board=draw.inches(3.5, 5.5),
                                **({"lateral": draw.pounds(40, 250), "report": "report of a test"}
                                   if draw.chance(0.4) else {}))
            parts.append(element("decking", [fasteners] if self.sound or draw.chance(0.7) else [], material=material,
                                 thickness=draw.choice(["1 in", "1 1/4 in", "1 1/2 in", draw.inches(0.75, 1.5)]),
                                 evidence=draw.choice([None, "evaluation report of the boards"])))
        for _ in range(draw.choice([0, 0, 0, 1, 2])):
            parts.append(element("shim", material=draw.choice(["shim-hardwood", "shim-stainless", "shim-hdpe"]),
                                 thickness=draw.inches(0.1, 0.5)))
        return element("layers", parts)

    def connection(self, depth):
        """What holds the end of a member this deep."""
        draw = self.draw
        if self.sound and draw.chance(0.9):
            return element("connector", name="angle on both sides", report="report of a test", uplift=draw.pounds(1500, 2500),
                           down=draw.pounds(1500, 2500), lateral=draw.pounds(700, 1500), couple_arm=draw.inches(1.5, 3.5),
                           pull=draw.pounds(900, 1500), height=draw.inches(4, 6))
        kind = draw.choice(["none", "nails", "screws", "toe-nails", "angles", "angles", "connector", "connector", "connector"])
        if kind == "none":
            return ""
        if kind in ("nails", "screws"):
            count = draw.randint(1, 5)
            return element(kind, diameter=draw.inches(0.13, 0.25), length=draw.inches(3, 4.5), count=count,
                           spread=inch(draw.uniform(0.3, 0.8) * depth) if count > 1 else None)
        if kind == "toe-nails":
            count = draw.randint(1, 6)
            return element(kind, diameter=draw.inches(0.12, 0.19), length=draw.inches(2.5, 3.5), count=count,
                           spread=inch(draw.uniform(0.2, 0.7) * depth) if count > 2 else None)
        if kind == "angles":
            fastener = draw.choice(["wood-screw", "lag-screw", "bolt"])
            per_leg = draw.randint(1, 4)
            return element(kind, sides=draw.choice([None, 1, 2]), thickness=draw.inches(0.06, 0.3), metal="steel-a36",
                           kind=fastener, diameter=draw.inches(0.16, 0.3) if fastener == "wood-screw" else draw.inches(0.25, 0.5),
                           length=None if fastener == "bolt" else draw.inches(1.5, 3), per_leg=per_leg,
                           spacing=inch(draw.uniform(0.1, 0.9 / per_leg) * depth) if per_leg > 1 else None,
                           gauge=draw.inches(0.8, 1.8))
        strong = draw.choice([1, 1, 2.5])
        say = lambda value, share: value if draw.chance(share) else None
        return element(kind, name="angle on both sides", report=say("report of a test", 0.9),
                       uplift=say(draw.pounds(400 * strong, 900 * strong), 0.95), down=say(draw.pounds(500 * strong, 1200 * strong), 0.95),
                       lateral=say(draw.pounds(300 * strong, 700 * strong), 0.9), couple_arm=say(draw.inches(1.5, 3.5), 0.9),
                       pull=say(draw.pounds(300 * strong, 900 * strong), 0.7), height=say(draw.inches(3, 7), 0.7),
                       stiffness=say(draw.number(2000, 40000, "lbf/in", 0), 0.2))

    def piece(self, width, depth):
        return {"width": inch(width), "depth": inch(depth), "species": self.draw.choice(SPECIES), "grade": "no-2"}

    def block(self, id_, along, across, width, depth, plies, start, stop, holders):
        draw = self.draw
        ends = []
        for side, holder in zip(("from", "to"), holders):
            if self.sound or draw.chance(0.93):
                ends.append(element("end", [self.connection(depth)], at=side, joist=holder if self.sound or draw.chance(0.95) else None))
        return element("block", ends, id=id_, along=along, **self.piece(width, depth), from_=inch(start), to=inch(stop),
                       across=inch(across), plies=plies if plies > 1 else None)

    def framing(self):
        draw, kind = self.draw, self.framing_kind
        treated = draw.choice([None, "yes", "no"])
        if kind == "none":
            return element("framing", treated=treated) if treated else ""
        along, across = ("x", "y") if self.swapped else ("y", "x")
        joist_width, joist_depth = 1.5, draw.choice([7.25, 9.25, 9.25, 11.25])
        plies = [draw.choice([1, 1, 2]) for _ in range(4)]
        shift = draw.uniform(-1.5, 1.5)
        # Faces of the two joists beside the post, then those beyond.
        low, high = -0.5 * self.bay + shift, 0.5 * self.bay + shift
        if kind == "joists":
            low = -0.8 * joist_width  # the plate stands over one of them
            high = low + self.bay
        offsets = [low - 0.5 * joist_width * plies[0], high + 0.5 * joist_width * plies[1]]
        ids = ["J1", "J2"]
        if draw.chance(0.5):
            offsets.append(offsets[1] + 16)
            ids.append("J3")
        joists = [element("joist", id=id_, offset=inch(at), plies=n if n > 1 else None)
                  for id_, at, n in zip(ids, offsets, plies)]
        described = kind in ("supported", "beside-rim") or (kind == "joists" and draw.chance(0.6))
        start = -draw.uniform(48, 120)
        stop = draw.uniform(5, 8) if kind == "beside-rim" else draw.uniform(9, 40)
        parts = [element("joists", joists, along=along, **self.piece(joist_width, joist_depth),
                         **({"from_": inch(start), "to": inch(stop)} if described else {}))]
        rim = None
        if described:
            if kind == "beside-rim" or draw.chance(0.5):
                rim_plies = draw.choice([1, 2])
                rim = "R1"
                parts.append(element("rim", [self.connection(joist_depth)], id=rim, at=inch(stop + 0.75 * rim_plies),
                                     from_=inch(offsets[0] - 4), to=inch(offsets[-1] + 4), **self.piece(1.5, joist_depth),
                                     plies=rim_plies if rim_plies > 1 else None))
            supports = []
            if draw.chance(0.6):
                supports.append(element("support", [self.connection(joist_depth)], id="S1", kind="ledger", at=inch(start)))
            else:
                supports.append(element("support", [self.connection(joist_depth)], id="S1", kind="beam",
                                        at=inch(start + 6), bearing=draw.inches(1.5, 5.5)))
            if draw.chance(0.8):
                supports.append(element("support", [self.connection(joist_depth)], id="S2", kind="beam",
                                        at=inch(draw.uniform(start + 30, stop - 1)), bearing=draw.inches(1.5, 5.5)))
            parts += supports
        if kind != "joists":
            parts += self.blocks(along, across, low, high, rim, stop)
        return element("framing", parts, treated=treated)

    def blocks(self, along, across, low, high, rim, rim_face):
        """Two blocks from joist to joist under the rows of anchors, one wide one, or one only."""
        draw = self.draw
        reach = (0.5 * self.width if self.swapped else 0.5 * self.depth) - 0.95
        kind = draw.choice(["two", "wide"] if self.sound else ["two", "two", "two", "flat", "wide", "heel"])
        depth = draw.choice([3.5, 5.5, 7.25, 7.25, 9.25])
        if kind == "two":
            width, plies = draw.choice([(1.5, 1), (1.5, 2), (3.5, 1)])
            if width * plies > 2 * reach - 0.2:
                width, plies = 1.5, 1
            places = [-reach, reach]
        elif kind == "flat":
            width, plies, depth = min(5.5, 2 * reach - 0.2), 1, 1.5
            places = [-reach, reach]
        elif kind == "wide":
            width, plies, depth = 11.25, 1, draw.choice([1.5, 3.0])
            places = [0.0]
        else:
            width, plies = 3.5, 1
            places = [-reach]
        made = []
        for index, place in enumerate(places):
            place += draw.choice([0.0, 0.0, draw.uniform(-0.4, 0.4)])
            made.append((f"B{index + 1}", place))
        texts = [self.block(id_, across, place, width, depth, plies, low, high, ["J1", "J2"]) for id_, place in made]
        behind = made[-1][1] + 0.5 * width * plies
        if rim and rim_face - behind > 2 and draw.chance(0.5):
            texts.append(self.block("B9", along, draw.uniform(-1, 1), 1.5, min(depth, 7.25), draw.choice([1, 2]), behind,
                                    rim_face, [made[-1][0], rim]))
        return texts

    def loads(self):
        draw, parts = self.draw, []
        if self.sound:
            return element("loads", [element("user", name="a light push", push=draw.pounds(15, 90), source="the owner",
                                             height=draw.choice([None, draw.inches(12, 30)]))],
                           directions=draw.choice([None, "all-round", "outward"]))
        if draw.chance(0.3):
            return ""
        down = lambda: draw.choice([None, None, draw.number(-80, 250, "lbf", 1)])
        if draw.chance(0.8):
            parts.append(element("concentrated", push=draw.choice(["200 lbf", "0.89 kN", draw.pounds(50, 300)]), down=down()))
        if draw.chance(0.3):
            parts.append(element("line", push=draw.choice(["50 plf", draw.number(10, 60, "plf", 1)]), spacing=draw.inches(36, 80),
                                 down=down()))
        for count in range(draw.choice([0, 0, 0, 1, 2])):
            parts.append(element("user", name=f"load {count + 1}", push=draw.pounds(20, 250), down=down(),
                                 height=draw.choice([None, draw.inches(12, 40)]), source=draw.choice([None, "the owner"])))
        return element("loads", parts, directions=draw.choice([None, "all-round", "outward"])) if parts else ""

    def basis(self):
        draw = self.draw
        if draw.chance(0.15):
            return ""
        method = draw.choice([None, "ASD", "ASD", "LRFD"])
        stiffness = element("fixed-stiffness", bed=draw.number(1e3, 5e4, "psi/in", 0), anchor=draw.number(1e4, 2e5, "lbf/in", 0),
                            reason="measured")
        return element("basis", [stiffness] if draw.chance(0.1) else [], method=method,
                       load_duration=draw.choice([None, "1.0", "1.6", "1.25"]) if method != "LRFD" else None,
                       time_effect=draw.choice([None, "1.0", "0.8"]) if method == "LRFD" else None,
                       moisture=draw.choice([None, "wet", "dry", "dried-in-service"]),
                       temperature=draw.choice([None, None, "to-100F", "to-125F", "to-150F"]),
                       incised=draw.choice([None, "yes", "no"]),
                       plate=draw.choice([None, "flexible", "rigid"]), decking_in_shear=draw.choice([None, "gap", "bearing"]),
                       code=draw.choice([None, "IRC-2021", "IBC-2021"]))

    def remarks(self):
        if not self.draw.chance(0.1):
            return ""
        return element("remarks", [element("remark", about="weld", words="Leg of the weld?")])
