#!/usr/bin/env python3
# tests/house/test-top-level.py: the top of the tree holds the agreed entries and nothing else.
# SPDX-License-Identifier: GPL-3.0-or-later
import unittest

import house

ENTRIES = {"README.md", "DEVELOPERS.md", "LICENSE", "meson.build", "src", "ui", "tests", "icons", "po"}


def find_strangers(names):
    """Complaints about a list of tracked files."""
    tops = {name.split("/")[0] for name in names}
    return sorted(f"{top}: not one of {', '.join(sorted(ENTRIES))}"
                  for top in tops - ENTRIES if not top.startswith("."))


class TopLevel(unittest.TestCase):
    def test_only_agreed_entries_are_tracked(self):
        names = house.tracked(house.ROOT)
        if names is None:
            self.skipTest("not a git clone")
        complaints = find_strangers(names)
        self.assertEqual(complaints, [], house.report(complaints))

    def test_all_agreed_entries_are_there(self):
        missing = [entry for entry in sorted(ENTRIES) if not (house.ROOT / entry).exists()]
        self.assertEqual(missing, [])

    def test_a_stranger_is_caught_and_dot_files_pass(self):
        self.assertEqual(find_strangers([".ci/run", ".gitignore", "src/a.c", "README.md"]), [])
        self.assertEqual(len(find_strangers(["docs/a.md", "docs/b.md", "Makefile"])), 2)


if __name__ == "__main__":
    unittest.main()
