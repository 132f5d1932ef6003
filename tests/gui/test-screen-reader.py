#!/usr/bin/env python3
# tests/gui/test-screen-reader.py: every control of the real program says what it is to a screen reader.
# SPDX-License-Identifier: GPL-3.0-or-later
"""Usage: test-screen-reader.py PROGRAM, on a display and a message bus of its own (on-display.sh)."""
import os
import re
import subprocess
import sys
import unittest

from screenreader import Node, Program, wait_for

PROGRAM = sys.argv.pop(1)
WORKED_BY_HAND = {"push button", "toggle button", "check box", "radio button", "text", "entry", "spin button",
                  "combo box", "slider", "page tab", "page tab list", "menu item", "switch", "link", "list",
                  "image", "frame", "dialog"}


def find_faults(top, path=()):
    """Complaints about things without a name, each with the way to it."""
    here = path + ((top.role + " " + top.name,) if top.has_name() else ())
    complaints = []
    if top.role in WORKED_BY_HAND and not top.has_name():
        complaints.append(f"{top.role} without a name in: {' > '.join(path[-4:])}")
    if top.role == "list item" and not top.has_name() and not top.says_something():
        complaints.append(f"list item that says nothing in: {' > '.join(path[-4:])}")
    for child in top.children:
        complaints += find_faults(child, here)
    return complaints


class ScreenReader(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.file = os.path.join(os.environ["HOME"], "printer.hutch")
        subprocess.run([PROGRAM, "example", "printer", "--to", cls.file], check=True)
        cls.program = Program(PROGRAM, cls.file)

    @classmethod
    def tearDownClass(cls):
        cls.program.close()

    def test_everything_in_the_window_has_a_name(self):
        window = wait_for("the findings", lambda: self.complete_window())
        self.assertGreater(len(window.named("push button")), 20)
        complaints = find_faults(window)
        self.assertEqual(complaints, [], "\n".join(complaints))

    def complete_window(self):
        window = self.program.window()
        return window if "Findings" in window.named("list") else None

    def test_whatever_is_on_the_canvas_is_in_a_list_too(self):
        described = subprocess.run([PROGRAM, "describe", self.file], check=True, capture_output=True, text=True)
        items = set(re.findall(r'<(?:opening|hardware)\b[^>]*\bid="[^"]*"[^>]*\bname="([^"]+)"', described.stdout))
        self.assertGreater(len(items), 5)
        self.program.give_window("step", "openings")
        wait_for("the step Openings", lambda: items <= self.names_in_lists())

    def names_in_lists(self):
        return {label for node in self.program.window().all() if node.role == "list item"
                for label in node.named("label")}

    def test_everything_in_the_preferences_has_a_name(self):
        self.program.give("preferences")
        wait_for("the preferences", lambda: len(self.program.windows()) > 1)
        for window in self.program.windows():
            complaints = find_faults(window)
            self.assertEqual(complaints, [], "\n".join(complaints))


class Faults(unittest.TestCase):
    def test_a_button_without_a_name_is_found(self):
        node = Node.__new__(Node)
        node.role, node.name, node.children = "push button", "GtkButton", []
        self.assertEqual(len(find_faults(node)), 1)


if __name__ == "__main__":
    unittest.main()
