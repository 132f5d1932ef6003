#!/usr/bin/env python3
# tests/house/test-install.py: what gets installed is complete, and the installed program speaks the user's language.
# SPDX-License-Identifier: GPL-3.0-or-later
import os
import pathlib
import subprocess
import tempfile
import unittest

import house

APP_ID = "org.hutchwright.Hutchwright"
BUILD = os.environ["HUT_BUILD_ROOT"]
INSTALLED = [
    "bin/hutchwright",
    f"share/applications/{APP_ID}.desktop",
    f"share/metainfo/{APP_ID}.metainfo.xml",
    f"share/mime/packages/{APP_ID}.xml",
    f"share/glib-2.0/schemas/{APP_ID}.gschema.xml",
    f"share/icons/hicolor/scalable/apps/{APP_ID}.svg",
    f"share/icons/hicolor/symbolic/apps/{APP_ID}-symbolic.svg",
    "share/icons/hicolor/scalable/mimetypes/application-x-hutchwright+xml.svg",
]


class Install(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        top = pathlib.Path(cls.folder.name)
        subprocess.run(["meson", "install", "-C", BUILD, "--no-rebuild", "--quiet", "--destdir", top],
                       capture_output=True, check=True)
        cls.prefix = next(top.rglob("bin/hutchwright")).parent.parent
        locale = top / "locale"
        locale.mkdir()
        subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", locale / "de_DE.UTF-8"], check=True)
        cls.german = dict(os.environ, LOCPATH=str(locale), LC_ALL="de_DE.UTF-8", LANGUAGE="de",
                          HUTCHWRIGHT_LOCALE_DIR=str(cls.prefix / "share" / "locale"))

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def test_everything_a_desktop_looks_for_is_installed(self):
        missing = [name for name in INSTALLED if not (self.prefix / name).exists()]
        self.assertEqual(missing, [])

    def test_each_language_is_installed(self):
        for language in house.read(house.ROOT, "po/LINGUAS").split():
            self.assertTrue((self.prefix / "share/locale" / language / "LC_MESSAGES/hutchwright.mo")
                            .exists(), language)

    def test_no_library_and_no_header_of_ours_is_installed(self):
        strays = [path.name for path in self.prefix.rglob("*") if path.suffix in (".a", ".so", ".h")]
        self.assertEqual(strays, [])

    def call(self, *arguments, env=None):
        return subprocess.run([self.prefix / "bin/hutchwright", *arguments], capture_output=True,
                              text=True, env=env)

    def test_help_is_english_without_a_locale_and_german_with_one(self):
        english = self.call("--help", env=dict(os.environ, LC_ALL="C.UTF-8"))
        german = self.call("--help", env=self.german)
        self.assertEqual((english.returncode, german.returncode), (0, 0))
        self.assertIn("Exit status:", english.stdout)
        self.assertIn("Rückgabewert:", german.stdout)

    def test_help_is_spanish_where_that_is_asked_for(self):
        spanish = self.call("--help", env=self.german | {"LANGUAGE": "es"})
        self.assertEqual(spanish.returncode, 0, spanish.stderr)
        self.assertIn("Estado de salida:", spanish.stdout)

    def test_a_design_is_the_same_bytes_in_every_language(self):
        english = self.call("example", "engraver", "--to", "-", env=dict(os.environ, LC_ALL="C.UTF-8"))
        german = self.call("example", "engraver", "--to", "-", env=self.german)
        self.assertEqual(english.returncode, 0, english.stderr)
        self.assertEqual(english.stdout, german.stdout)

    def test_the_version_is_the_projects(self):
        told = self.call("--version").stdout
        self.assertIn(f"version: '{told.split()[-1]}'", house.read(house.ROOT, "meson.build"))


if __name__ == "__main__":
    unittest.main()
