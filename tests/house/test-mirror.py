#!/usr/bin/env python3
# tests/house/test-mirror.py: each source file of the core has its test file, or names the one that covers it.
# SPDX-License-Identifier: GPL-3.0-or-later
import unittest

import house

LIST = "tests/house/mirror.txt"
MIRRORED = tuple(layer for layer in house.LAYERS if layer != "app")


def read_list(root):
    """mirror.txt as {source: (test, reason)}, and complaints about its lines."""
    entries, complaints = {}, []
    path = root / LIST
    lines = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    for number, line in enumerate(lines, 1):
        if not line.strip() or line.startswith("#"):
            continue
        words = line.split(None, 2)
        if len(words) < 3:
            complaints.append(f"{LIST}:{number}: must be SOURCE TEST REASON")
        else:
            entries[words[0]] = (words[1], words[2])
    return entries, complaints


def own_test(path):
    """tests/geom/test-path.c for src/geom/hut-path.c."""
    stem = path.stem.removeprefix("hut-")
    return f"tests/{house.layer_of(path)}/test-{stem}.c"


def find_untested(root):
    entries, complaints = read_list(root)
    for path in house.sources(root, ".c"):
        if house.layer_of(path) not in MIRRORED:
            continue
        entry = entries.pop(str(path), None)
        if (root / own_test(path)).exists():
            if entry:
                complaints.append(f"{path}: has {own_test(path)}, so it is not for {LIST}")
        elif entry is None:
            complaints.append(f"{path}: no {own_test(path)}, and not in {LIST}")
        elif not (root / entry[0]).exists():
            complaints.append(f"{path}: {LIST} says that {entry[0]} covers it, which is not there")
    complaints += [f"{source}: in {LIST}, but not there" for source in entries]
    return complaints


class Mirror(unittest.TestCase):
    def test_each_core_source_has_a_test(self):
        complaints = find_untested(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def find_in(self, files):
        with house.small_tree(files) as root:
            return find_untested(root)

    def test_a_source_without_test_is_caught(self):
        self.assertEqual(len(self.find_in({"src/geom/hut-a.c": ""})), 1)

    def test_a_source_with_its_mirror_passes(self):
        self.assertEqual(self.find_in({"src/geom/hut-a.c": "", "tests/geom/test-a.c": ""}), [])

    def test_a_listed_source_needs_an_existing_test(self):
        files = {"src/geom/hut-a.c": "", LIST: "src/geom/hut-a.c tests/geom/test-b.c half of b\n"}
        self.assertEqual(len(self.find_in(files)), 1)
        self.assertEqual(self.find_in(files | {"tests/geom/test-b.c": ""}), [])

    def test_a_stale_or_short_line_of_the_list_is_caught(self):
        found = self.find_in({"src/geom/hut-a.c": "", "tests/geom/test-a.c": "",
                              LIST: "src/geom/hut-gone.c tests/geom/test-a.c was here\n"
                                    "src/geom/hut-a.c tests/geom/test-a.c\n"})
        self.assertEqual(len(found), 2, house.report(found))


if __name__ == "__main__":
    unittest.main()
