#!/usr/bin/env python3
# tests/export/read_dxf.py: reads cut files with readers of others and compares them with the model.
# SPDX-License-Identifier: GPL-3.0-or-later
#
# read_dxf.py FOLDER: FOLDER/index.tsv has one line per sheet, NAME.dxf and NAME.svg lie beside it:
#   NAME, width and depth of the sheet, then per layer (score, inside, outside) the length in mm,
#   then the area in the outlines of inside and outside in mm2, then the count of circles and arcs
#   (marks of pockets and drills left out).
# Prints complaints and "read N sheets"; exit status 1 when there is a complaint.
import math
import pathlib
import re
import sys
import xml.etree.ElementTree as ElementTree

import ezdxf
from ezdxf.math import bulge_to_arc

TOLERANCE = 1e-6
DXF_LAYERS = ["SCORE", "POCKET", "DRILL", "CUT_INSIDE", "CUT_OUTSIDE"]
SVG_LAYERS = ["score", "pocket", "drill", "cut-inside", "cut-outside"]
MARKS = {"POCKET", "DRILL"}  # nothing is cut along them
SVG = "{http://www.w3.org/2000/svg}"
ZERO_LENGTH = 1e-7


class Outline:
    """Length, area and extents of lines and arcs that are put one after the other."""

    def __init__(self):
        self.length = self.area = 0.0
        self.us, self.vs = [], []
        self.arcs = 0

    def point(self, u, v):
        self.us.append(u)
        self.vs.append(v)

    def line(self, a, b):
        self.length += math.dist(a, b)
        self.area += (a[0] * b[1] - b[0] * a[1]) / 2
        self.point(*a)
        self.point(*b)

    def arc(self, a, b, centre, radius, sweep):
        """sweep > 0 is counter-clockwise in the frame of the numbers"""
        self.arcs += 1
        self.length += radius * abs(sweep)
        self.area += (a[0] * b[1] - b[0] * a[1]) / 2
        self.area += radius * radius * (sweep - math.sin(sweep)) / 2
        self.point(*a)
        self.point(*b)
        start = math.atan2(a[1] - centre[1], a[0] - centre[0])
        for quarter in range(-8, 9):
            along = (quarter * math.pi / 2 - start) * (1 if sweep > 0 else -1)
            if 0 < along < abs(sweep):
                angle = quarter * math.pi / 2
                self.point(centre[0] + radius * math.cos(angle),
                           centre[1] + radius * math.sin(angle))

    def circle(self, centre, radius):
        self.length += 2 * math.pi * radius
        self.area += math.pi * radius * radius
        self.point(centre[0] - radius, centre[1] - radius)
        self.point(centre[0] + radius, centre[1] + radius)

    def extents(self):
        return min(self.us), min(self.vs), max(self.us), max(self.vs)


# ---- DXF --------------------------------------------------------------------------------------

def read_pairs(path):
    data = path.read_bytes()
    assert data.replace(b"\r\n", b"").count(b"\n") == 0, "a line does not end in CR LF"
    lines = data.decode("ascii").split("\r\n")
    assert lines.pop() == "", "the last line has no end"
    assert len(lines) % 2 == 0, "a code without value"
    pairs = [(int(code), value) for code, value in zip(lines[::2], lines[1::2])]
    assert pairs[-1] == (0, "EOF"), "no EOF at the end"
    for code, value in pairs:
        if 10 <= code <= 59 or code == 1010:
            assert math.isfinite(float(value)), f"{code} {value} is no number"
    return [pair for pair in pairs if pair[0] != 999]


def objects_of(pairs):
    """Lists of pairs, each begun by a code 0."""
    found = []
    for code, value in pairs:
        if code == 0:
            found.append([])
        found[-1].append((code, value))
    return found


def value_of(pairs, code):
    return next((value for key, value in pairs if key == code), None)


def header_of(pairs):
    """{variable: {code: value}}"""
    header, name = {}, None
    for code, value in pairs:
        if code == 9:
            name = value
            header[name] = {}
        elif code == 0 and value == "ENDSEC":
            return header
        elif name:
            header[name][code] = value
    return header


