#!/usr/bin/env python3
# tests/export/read_dxf_r12.py: what a reader of others finds in a DXF file of the old version.
# SPDX-License-Identifier: GPL-3.0-or-later
#
# read_dxf_r12.py FILE: prints version, audit complaints, then per layer: entities, arcs, length in mm.
import math
import sys

import ezdxf
from ezdxf.math import bulge_to_arc


def polyline_length(line):
    points = [(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0.0)) for v in line.vertices]
    pairs = list(zip(points, points[1:] + points[:1] if line.is_closed else points[1:]))
    length, arcs = 0.0, 0
    for (x0, y0, bulge), (x1, y1, _bulge) in pairs:
        if bulge:
            radius = bulge_to_arc((x0, y0), (x1, y1), bulge)[3]
            length += radius * abs(4 * math.atan(bulge))
            arcs += 1
        else:
            length += math.dist((x0, y0), (x1, y1))
    return length, arcs


def main():
    document = ezdxf.readfile(sys.argv[1])
    audit = document.audit()
    layers = {}
    for entity in document.modelspace():
        if entity.dxftype() == "CIRCLE":
            length, arcs = 2 * math.pi * entity.dxf.radius, 1
        else:
            length, arcs = polyline_length(entity)
        assert entity.dxf.layer in document.layers
        have = layers.setdefault(entity.dxf.layer, [0, 0, 0.0])
        have[0] += 1
        have[1] += arcs
        have[2] += length
    print(document.dxfversion, len(audit.errors) + len(audit.fixes))
    for name in sorted(layers):
        print(name, layers[name][0], layers[name][1], "%.6f" % layers[name][2])


if __name__ == "__main__":
    main()
