# tests/gui/screenreader.py: the real program as a screen reader meets it, over the bus that those use.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import subprocess
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, Gio, GLib

BUS_NAME = "org.hutchwright.Hutchwright"
BUS_PATH = "/org/hutchwright/Hutchwright"
DEADLINE_S = 60  # own choice: far more than a loaded machine needs
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


def wait_for(what, condition):
    end = time.monotonic() + DEADLINE_S
    while True:
        found = condition()
        if found:
            return found
        if time.monotonic() > end:
            raise AssertionError(f"waited {DEADLINE_S} s for {what}")
        while GLib.MainContext.default().iteration(False):  # what the bus tells meanwhile
            pass
        time.sleep(0.1)


def _windows_of(pid):
    desktop = Atspi.get_desktop(0)
    desktop.clear_cache()  # else it may keep what it saw before the program came
    programs = (desktop.get_child_at_index(i) for i in range(desktop.get_child_count()))
    return [program.get_child_at_index(i) for program in programs
            if program is not None and program.get_process_id() == pid
            for i in range(program.get_child_count())]


class Program:
    """The program with its window open."""

    def __init__(self, *command):
        Atspi.get_desktop(0)  # first the bus, then who speaks on it: a program asks for it only once
        self._process = subprocess.Popen(command)
        try:
            wait_for("the window", lambda: _windows_of(self._process.pid))
        except AssertionError:
            self.close()
            raise

    def close(self):
        self._process.terminate()
        self._process.wait()

    def windows(self):
        """All windows, the first one first."""
        return [Node(window) for window in _windows_of(self._process.pid)]

    def window(self):
        return Node(_windows_of(self._process.pid)[0])

    def window_size_px(self):
        extents = _windows_of(self._process.pid)[0].get_component_iface().get_extents(Atspi.CoordType.WINDOW)
        return extents.width, extents.height

    def give(self, command, *parameters, path=BUS_PATH):
        """A command of the program, by the name that the desktop knows it under."""
        bus = Gio.bus_get_sync(Gio.BusType.SESSION)
        bus.call_sync(BUS_NAME, path, "org.gtk.Actions", "Activate",
                      GLib.Variant("(sava{sv})", (command, [GLib.Variant("s", p) for p in parameters], {})),
                      None, Gio.DBusCallFlags.NONE, DEADLINE_S * 1000)

    def give_window(self, command, *parameters):
        self.give(command, *parameters, path=BUS_PATH + "/window/1")