def check_structure(pairs):
    header = header_of(pairs)
    objects = objects_of(pairs)
    assert header["$ACADVER"] == {1: "AC1015"}
    assert header["$INSUNITS"] == {70: "4"}
    handles = [value_of(o, 105 if o[0][1] == "DIMSTYLE" else 5) for o in objects
               if o[0][1] not in ("SECTION", "ENDSEC", "ENDTAB", "EOF")]
    assert None not in handles, "an object without handle"
    assert len(set(handles)) == len(handles), "two objects with one handle"
    seed = int(header["$HANDSEED"][5], 16)
    assert max(int(handle, 16) for handle in handles) < seed, "handle over the seed"
    for o in objects:
        owner = value_of(o, 330)
        assert owner in (None, "0") or owner in handles, f"owner {owner} does not exist"
    layers = [value_of(o, 2) for o in objects if o[0][1] == "LAYER"]
    line_types = [value_of(o, 2) for o in objects if o[0][1] == "LTYPE"]
    assert layers == ["0"] + DXF_LAYERS, layers
    start = next(i for i, o in enumerate(objects) if (2, "ENTITIES") in o)
    end = next(i for i in range(start, len(objects)) if objects[i][0][1] == "ENDSEC")
    for o in objects[start + 1:end]:
        assert value_of(o, 8) in layers
        assert value_of(o, 6) is None or value_of(o, 6) in line_types
        if o[0][1] == "LWPOLYLINE":
            count = sum(code == 10 for code, _value in o)
            assert int(value_of(o, 90)) == count == sum(code == 20 for code, _value in o)
    return header


def add_polyline(outline, entity, closed):
    points = list(entity.get_points("xyb"))
    assert bool(entity.closed) == closed, "closed flag"
    assert len({p[:2] for p in points}) >= 2, "fewer than two points"
    assert not closed or len(points) >= 3 or any(p[2] for p in points), "an outline of two lines"
    pairs = list(zip(points, points[1:] + points[:1]))
    for (u, v, bulge), (next_u, next_v, _bulge) in pairs if closed else pairs[:-1]:
        a, b = (u, v), (next_u, next_v)
        assert math.dist(a, b) > ZERO_LENGTH, f"no length at {a}"
        if bulge:
            centre, start, end, radius = bulge_to_arc(a, b, bulge)
            assert radius > 0 and start != end
            sweep = 4 * math.atan(bulge)
            assert abs((end - start) % math.tau - abs(sweep)) < 1e-9
            outline.arc(a, b, centre, radius, sweep)
        else:
            outline.line(a, b)


def read_dxf(path):
    header = check_structure(read_pairs(path))
    document = ezdxf.readfile(path)
    audit = document.audit()
    assert not audit.errors and not audit.fixes, [e.message for e in audit.errors + audit.fixes]
    assert document.dxfversion == "AC1015" and document.units == ezdxf.units.MM
    outlines = {layer: Outline() for layer in DXF_LAYERS}
    circles, last = 0, 0
    for entity in document.modelspace():
        layer = entity.dxf.layer
        assert DXF_LAYERS.index(layer) >= last, "an earlier operation after a later one"
        last = DXF_LAYERS.index(layer)
        if entity.dxftype() == "CIRCLE":
            assert entity.dxf.radius > 0
            outlines[layer].circle((entity.dxf.center.x, entity.dxf.center.y), entity.dxf.radius)
            circles += layer not in MARKS
        else:
            assert entity.dxftype() == "LWPOLYLINE", entity.dxftype()
            before = outlines[layer].area
            add_polyline(outlines[layer], entity, layer != "SCORE")
            if layer == "CUT_INSIDE":
                outlines[layer].area = before + abs(outlines[layer].area - before)
    check_extents(header, outlines.values())
    return list(outlines.values()), circles


def check_extents(header, outlines):
    us = [u for outline in outlines for u in outline.us]
    vs = [v for outline in outlines for v in outline.vs]
    low, high = header["$EXTMIN"], header["$EXTMAX"]
    for text, number in ((low[10], min(us)), (low[20], min(vs)), (high[10], max(us)),
                         (high[20], max(vs))):
        assert abs(float(text) - number) < TOLERANCE, f"extents say {text}, entities {number}"


# ---- SVG --------------------------------------------------------------------------------------

NUMBER = re.compile(r"-?\d+(?:\.\d+)?")
WORD = re.compile(r"[MLAZ]|-?\d+(?:\.\d+)?|\S")
COUNT = {"M": 2, "L": 2, "A": 7, "Z": 0}


def read_path(outline, data, closed):
    """Path data of absolute M, L, A and Z only; every letter is written out."""
    words = WORD.findall(data)
    assert (words[-1] == "Z") == closed
    start = here = None
    i = 0
    while i < len(words):
        letter = words[i]
        numbers = [float(word) for word in words[i + 1:i + 1 + COUNT[letter]]]
        i += 1 + COUNT[letter]
        there = tuple(numbers[-2:])
        if letter == "M":
            start = there
        elif letter == "L":
            assert math.dist(here, there) > ZERO_LENGTH, f"no length at {here}"
            outline.line(here, there)
        elif letter == "Z":
            if math.dist(here, start) > ZERO_LENGTH:
                outline.line(here, start)
            there = start
        else:
            add_svg_arc(outline, here, there, numbers)
        here = there


