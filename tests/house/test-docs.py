#!/usr/bin/env python3
# tests/house/test-docs.py: public functions of the core are documented, and every double says its unit.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import unittest

import house

# A unit at the end of a name. The last ones are for what has none: counts, ratios, and components of a
# vector, whose unit stands at the vector.
UNITS = ("rpm", "mm", "mm2", "mm3", "m", "m2", "m3", "kg", "n", "nm", "pa", "w", "s", "rad", "deg", "px", "ratio",
         "count", "percent", "kg_m3", "m3_h", "mm_min", "px_per_mm", "m_s", "m3_s", "c", "k", "db", "pa_s",
         "kg_s", "kg_m2", "w_m2", "w_mk", "w_m2k", "m2k_w", "w_k", "n_m", "n_m2", "m2_l")
DOUBLE = re.compile(r"\bdouble\s+\*?\s*([^;{}()]+?)\s*[;,)]|\bdouble\s+\*?\s*(hut_\w+)\s*\(")
FUNCTION = re.compile(r"^(?!typedef|#|static inline|G_DE|\s|/|\*|\}|\{)[^\n;]*?\b(hut_\w+) \(", re.M)


def paragraph_has_comment(lines, index):
    """TRUE when a comment stands over line index, in the same paragraph or right over it."""
    while index >= 0 and lines[index].strip():
        if "*/" in lines[index] or "//" in lines[index]:
            return True
        index -= 1
    return False


def find_undocumented(root):
    complaints = []
    for path in house.sources(root, ".h"):
        if house.layer_of(path) not in house.CORE:
            continue
        text = house.read(root, path)
        lines = text.splitlines()
        code = house.without_comments_and_text(text)
        for match in FUNCTION.finditer(code):
            name, number = match.group(1), house.line_of(code, match.start(1)) - 1
            if name.endswith(("_quark", "_get_type", "_free", "_copy", "_new")):
                continue
            if not paragraph_has_comment(lines, number):
                complaints.append(f"{path}:{number + 1}: {name} () has no word on what it does")
    return complaints


def unit_of(name):
    return any(name == unit or name.endswith("_" + unit) for unit in UNITS)


def find_unitless(root):
    complaints = []
    for path in house.sources(root, ".h"):
        if house.layer_of(path) not in house.CORE:
            continue
        text = house.read(root, path)
        lines = text.splitlines()
        code = house.without_comments(text)
        for match in DOUBLE.finditer(house.without_comments_and_text(text)):
            number = house.line_of(code, match.start())
            names = [name.strip(" *") for name in re.sub(r"\[[^]]*\]", "", match.group(1) or
                                                         match.group(2)).split(",")]
            if all(unit_of(name.split()[-1]) for name in names if name):
                continue
            near = "\n".join(lines[max(number - 7, 0):number + 1])
            if not says_unit(near):
                complaints.append(f"{path}:{number}: {', '.join(names)}: no unit in name or comment")
    return complaints


def says_unit(text):
    """TRUE when a comment in the text names a unit."""
    comments = " ".join(re.findall(r"/\*(?:.*?)\*/|/\*.*$|^ \*.*$", text, re.S | re.M))
    return re.search(r"\b(mm|mm2|mm3|kg|deg(rees)?|rad|ratio|unit|px|matrix|decimals?|doubles?|numbers?|kg/m3|"
                     r"currency)\b", comments) is not None


class Docs(unittest.TestCase):
    def test_each_public_function_of_the_core_is_documented(self):
        complaints = find_undocumented(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def test_each_double_of_a_core_header_has_a_unit(self):
        complaints = find_unitless(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def find_in(self, check, text):
        with house.small_tree({"src/geom/hut-a.h": text}) as root:
            return check(root)

    def test_a_function_without_a_word_is_caught(self):
        self.assertEqual(len(self.find_in(find_undocumented, "/* Head. */\n\nint hut_a (void);\n")), 1)
        self.assertEqual(self.find_in(find_undocumented, "/* Says it. */\nint hut_a (void);\n"), [])
        self.assertEqual(self.find_in(find_undocumented,
                                      "/* Both. */\nint hut_a (void);\nint hut_b (void);\n"), [])

    def test_a_double_without_unit_is_caught(self):
        self.assertEqual(len(self.find_in(find_unitless, "double hut_a (double speed);\n")), 2)
        self.assertEqual(self.find_in(find_unitless, "double hut_a_mm (double load_n);\n"), [])
        self.assertEqual(self.find_in(find_unitless, "struct a\n{\n  double u, v; /* mm */\n};\n"), [])


if __name__ == "__main__":
    unittest.main()
