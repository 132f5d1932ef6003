#!/usr/bin/env python3
# tests/house/test-desktop.py: the files for the desktop satisfy the freedesktop tools and name each other right.
# SPDX-License-Identifier: GPL-3.0-or-later
import os
import pathlib
import re
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree as ET

import house

APP_ID = "org.hutchwright.Hutchwright"
MIME_TYPE = "application/x-hutchwright+xml"
UI = pathlib.Path(os.environ["HUT_BUILD_ROOT"]) / "ui"
ICONS = house.ROOT / "icons" / "hicolor"
MIME_NS = "{http://www.freedesktop.org/standards/shared-mime-info}"


class Desktop(unittest.TestCase):
    def run_clean(self, *command, env=None):
        """The tool ends 0; its output is handed back."""
        result = subprocess.run(command, capture_output=True, text=True,
                                env=dict(os.environ, LC_ALL="C.UTF-8", **(env or {})))
        self.assertEqual(result.returncode, 0, f"{command}: {result.stdout}{result.stderr}")
        return result.stdout + result.stderr

    def test_the_desktop_entry_is_valid_without_a_hint(self):
        self.assertEqual(self.run_clean("desktop-file-validate", UI / f"{APP_ID}.desktop"), "")

    def test_the_desktop_entry_names_program_icon_and_type(self):
        entry = dict(line.split("=", 1) for line in
                     (UI / f"{APP_ID}.desktop").read_text().splitlines() if "=" in line)
        self.assertEqual(entry["Exec"].split()[0], "hutchwright")
        self.assertTrue((ICONS / "scalable" / "apps" / f"{entry['Icon']}.svg").exists())
        self.assertEqual(entry["MimeType"], MIME_TYPE + ";")

    def test_the_metainfo_is_valid_in_strict_mode(self):
        self.run_clean("appstreamcli", "validate", "--no-net", "--strict", UI / f"{APP_ID}.metainfo.xml")

    def test_the_metainfo_fits_the_other_files(self):
        root = ET.parse(UI / f"{APP_ID}.metainfo.xml").getroot()
        self.assertEqual(root.findtext("id"), APP_ID)
        self.assertEqual(root.findtext("launchable"), f"{APP_ID}.desktop")
        self.assertEqual(root.findtext("provides/mediatype"), MIME_TYPE)
        version = re.search(r"^  version: '([^']+)'", house.read(house.ROOT, "meson.build"), re.M)
        self.assertEqual(root.find("releases/release").get("version"), version.group(1))

    def test_design_files_get_their_type(self):
        design = '<?xml version="1.0"?>\n<design xmlns="urn:hutchwright:design:1"/>\n'
        with tempfile.TemporaryDirectory() as folder:
            packages = pathlib.Path(folder) / "mime" / "packages"
            packages.mkdir(parents=True)
            (packages / f"{APP_ID}.xml").write_bytes((UI / f"{APP_ID}.xml").read_bytes())
            self.assertEqual(self.run_clean("update-mime-database", packages.parent,
                                            env={"XDG_DATA_HOME": folder}), "")
            file = pathlib.Path(folder) / "laser.hutch"
            file.write_text(design)
            told = self.run_clean("gio", "info", "-a", "standard::content-type", file,
                                  env={"XDG_DATA_HOME": folder})
        self.assertIn(f"standard::content-type: {MIME_TYPE}\n", told)

    def test_the_type_names_the_namespace_that_designs_have(self):
        root = ET.parse(UI / f"{APP_ID}.xml").getroot()
        namespace = root.find(f"{MIME_NS}mime-type/{MIME_NS}root-XML").get("namespaceURI")
        header = house.read(house.ROOT, "src/design/hut-file.h")
        self.assertIn(f'#define HUT_DESIGN_NS "{namespace}"', header)

    def test_settings_schemas_compile_in_strict_mode(self):
        schemas = sorted((house.ROOT / "ui").glob("*.gschema.xml"))
        self.assertNotEqual(schemas, [], "no settings schema in ui/")
        with tempfile.TemporaryDirectory() as folder:
            self.run_clean("glib-compile-schemas", "--strict", f"--targetdir={folder}",
                           house.ROOT / "ui")
        for schema in schemas:
            self.assertTrue(ET.parse(schema).getroot().find("schema").get("id").startswith(APP_ID))

    def test_every_xml_file_is_well_formed(self):
        names = [path for folder in ("ui", "icons", "src")
                 for path in (house.ROOT / folder).rglob("*")
                 if path.suffix in (".xml", ".ui", ".svg", ".rng", ".hutch")
                 or path.name.endswith(".xml.in")]
        self.assertGreater(len(names), 10)
        self.run_clean("xmllint", "--noout", "--nonet", *names)


if __name__ == "__main__":
    unittest.main()
