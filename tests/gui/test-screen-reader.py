#!/usr/bin/env python3
# tests/gui/test-screen-reader.py: what a screen reader is told of the real program, over its own bus.
# SPDX-License-Identifier: GPL-3.0-or-later
"""Usage: test-screen-reader.py PROGRAM, on a display and a message bus of its own (on-display.sh)."""
import os
import re
import subprocess
import sys
import time
import unittest

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, Gio, GLib

PROGRAM = sys.argv.pop(1)
BUS_NAME = "org.hutchwright.Hutchwright"
DEADLINE_S = 60  # own choice: far more than a loaded machine needs
WORKED_BY_HAND = {"push button", "toggle button", "check box", "radio button", "text", "entry", "spin button",
                  "combo box", "slider", "page tab", "page tab list", "menu item", "switch", "link", "list",
                  "image", "frame", "dialog"}
# GTK says the name of a widget's type where nobody gave it a name.
NO_NAME = re.compile(r"(Gtk|Hut|Gdk)[A-Z]\w*|\s*")


class Node:
    """One thing that a screen reader can speak of, with all that is in it."""

    def __init__(self, accessible):
        self.role = accessible.get_role_name()
        self.name = accessible.get_name() or ""
        # The inside of a choice is GTK's own.
        count = 0 if self.role == "combo box" else accessible.get_child_count()
        children = (accessible.get_child_at_index(i) for i in range(count))
        self.children = [Node(child) for child in children if child is not None]

    def all(self):
        yield self
        for child in self.children:
            yield from child.all()

    def has_name(self):
        return NO_NAME.fullmatch(self.name) is None

    def says_something(self):
        return any(node.role in ("label", "text") and node.has_name() for node in self.all())

    def named(self, role):
        return [node.name for node in self.all() if node.role == role]


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


def wait_for(what, condition):
    end = time.monotonic() + DEADLINE_S
    while True:
        found = condition()
        if found:
            return found
        if time.monotonic() > end:
            raise AssertionError(f"waited {DEADLINE_S} s for {what}")
        time.sleep(0.1)


def windows_of(pid):
    desktop = Atspi.get_desktop(0)
    programs = (desktop.get_child_at_index(i) for i in range(desktop.get_child_count()))
    return [program.get_child_at_index(i) for program in programs
            if program is not None and program.get_process_id() == pid
            for i in range(program.get_child_count())]


def give(path, command, parameters=()):
    """A command of the program, by the name that the desktop knows it under."""
    bus = Gio.bus_get_sync(Gio.BusType.SESSION)
    bus.call_sync(BUS_NAME, path, "org.gtk.Actions", "Activate",
                  GLib.Variant("(sava{sv})", (command, [GLib.Variant("s", p) for p in parameters], {})),
                  None, Gio.DBusCallFlags.NONE, DEADLINE_S * 1000)


class ScreenReader(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.file = os.path.join(os.environ["HOME"], "printer.hutch")
        subprocess.run([PROGRAM, "example", "printer", "--to", cls.file], check=True)
        cls.program = subprocess.Popen([PROGRAM, cls.file])
        wait_for("the window", lambda: windows_of(cls.program.pid))

    @classmethod
    def tearDownClass(cls):
        cls.program.terminate()
        cls.program.wait()

    def window(self):
        return Node(windows_of(self.program.pid)[0])

    def test_everything_in_the_window_has_a_name(self):
        window = wait_for("the findings", lambda: self.complete_window())
        self.assertGreater(len(window.named("push button")), 20)
        complaints = find_faults(window)
        self.assertEqual(complaints, [], "\n".join(complaints))

    def complete_window(self):
        window = self.window()
        return window if "Findings" in window.named("list") else None

    def test_whatever_is_on_the_canvas_is_in_a_list_too(self):
        for_sight = subprocess.run([PROGRAM, "describe", self.file], check=True, capture_output=True, text=True)
        items = set(re.findall(r'<(?:opening|hardware)\b[^>]*\bid="[^"]*"[^>]*\bname="([^"]+)"', for_sight.stdout))
        self.assertGreater(len(items), 5)
        give("/org/hutchwright/Hutchwright/window/1", "step", ("openings",))
        wait_for("the step Openings", lambda: items <= self.names_in_lists())

    def names_in_lists(self):
        return {label for node in self.window().all() if node.role == "list item"
                for label in node.named("label")}

    def test_everything_in_the_preferences_has_a_name(self):
        give("/org/hutchwright/Hutchwright", "preferences")
        wait_for("the preferences", lambda: len(windows_of(self.program.pid)) > 1)
        for accessible in windows_of(self.program.pid):
            complaints = find_faults(Node(accessible))
            self.assertEqual(complaints, [], "\n".join(complaints))


class Faults(unittest.TestCase):
    def test_a_button_without_a_name_is_found(self):
        node = Node.__new__(Node)
        node.role, node.name, node.children = "push button", "GtkButton", []
        self.assertEqual(len(find_faults(node)), 1)


if __name__ == "__main__":
    unittest.main()
