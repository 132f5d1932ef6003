#!/usr/bin/env python3
# tests/house/test-globals.py: the core has no writable globals but once-guards of GLib.
# SPDX-License-Identifier: GPL-3.0-or-later
"""Usage: test-globals.py LIBRARY: the static library of the core, built without sanitizers."""
import os
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

import house

# Sections that can be written while the program runs. Read-only data that holds addresses lies in
# .data.rel.ro, which the loader makes read-only.
WRITABLE = re.compile(r"^\.(data|bss|tdata|tbss)(?!\.rel\.ro)|^\*COM\*")
# What GLib's macros need once per process: quarks, registered types, enter-once guards, and the
# registration record of compiled-in resources.
ALLOWED = re.compile(r"^(q|quark|.*_quark|g_define_type_id|static_g_define_type_id|"
                     r"gtype_id|.*_once|static_resource)(\.\d+)?$")


def find_writable(library):
    """"member: symbol in section" for each writable symbol that is not allowed."""
    listing = subprocess.run(["nm", "--format=sysv", library], capture_output=True, check=True,
                             text=True).stdout
    complaints, member = [], "?"
    for line in listing.splitlines():
        if line.startswith("Symbols from "):
            member = line.removeprefix("Symbols from ").rstrip(":")
        fields = [field.strip() for field in line.split("|")]
        if len(fields) == 7 and WRITABLE.match(fields[6]) and not ALLOWED.match(fields[0]) \
                and fields[3] != "SECTION":
            complaints.append(f"{member}: {fields[0]} in {fields[6]}")
    return complaints


def compile_one(text):
    """Complaints about an object file of that text."""
    with tempfile.TemporaryDirectory() as folder:
        source, target = os.path.join(folder, "a.c"), os.path.join(folder, "a.o")
        with open(source, "w", encoding="utf-8") as file:
            file.write(text)
        subprocess.run(["cc", "-fPIC", "-c", source, "-o", target], check=True)
        return find_writable(target)


class Globals(unittest.TestCase):
    library = None

    def test_the_core_library_has_no_writable_global(self):
        complaints = find_writable(self.library)
        self.assertEqual(complaints, [], house.report(complaints))

    @unittest.skipUnless(shutil.which("cc"), "no compiler called cc")
    def test_a_counter_is_caught_wherever_it_stands(self):
        self.assertEqual(len(compile_one("int calls;")), 1)
        self.assertEqual(len(compile_one("static int calls = 1; int f (void) { return calls++; }")), 1)
        self.assertEqual(len(compile_one("int f (void) { static int calls; return calls++; }")), 1)

    @unittest.skipUnless(shutil.which("cc"), "no compiler called cc")
    def test_constant_tables_and_quarks_pass(self):
        self.assertEqual(compile_one('const char *const names[] = { "a", "b" };'), [])
        self.assertEqual(compile_one("int f (void) { static int q; return q++; }"), [])


if __name__ == "__main__":
    Globals.library = sys.argv.pop()
    unittest.main()
