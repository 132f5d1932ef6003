#!/usr/bin/env python3
# tests/house/test-builder.py: GTK itself accepts the .ui files. Needs a display.
# SPDX-License-Identifier: GPL-3.0-or-later
import os
import pathlib
import re
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree as ET

import house


def plain(path):
    """The file with our own widgets replaced by empty boxes and without handlers, which the tool of
    GTK cannot know."""
    tree = ET.parse(path)
    for template in tree.iter("template"):
        if re.match("Hut[A-Z]", template.get("parent") or ""):
            template.set("parent", "GtkWidget")
    for parent in list(tree.iter()):
        for child in list(parent):
            if child.tag == "signal":
                parent.remove(child)
            elif child.tag in ("binding", "lookup", "closure"):
                parent.remove(child)
            elif child.tag == "object" and re.match("Hut[A-Z]", child.get("class") or ""):
                child.set("class", "GtkBox")
                for inner in list(child):
                    child.remove(inner)
    return ET.tostring(tree.getroot(), encoding="unicode")


def validate(text):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "a.ui"
        path.write_text(text, encoding="utf-8")
        result = subprocess.run(["gtk4-builder-tool", "validate", path], capture_output=True, text=True,
                                env=dict(os.environ, GTK_A11Y="none"))
    return [] if result.returncode == 0 else [result.stdout + result.stderr]


class Builder(unittest.TestCase):
    def test_gtk_accepts_every_ui_file(self):
        files = sorted((house.ROOT / "ui").glob("*.ui"))
        self.assertNotEqual(files, [])
        complaints = [f"{path.name}: {line}" for path in files for line in validate(plain(path))]
        self.assertEqual(complaints, [], house.report(complaints))

    def test_an_unknown_property_is_refused(self):
        text = ('<interface><object class="GtkBox"><property name="{}">3</property></object></interface>')
        self.assertEqual(validate(text.format("spacing")), [])
        self.assertEqual(len(validate(text.format("spaciousness"))), 1)


if __name__ == "__main__":
    unittest.main()
