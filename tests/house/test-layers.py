#!/usr/bin/env python3
# tests/house/test-layers.py: no #include goes up a layer, and GTK stays in src/app.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import unittest

import house

INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*([<"])([^>"]+)[>"]', re.M)
TOOLKIT = re.compile(r"^(gtk|gdk|gsk|adwaita|gtksourceview)\b")
GENERATED = re.compile(r"^(config|hut-[a-z]+-resources)\.h$")


def complaint_about(path, quote, name):
    layer = house.layer_of(path)
    if quote == "<":
        if layer != "app" and TOOLKIT.match(name):
            return f"<{name}>: GTK belongs to src/app"
        return None
    if GENERATED.match(name):
        return None
    target = name.split("/")[0]
    if "/" not in name or target not in house.LAYERS:
        return f'"{name}": write it as "LAYER/FILE", with a layer of {", ".join(house.LAYERS)}'
    if house.LAYERS.index(target) > house.LAYERS.index(layer):
        return f'"{name}": {layer} is under {target} and must not know it'
    return None


def find_upward_includes(root):
    complaints = []
    for path in house.sources(root, ".c", ".h"):
        if house.layer_of(path) not in house.LAYERS:
            complaints.append(f"{path}: lies in no layer")
            continue
        code = house.without_comments(house.read(root, path))
        for match in INCLUDE.finditer(code):
            complaint = complaint_about(path, *match.groups())
            if complaint:
                complaints.append(f"{path}:{house.line_of(code, match.start())}: {complaint}")
    return complaints


class Layers(unittest.TestCase):
    def test_no_include_of_the_project_goes_up(self):
        complaints = find_upward_includes(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def test_there_are_includes_to_look_at(self):
        code = house.read(house.ROOT, house.sources(house.ROOT, ".h")[0])
        self.assertRegex(code, INCLUDE)

    def find_in(self, files):
        with house.small_tree(files) as root:
            return find_upward_includes(root)

    def test_an_upward_include_is_caught_with_its_line(self):
        found = self.find_in({"src/geom/hut-a.c": '#include "config.h"\n#include "checks/hut-b.h"\n'})
        self.assertEqual(found, ['src/geom/hut-a.c:2: "checks/hut-b.h": geom is under checks and '
                                 'must not know it'])

    def test_an_include_of_the_own_and_of_a_lower_layer_passes(self):
        found = self.find_in({"src/checks/hut-a.c": '#include "checks/hut-a.h"\n'
                                                    '#include "geom/hut-b.h"\n'})
        self.assertEqual(found, [])

    def test_gtk_outside_app_is_caught_and_inside_passes(self):
        found = self.find_in({"src/draw/hut-a.c": "#  include <gtk/gtk.h>\n",
                              "src/cli/hut-b.c": "#include <gdk/x11/gdkx.h>\n",
                              "src/app/hut-c.c": "#include <gtk/gtk.h>\n"})
        self.assertEqual([line.split(": ")[0] for line in found],
                         ["src/cli/hut-b.c:1", "src/draw/hut-a.c:1"])

    def test_a_commented_include_does_not_count(self):
        found = self.find_in({"src/geom/hut-a.c": '/* #include "app/hut-b.h"\n#include "app/c.h" */\n'})
        self.assertEqual(found, [])

    def test_a_path_that_leaves_the_layers_is_caught(self):
        found = self.find_in({"src/geom/hut-a.c": '#include "../app/hut-b.h"\n',
                              "src/geom/hut-b.c": '#include "hut-b.h"\n',
                              "src/extra/hut-c.c": "\n"})
        self.assertEqual(len(found), 3, house.report(found))


if __name__ == "__main__":
    unittest.main()
