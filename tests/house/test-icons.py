#!/usr/bin/env python3
# tests/house/test-icons.py: every icon draws, keeps to its grid, and every icon that is asked for is there.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import struct
import subprocess
import unittest
import xml.etree.ElementTree as ET

import house

ICONS = house.ROOT / "icons" / "hicolor"
LIST = house.ROOT / "icons" / "hutchwright-icons.gresource.xml"
SVG = "{http://www.w3.org/2000/svg}"
# Shapes that GTK 4 recolours in a symbolic icon; it fills them all, so strokes would be lost.
SYMBOLIC_SHAPES = {f"{SVG}{name}" for name in ("svg", "title", "path", "rect", "circle")}
SMALL_PX, LARGE_PX = 16, 256
ASKED_FOR = re.compile(r'"(hut-[a-z-]+-symbolic)"|>(hut-[a-z-]+-symbolic)<')


def render(path, size_px):
    """PNG bytes by librsvg."""
    return subprocess.run(["rsvg-convert", "-w", str(size_px), "-h", str(size_px), path],
                          capture_output=True, check=True).stdout


def find_symbolic_faults(path):
    root = ET.parse(path).getroot()
    complaints = []
    if root.get("viewBox") != "0 0 16 16":
        complaints.append(f"{path.name}: viewBox is {root.get('viewBox')}, must be 0 0 16 16")
    for element in root.iter():
        if element.tag not in SYMBOLIC_SHAPES:
            complaints.append(f"{path.name}: {element.tag} is no filled shape")
        if element.get("stroke") or element.get("fill") == "none" or element.get("style"):
            complaints.append(f"{path.name}: shapes must be filled, without stroke and style")
    return complaints


class Icons(unittest.TestCase):
    def test_each_icon_draws_at_small_and_large_size(self):
        icons = sorted(ICONS.rglob("*.svg"))
        self.assertGreater(len(icons), 3)
        for icon in icons:
            for size in (SMALL_PX, LARGE_PX):
                picture = render(icon, size)
                self.assertEqual(struct.unpack(">II", picture[16:24]), (size, size), icon.name)

    def test_each_icon_has_a_title(self):
        for icon in ICONS.rglob("*.svg"):
            self.assertTrue(ET.parse(icon).getroot().findtext(f"{SVG}title"), icon.name)

    def test_symbolic_icons_keep_to_what_gtk_recolours(self):
        complaints = [line for icon in sorted((ICONS / "symbolic").rglob("*.svg"))
                      for line in find_symbolic_faults(icon)]
        self.assertEqual(complaints, [], house.report(complaints))

    def test_no_two_symbolic_icons_look_alike(self):
        pictures = {}
        for icon in sorted((ICONS / "symbolic" / "actions").glob("*.svg")):
            twin = pictures.setdefault(render(icon, SMALL_PX), icon.name)
            self.assertEqual(twin, icon.name)

    def test_each_action_icon_is_compiled_in(self):
        compiled = {element.get("alias") for element in ET.parse(LIST).getroot().iter("file")}
        for icon in (ICONS / "symbolic" / "actions").glob("*.svg"):
            self.assertIn(icon.name, compiled)

    def test_each_own_icon_that_is_asked_for_is_there(self):
        there = {icon.stem for icon in ICONS.rglob("*.svg")}
        for path in list(house.sources(house.ROOT, ".c", ".ui")) + \
                [path.relative_to(house.ROOT) for path in (house.ROOT / "ui").rglob("*.ui")]:
            for names in ASKED_FOR.findall(house.read(house.ROOT, path)):
                self.assertIn("".join(names), there, str(path))


if __name__ == "__main__":
    unittest.main()
