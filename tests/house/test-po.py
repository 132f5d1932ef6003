#!/usr/bin/env python3
# tests/house/test-po.py: every file with visible strings is listed for translation, and translations compile.
# SPDX-License-Identifier: GPL-3.0-or-later
import os
import pathlib
import re
import subprocess
import tempfile
import unittest

import house

LIST = "po/POTFILES.in"
# Own choice: new strings may wait for their translator, but not for long.
COMPLETE_MIN_RATIO = 0.9
MARKED_CODE = re.compile(r'(?<!\w)(?:N?C?_|ngettext|g_dgettext|g_dngettext)\s*\(\s*"')
MARKED_UI = re.compile(r'translatable="(?:yes|true)"')
CATALOG = re.compile(r"<catalog[^>]*>\s*<item\b") # po/its says which attributes
HOLDER = re.compile(r"\{\w+\}")
TRANSLATED_BY_RULE = (".desktop.in", ".metainfo.xml.in", ".mime.xml.in", ".gschema.xml")


def has_strings(root, path):
    if path.suffix == ".c":
        return MARKED_CODE.search(house.without_comments(house.read(root, path))) is not None
    if path.suffix == ".ui":
        return MARKED_UI.search(house.read(root, path)) is not None
    if path.suffix == ".xml" and CATALOG.search(house.read(root, path)):
        return True
    return path.name.endswith(TRANSLATED_BY_RULE)


def find_faults(root):
    listed = [line for line in house.read(root, LIST).splitlines()
              if line.strip() and not line.startswith("#")]
    wanted = {str(path.relative_to(root)) for folder in ("src", "ui")
              for path in (root / folder).rglob("*") if path.is_file()
              if has_strings(root, path.relative_to(root))}
    complaints = [f"{name}: has visible strings, but is not in {LIST}"
                  for name in sorted(wanted - set(listed))]
    complaints += [f"{name}: is in {LIST} without visible strings"
                   for name in sorted(set(listed) - wanted)]
    if listed != sorted(set(listed)):
        complaints.append(f"{LIST}: must be sorted, each name once")
    return complaints


def languages(root):
    return [line for line in house.read(root, "po/LINGUAS").split() if not line.startswith("#")]


