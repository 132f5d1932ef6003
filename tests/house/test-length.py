#!/usr/bin/env python3
# tests/house/test-length.py: files and functions stay short enough to be read.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import unittest

import house

FILE_MAX_LINES = 800      # over 600 is the time to cut by theme; 800 fails
FUNCTION_MAX_LINES = 60   # with both braces: a function fits a screen
COLUMN_MAX = 100

# A function body opens and closes with a brace in the first column, right under its signature; the
# name is the word before the first bracket.
BODY = re.compile(r"^(?:\w[\w \n*]*?)?\b(\w+) ?\((?:[^{};\n]|\n(?!\n))*\)[ ]*\n\{\n(.*?)^\}",
                  re.M | re.S)


def functions(code):
    """(name, line, length) of each function; code without comments and text."""
    for match in BODY.finditer(code):
        start = match.start(2) - len("{\n")
        yield match.group(1), house.line_of(code, start), match.group(2).count("\n") + 2


def find_long(root):
    complaints = []
    for path in house.sources(root, ".c", ".h"):
        text = house.read(root, path)
        count = text.count("\n")
        if count > FILE_MAX_LINES:
            complaints.append(f"{path}: {count} lines, at most {FILE_MAX_LINES}: cut it by theme")
        for name, line, length in functions(house.without_comments_and_text(text)):
            if length > FUNCTION_MAX_LINES:
                complaints.append(f"{path}:{line}: {name} has {length} lines, at most "
                                  f"{FUNCTION_MAX_LINES}")
        if path.suffix == ".c":
            complaints += find_wide(path, text)
    return complaints


def find_wide(path, text):
    return [f"{path}:{number}: {len(line)} columns, at most {COLUMN_MAX}"
            for number, line in enumerate(text.splitlines(), 1) if len(line) > COLUMN_MAX]


def body_of(length):
    return "static int\nlong_one (int a)\n{\n" + "  a++;\n" * (length - 2) + "}\n"


class Length(unittest.TestCase):
    def test_files_functions_and_lines_are_short(self):
        complaints = find_long(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def find_in(self, text):
        with house.small_tree({"src/geom/hut-a.c": text}) as root:
            return find_long(root)

    def test_a_function_one_line_too_long_is_caught(self):
        self.assertEqual(self.find_in(body_of(FUNCTION_MAX_LINES)), [])
        self.assertEqual(self.find_in("\n" + body_of(FUNCTION_MAX_LINES + 1)),
                         ["src/geom/hut-a.c:4: long_one has 61 lines, at most 60"])

    def test_a_table_may_be_long(self):
        table = "static const int table[] =\n{\n" + "  1,\n" * FUNCTION_MAX_LINES + "};\n"
        self.assertEqual(self.find_in(table), [])

    def test_a_file_one_line_too_long_is_caught(self):
        self.assertEqual(self.find_in("\n" * FILE_MAX_LINES), [])
        self.assertEqual(len(self.find_in("\n" * (FILE_MAX_LINES + 1))), 1)

    def test_a_line_one_column_too_wide_is_caught(self):
        self.assertEqual(self.find_in("/" * 2 + "x" * (COLUMN_MAX - 2) + "\n"), [])
        self.assertEqual(len(self.find_in("/" * 2 + "x" * (COLUMN_MAX - 1) + "\n")), 1)

    def test_functions_of_every_layout_are_seen(self):
        code = ("static void\none (int a,\n     int b)\n{\n  if (a)\n    {\n    }\n}\n\n"
                "G_DEFINE_TYPE (A, a, B)\n\nvoid\ntwo (void)\n{\n}\n")
        self.assertEqual([(name, length) for name, _line, length in functions(code)],
                         [("one", 5), ("two", 2)])


if __name__ == "__main__":
    unittest.main()
