#!/usr/bin/env python3
# tests/house/test-spdx.py: each source says its licence and its purpose at the top.
# SPDX-License-Identifier: GPL-3.0-or-later
import pathlib
import unittest

import house

TAG = "SPDX-License-Identifier: GPL-3.0-or-later"
CODE = {".c", ".h", ".py", ".sh"}
# Files that a tool writes in a fixed form, and icons and schemas, carry the licence line only.
TAGGED = {".svg", ".ui", ".css", ".rng"}
HEAD_LINES = 8


def tree_files(root):
    """Tracked files; in a source archive all files of the folders that hold sources."""
    names = house.tracked(root)
    if names is None:
        names = [str(path.relative_to(root)) for folder in ("src", "tests", "ui", "icons")
                 for path in (root / folder).rglob("*") if path.is_file()]
    return [pathlib.Path(name) for name in names if (root / name).exists()]


def find_untagged(root):
    complaints = []
    for path in tree_files(root):
        if path.suffix not in CODE | TAGGED:
            continue
        head = house.read(root, path).splitlines()[:HEAD_LINES]
        if not any(TAG in line for line in head):
            complaints.append(f"{path}: no {TAG!r} in its first {HEAD_LINES} lines")
        if path.suffix in CODE and not any(f"{path}: " in line for line in head):
            complaints.append(f'{path}: must open with "{path}: what it is for"')
    return complaints


class Spdx(unittest.TestCase):
    def test_each_source_is_tagged_and_says_what_it_is_for(self):
        complaints = find_untagged(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def find_in(self, text):
        with house.small_tree({"src/geom/hut-a.c": text}) as root:
            return find_untagged(root)

    def test_a_missing_tag_and_a_missing_purpose_are_caught(self):
        self.assertEqual(len(self.find_in("int a;\n")), 2)
        self.assertEqual(len(self.find_in(f"/* {TAG} */\n")), 1)
        self.assertEqual(self.find_in(f"/* src/geom/hut-a.c: an a.\n * {TAG} */\n"), [])


if __name__ == "__main__":
    unittest.main()
