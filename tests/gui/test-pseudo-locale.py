#!/usr/bin/env python3
# tests/gui/test-pseudo-locale.py: the window in a language that nobody speaks, with accents and longer words.
# SPDX-License-Identifier: GPL-3.0-or-later
"""Usage: test-pseudo-locale.py PROGRAM, on a display and a message bus of its own (on-display.sh).

Each text is put between brackets, so that one without brackets has escaped translation, and made a third
longer, as German and Finnish make it: the window must still fit the screen of a small laptop."""
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

from screenreader import Program

PROGRAM = sys.argv.pop(1)
ROOT = pathlib.Path(os.environ["HUT_SOURCE_ROOT"])
SCREEN_PX = (1366, 768)
STEPS = ("measure", "shape", "openings", "cut")
LANGUAGE = "qps"  # from the codes for private use in ISO 639-2: GTK speaks it neither
TITLE_BAR = {"Close", "Maximize", "Minimize"}  # texts of GTK itself
OPEN, CLOSE = "⟦", "⟧"
ACCENTS = str.maketrans("aeiouAEIOUncs", "àéïõüÀÉÏÕÜñçš")
# What is for the program to read, not for people: %s, %d, %1$s, {name}, <b>, &amp;
KEPT = re.compile(r"%(?:\d+\$)?[-+0 #']*\d*(?:\.\d+)?[a-zA-Z%]|\{\w+\}|<[^>]+>|&\w+;|\\.|_(?=\w)")
STRINGS = re.compile(r'"((?:[^"\\]|\\.)*)"')


def dup_pseudo(text):
    """@text with accents on its words and a third more of it; place holders and line ends stay."""
    pieces, end = [], 0
    for kept in KEPT.finditer(text):
        pieces += [text[end:kept.start()].translate(ACCENTS), kept.group()]
        end = kept.end()
    pieces.append(text[end:].translate(ACCENTS))
    tail = "\\n" if text.endswith("\\n") else ""
    body = "".join(pieces).removesuffix(tail)
    head = "\\n" if body.startswith("\\n") else ""
    return head + OPEN + body.removeprefix(head) + " ·" * (len(text) // 6) + CLOSE + tail


def translate_entry(entry):
    """One entry of a .po file, its msgstr made from its msgid."""
    parts = {}
    key = None
    for line in entry.splitlines():
        word = re.match(r"(msg\w+(?:\[\d\])?) ", line)
        if word:
            key = word.group(1)
            parts[key] = ""
        if key and not line.startswith("#"):
            parts[key] += "".join(STRINGS.findall(line))
    if not parts.get("msgid"):
        return entry
    lines = [line for line in entry.splitlines() if line.startswith("#,")]
    lines += [f'{name} "{parts[name]}"' for name in ("msgctxt", "msgid", "msgid_plural") if name in parts]
    if "msgid_plural" in parts:
        lines += [f'msgstr[0] "{dup_pseudo(parts["msgid"])}"', f'msgstr[1] "{dup_pseudo(parts["msgid_plural"])}"']
    else:
        lines.append(f'msgstr "{dup_pseudo(parts["msgid"])}"')
    return "\n".join(lines)


def write_language(folder):
    """All texts of the sources, translated, where gettext looks for them below @folder."""
    template = folder / "all.pot"
    options = (ROOT / "po" / "meson.build").read_text(encoding="utf-8")
    keywords = re.findall(r"'(--keyword=[^']+)'", options)
    environment = dict(os.environ, GETTEXTDATADIRS=str(ROOT / "po"))
    subprocess.run(["xgettext", f"--directory={ROOT}", f"--files-from={ROOT}/po/POTFILES.in", "--from-code=UTF-8",
                    f"--output={template}", *keywords], check=True, env=environment)
    entries = template.read_text(encoding="utf-8").replace("CHARSET", "UTF-8")
    entries = entries.replace("nplurals=INTEGER; plural=EXPRESSION;", "nplurals=2; plural=n != 1;")
    messages = folder / LANGUAGE / "LC_MESSAGES"
    messages.mkdir(parents=True)
    translated = folder / "all.po"
    translated.write_text("\n\n".join(map(translate_entry, entries.split("\n\n"))), encoding="utf-8")
    subprocess.run(["msgfmt", "--check-format", "-o", messages / "hutchwright.mo", translated], check=True)


class PseudoLocale(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        write_language(pathlib.Path(cls.folder.name))
        os.environ.update(HUTCHWRIGHT_LOCALE_DIR=cls.folder.name, LANGUAGE=LANGUAGE, LC_ALL="C.UTF-8")
        cls.file = os.path.join(os.environ["HOME"], "printer.hutch")
        subprocess.run([PROGRAM, "example", "printer", "--to", cls.file], check=True)
        cls.program = Program(PROGRAM, cls.file)

    @classmethod
    def tearDownClass(cls):
        cls.program.close()
        cls.folder.cleanup()

    def test_every_text_is_translated(self):
        design = pathlib.Path(self.file).read_text(encoding="utf-8")
        own = set(re.findall(r'"([^"]*)"', design)) | TITLE_BAR | {self.file}
        found = {node.name for node in self.program.window().all() if node.has_name()}
        self.assertTrue(any(OPEN in name for name in found))
        escaped = sorted(name for name in found if OPEN not in name and re.search(r"[A-Za-z]{3}", name)
                         and not own.issuperset(name.split(", ")))
        self.assertEqual(escaped, [], "\n".join(escaped))

    def test_the_window_fits_a_small_laptop(self):
        for step in STEPS:
            self.program.give_window("step", step)
            width, height = self.program.window_size_px()
            self.assertLessEqual(width, SCREEN_PX[0], step)
            self.assertLessEqual(height, SCREEN_PX[1], step)


if __name__ == "__main__":
    unittest.main()
