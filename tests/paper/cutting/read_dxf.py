"""Reads a DXF file with a library of others and prints what a cutting table would find in it, a fact a line.

Areas and centres of contours are worked here from vertices and bulges, with nothing of the program under test.
"""
import math
import sys

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import Vec3


def segments(polyline):
    """(start, end, bulge) of every side, the last back to the first."""
    vertices = [(v.dxf.location, v.dxf.bulge) for v in polyline.vertices]
    for index, (start, bulge) in enumerate(vertices):
        yield start, vertices[(index + 1) % len(vertices)][0], bulge


def cap_area(chord, bulge):
    """Between a chord and its arc; positive for a counter-clockwise arc."""
    if bulge == 0.0:
        return 0.0
    angle = 4.0 * math.atan(bulge)
    radius = chord / (2.0 * math.sin(angle / 2.0))
    return 0.5 * radius * radius * (angle - math.sin(angle))


def contour(polyline):
    """Area, positive counter-clockwise, and the middle of the vertices."""
    area = 0.0
    corners = [v.dxf.location for v in polyline.vertices]
    for start, end, bulge in segments(polyline):
        area += 0.5 * (start.x * end.y - end.x * start.y) + cap_area(math.dist(start, end), bulge)
    return area, sum(corners, Vec3()) / len(corners)


def main(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    print("version", document.dxfversion)
    print("errors", len(audit.errors), "fixes", len(audit.fixes))
    for end in ("$EXTMIN", "$EXTMAX"):
        at = document.header[end]
        print(end, f"{at[0]:.9g} {at[1]:.9g}")
    for layer in document.layers:
        print("layer", layer.dxf.name, layer.dxf.color)
    for entity in document.modelspace():
        layer, kind = entity.dxf.layer, entity.dxftype()
        if kind == "CIRCLE":
            center, radius = entity.dxf.center, entity.dxf.radius
            area = math.pi * radius * radius
            print("contour", layer, kind, f"{area:.9g} {center.x:.9g} {center.y:.9g} {2 * radius:.9g}")
        elif kind == "POLYLINE":
            area, middle = contour(entity)
            state = "closed" if entity.is_closed and len(entity.vertices) > 1 else "open"
            kind = "POLYGON" if state == "closed" else "OPEN"
            arcs = sum(1 for v in entity.vertices if v.dxf.bulge)
            print("contour", layer, kind, f"{area:.9g} {middle.x:.9g} {middle.y:.9g} {arcs}")
        elif kind == "LINE":
            print("line", layer)
        elif kind == "TEXT":
            print("text", layer, f"{entity.dxf.insert.x:.9g} {entity.dxf.insert.y:.9g}", decode_dxf_unicode(entity.dxf.text))
        else:
            print("unknown", layer, kind)


main(sys.argv[1])