def add_svg_arc(outline, a, b, numbers):
    radius, radius_y, turn, large, sweep_flag = numbers[:5]
    chord = math.dist(a, b)
    assert radius == radius_y > 0 and turn == 0 and large == 0
    assert chord > ZERO_LENGTH, "an arc without chord is not drawn"
    assert chord <= 2 * radius, "readers would make this arc larger"
    half = math.asin(chord / (2 * radius))
    sweep = 2 * half if sweep_flag else -2 * half
    to_centre = radius * math.cos(half) * (1 if sweep_flag else -1)
    centre = ((a[0] + b[0]) / 2 - (b[1] - a[1]) / chord * to_centre,
              (a[1] + b[1]) / 2 + (b[0] - a[0]) / chord * to_centre)
    outline.arc(a, b, centre, radius, sweep)


def read_svg(path, width, depth):
    root = ElementTree.parse(path).getroot()
    assert root.tag == SVG + "svg"
    size = [float(root.get(name).removesuffix("mm")) for name in ("width", "height")]
    assert root.get("width").endswith("mm") and root.get("height").endswith("mm")
    assert [float(word) for word in root.get("viewBox").split()] == [0, 0, *size]
    assert abs(size[0] - width) < TOLERANCE and abs(size[1] - depth) < TOLERANCE
    ids = [element.get("id") for element in root.iter() if element.get("id") is not None]
    assert len(set(ids)) == len(ids), "an id twice"
    assert all(re.fullmatch(r"[A-Za-z_][\w.-]*", name) for name in ids)
    groups = root.findall(SVG + "g")
    assert [group.get("id") for group in groups] == SVG_LAYERS
    assert len({group.get("stroke") for group in groups}) == len(groups)
    outlines, circles = [], 0
    for group in groups:
        outline = Outline()
        for element in group:
            before = outline.area
            if element.tag == SVG + "circle":
                centre = (float(element.get("cx")), float(element.get("cy")))
                outline.circle(centre, float(element.get("r")))
                circles += group.get("id").upper() not in MARKS
            elif element.tag == SVG + "path":
                read_path(outline, element.get("d"), group.get("id") != "score")
            if group.get("id") != "score":
                outline.area = before + abs(outline.area - before)
        outlines.append(outline)
    return outlines, circles


# ---- both -------------------------------------------------------------------------------------

def compare(what, number, must, tolerance=TOLERANCE):
    assert abs(number - must) <= tolerance, f"{what} is {number!r}, must be {must!r}"


def check_sheet(folder, fields):
    name = fields[0]
    width, depth, *lengths = map(float, fields[1:6])
    areas = list(map(float, fields[6:8]))
    circles, arcs = int(fields[8]), int(fields[9])
    dxf, dxf_circles = read_dxf(folder / f"{name}.dxf")
    svg, svg_circles = read_svg(folder / f"{name}.svg", width, depth)
    assert dxf_circles == svg_circles == circles, f"{dxf_circles} {svg_circles} circles, {circles}"
    assert sum(outline.arcs for outline in dxf) == arcs, "arcs are lost"
    assert sum(outline.arcs for outline in svg) >= arcs, "arcs are lost"
    lengths = [lengths[0], 0, 0, *lengths[1:]]
    for layer in range(5):
        if DXF_LAYERS[layer] not in MARKS:
            compare(f"DXF {DXF_LAYERS[layer]} length", dxf[layer].length, lengths[layer])
            compare(f"SVG {SVG_LAYERS[layer]} length", svg[layer].length, lengths[layer])
        compare("DXF against SVG", dxf[layer].length, svg[layer].length)
        if dxf[layer].us:
            u0, v0, u1, v1 = dxf[layer].extents()
            x0, y0, x1, y1 = svg[layer].extents()
            for number, must in ((x0, u0), (x1, u1), (y0, depth - v1), (y1, depth - v0)):
                compare(f"SVG {SVG_LAYERS[layer]} extent", number, must)
            assert u0 >= -TOLERANCE and v0 >= -TOLERANCE
            assert u1 <= width + TOLERANCE and v1 <= depth + TOLERANCE
    # An outline that is off by 1e-8 mm all along would change its area by that times its length.
    for layer, must in ((3, areas[0]), (4, areas[1])):
        for kind, outlines in (("DXF", dxf), ("SVG", svg)):
            compare(f"{kind} area of layer {layer}", outlines[layer].area, must,
                    1e-8 * max(1, lengths[layer]))


def main():
    folder = pathlib.Path(sys.argv[1])
    complaints, count = 0, 0
    for line in (folder / "index.tsv").read_text(encoding="utf-8").splitlines():
        count += 1
        fields = line.split("\t")
        try:
            check_sheet(folder, fields)
        except Exception as error:  # any reader may refuse in its own way: all are complaints
            print(f"{fields[0]}: {type(error).__name__}: {error}")
            complaints += 1
    print(f"read {count} sheets")
    return 1 if complaints or not count else 0


if __name__ == "__main__":
    sys.exit(main())
