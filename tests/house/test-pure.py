#!/usr/bin/env python3
# tests/house/test-pure.py: the core writes numbers whatever the locale, and asks no clock, environment or chance.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import unittest

import house

# Reading or writing numbers in the locale of the process, or asking for it.
LOCALE_CALL = re.compile(r"\b(atof|strto(?:d|f|ld)|v?f?s?scanf|setlocale|newlocale|uselocale|localeconv|"
                         r"strcoll|strftime|gettext|dgettext|ngettext|g_dgettext)\s*\(")
# What makes two runs differ.
IMPURE_CALL = re.compile(r"\b(rand|random|srand|drand48|g_random_\w+|g_rand_new|time|clock|gettimeofday|"
                         r"clock_gettime|g_get_real_time|g_get_current_time|g_date_time_new_now\w*|"
                         r"getenv|secure_getenv|g_getenv|g_get_user_name|g_get_real_name)\s*\(")
TRANSLATING = re.compile(r"(?<![\w])_\s*\(\s*\"")
# A conversion of a floating number in a format string. Without decimals ("%.0f") there is no mark.
FLOAT_FORMAT = re.compile(r"%(?![-+ 0]*\d*\.0[fF])[-+ #0']*(?:\d+|\*)?(?:\.(?:\d+|\*))?L?[aAeEfFgG]")
TEXT = re.compile(r'"(?:\\.|[^"\\\n])*"')
# Functions whose format is written with '.' everywhere.
LOCALE_FREE = re.compile(r"\b(g_ascii_formatd)\s*\(")

LOCALE_LAYERS = house.CORE + ("cli",)


def free_of_locale(code, offset):
    """TRUE when the text at offset is an argument of a locale-free function."""
    start = max(code.rfind(";", 0, offset), code.rfind("{", 0, offset)) + 1
    return LOCALE_FREE.search(code, start, offset) is not None


def find_locale(path, code, bare):
    for match in LOCALE_CALL.finditer(bare):
        if house.layer_of(path) == "cli" and match.group(1) in ("setlocale", "gettext", "ngettext"):
            continue
        yield match.start(), f"{match.group(1)} () depends on the locale"
    for match in TEXT.finditer(code):
        if FLOAT_FORMAT.search(match.group().replace("%%", "")) \
                and not free_of_locale(code, match.start()):
            yield match.start(), f"{match.group()} writes a number in the locale; see hut-number.h"


def find_impure(bare, code):
    for match in IMPURE_CALL.finditer(bare):
        yield match.start(), f"{match.group(1)} () makes the result depend on more than the design"
    for match in TRANSLATING.finditer(code):
        yield match.start(), "_() translates; the core marks with N_ () and leaves that to its caller"


def find_faults(root):
    complaints = []
    for path in house.sources(root, ".c", ".h"):
        layer = house.layer_of(path)
        if layer not in LOCALE_LAYERS:
            continue
        text = house.read(root, path)
        code, bare = house.without_comments(text), house.without_comments_and_text(text)
        found = list(find_locale(path, code, bare))
        if layer in house.CORE:
            found += find_impure(bare, code)
        complaints += [f"{path}:{house.line_of(code, offset)}: {what}" for offset, what in sorted(found)]
    return complaints


class Pure(unittest.TestCase):
    def test_the_core_depends_on_the_design_alone(self):
        complaints = find_faults(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def find_in(self, text, name="src/export/hut-a.c"):
        with house.small_tree({name: text}) as root:
            return find_faults(root)

    def test_each_way_to_depend_on_the_locale_is_caught(self):
        for text in ('x = atof (s);', 'x = strtod (s, NULL);', 'sscanf (s, "%lf", &x);',
                     'g_string_append_printf (s, "%g", x);', 'printf ("%-8.3f mm", x);',
                     'printf ("%*.*e", 3, 2, x);', 'printf ("%\'.0f", x);', 'setlocale (LC_ALL, "");'):
            self.assertGreaterEqual(len(self.find_in(text)), 1, text)

    def test_each_way_to_be_impure_is_caught(self):
        for text in ('t = time (NULL);', 'g_getenv ("HOME");', 'g_random_int ();', 's = _("yes");'):
            self.assertEqual(len(self.find_in(text)), 1, text)

    def test_locale_free_ways_pass(self):
        for text in ('x = g_ascii_strtod (s, NULL);', 'g_ascii_formatd (b, 32, "%.17g", x);',
                     'printf ("%d %s %u%%", 1, "a", 2u);', '/* printf ("%g") */', 'N_("{is} mm");',
                     'printf ("100 %% free");', 'printf ("%.0f,%3.0f", x, y);', 'runtime (x);'):
            self.assertEqual(self.find_in(text), [], text)

    def test_the_window_may_show_numbers_in_the_locale(self):
        self.assertEqual(self.find_in('printf ("%g", x);', "src/app/hut-a.c"), [])

    def test_the_command_line_may_translate_but_not_print_numbers_in_the_locale(self):
        self.assertEqual(self.find_in('setlocale (LC_ALL, ""); _("a");', "src/cli/hut-a.c"), [])
        self.assertEqual(len(self.find_in('printf ("%g", x);', "src/cli/hut-a.c")), 1)


if __name__ == "__main__":
    unittest.main()