class Po(unittest.TestCase):
    def test_the_list_is_complete_and_sorted(self):
        complaints = find_faults(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    def test_each_language_compiles_with_all_checks(self):
        self.assertNotEqual(languages(house.ROOT), [])
        for language in languages(house.ROOT):
            result = subprocess.run(["msgfmt", "--check", "--check-accelerators=_", "-o", "/dev/null",
                                     house.ROOT / "po" / f"{language}.po"],
                                    capture_output=True, text=True)
            self.assertEqual((result.returncode, result.stderr), (0, ""))

    def test_templates_keep_their_place_holders(self):
        for language in languages(house.ROOT):
            complaints = find_lost_holders(house.ROOT / "po" / f"{language}.po")
            self.assertEqual(complaints, [], house.report(complaints))

    def test_each_translation_is_nearly_complete(self):
        for language in languages(house.ROOT):
            missing, count = find_untranslated(house.ROOT, house.ROOT / "po" / f"{language}.po")
            self.assertGreater(count, 0)
            print(f"{language}: {count - len(missing)} of {count} messages translated")
            self.assertLessEqual(len(missing), (1.0 - COMPLETE_MIN_RATIO) * count, house.report(missing))

    def find_in(self, files):
        with house.small_tree({"ui/a.css": ""} | files) as root:
            return find_faults(root)

    def test_an_unlisted_a_stale_and_an_unsorted_name_are_caught(self):
        code = {"src/app/hut-a.c": 's = _("a");', "src/geom/hut-b.c": 's = N_("b");',
                "src/app/hut-c.c": '/* _("c") */'}
        self.assertEqual(len(self.find_in(code | {LIST: "src/app/hut-a.c\n"})), 1)
        self.assertEqual(self.find_in(code | {LIST: "src/app/hut-a.c\nsrc/geom/hut-b.c\n"}), [])
        self.assertEqual(len(self.find_in(code | {LIST: "src/geom/hut-b.c\nsrc/app/hut-a.c\n"})), 1)
        self.assertEqual(
            len(self.find_in(code | {LIST: "src/app/hut-a.c\nsrc/app/hut-c.c\nsrc/geom/hut-b.c\n"})), 1)

    def test_an_untranslated_and_an_unsure_message_are_missed(self):
        head = 'msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n\n'
        files = {LIST: "src/app/hut-a.c\n", "src/app/hut-a.c": 's = _("one"), t = _("two"), u = _("three");',
                 "po/meson.build": "'--keyword=_'",
                 "po/xx.po": head + 'msgid "one"\nmsgstr "eins"\n\n#, fuzzy\nmsgid "two"\nmsgstr "zwo"\n'}
        with house.small_tree(files) as root:
            missing, count = find_untranslated(root, root / "po/xx.po")
        self.assertEqual((len(missing), count), (2, 3))

    def test_a_lost_place_holder_is_caught(self):
        good = 'msgid "{what} is {is} mm"\nmsgstr "{what} ist {is} mm"\n'
        bad = 'msgid "{what} is {is} mm"\nmsgstr "{was} ist {is} mm"\n'
        untranslated = 'msgid "{what}"\nmsgstr ""\n'
        plural = ('msgid "{is} hole"\nmsgid_plural "{is} holes"\n'
                  'msgstr[0] "{is} Loch"\nmsgstr[1] "%s Löcher"\n')
        for text, count in ((good, 0), (bad, 1), (untranslated, 0), (plural % "{is}", 0), (plural % "{ist}", 1),
                            (good.replace(" mm", "").replace("ist {is}", "ist"), 1)):
            with tempfile.NamedTemporaryFile("w", suffix=".po") as file:
                file.write('msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n\n' + text)
                file.flush()
                self.assertEqual(len(find_lost_holders(file.name)), count, text)


def find_untranslated(root, po):
    """Strings that the translation lacks or has for an older wording, and how many there are in all."""
    keywords = [word.strip("'") for word in re.findall(r"'--keyword=[^']+'", house.read(root, "po/meson.build"))]
    with tempfile.TemporaryDirectory() as folder:
        pot, merged = f"{folder}/all.pot", f"{folder}/merged.po"
        subprocess.run(["xgettext", *keywords, "--from-code=UTF-8", "-f", "po/POTFILES.in", "-o", pot],
                       cwd=root, check=True, capture_output=True, env=os.environ | {"GETTEXTDATADIRS": "po"})
        subprocess.run(["msgmerge", "-q", "--no-fuzzy-matching", "-o", merged, po, pot], check=True)
        rest = [subprocess.run(["msgattrib", state, "--no-wrap", "--no-obsolete", merged], check=True,
                               capture_output=True, text=True).stdout for state in ("--untranslated", "--only-fuzzy")]
        count = house.read(pathlib.Path(folder), "all.pot").count("\nmsgid ") - 1
    missing = [entry for text in rest for entry in text.split("\n\n")[1:]]
    return [f"{po.name}: {entry}" for entry in missing], count


def find_lost_holders(po):
    """Translations that have other {place holders} than the original, each plural form against its own."""
    joined = subprocess.run(["msgcat", "--no-wrap", "--no-location", po], capture_output=True,
                            check=True, text=True).stdout
    complaints = []
    for entry in joined.split("\n\n"):
        texts = dict(re.findall(r'^(msg\w+(?:\[\d\])?) "(.*)"$', entry, re.M))
        for key in (key for key, text in texts.items() if key.startswith("msgstr") and text):
            source = texts["msgid" if key in ("msgstr", "msgstr[0]") else "msgid_plural"]
            if sorted(HOLDER.findall(source)) != sorted(HOLDER.findall(texts[key])):
                complaints.append(f"{po}: {source!r} and {texts[key]!r} differ in their place holders")
    return complaints


if __name__ == "__main__":
    unittest.main()
