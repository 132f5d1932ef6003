#!/usr/bin/env python3
# tests/house/test-scripts.py: the two commands of the README do what it says, from any folder.
# SPDX-License-Identifier: GPL-3.0-or-later
import os
import pathlib
import re
import subprocess
import tempfile
import unittest

import house

BUILD = pathlib.Path(os.environ["HUT_BUILD_ROOT"])
SCRIPTS = ("src/run.sh", "src/setup.sh", "tests/run.sh")
LISTS = ("src/packages.txt", "tests/packages.txt")


class Scripts(unittest.TestCase):
    def test_the_scripts_are_posix_shell(self):
        for script in SCRIPTS:
            result = subprocess.run(["dash", "-n", house.ROOT / script], capture_output=True, text=True)
            self.assertEqual((result.returncode, result.stderr), (0, ""), script)

    def test_each_package_is_named_once(self):
        names = [line for name in LISTS for line in house.read(house.ROOT, name).splitlines()
                 if line and not line.startswith("#")]
        self.assertEqual(len(names), len(set(names)))
        for name in names:
            self.assertRegex(name, r"^[a-z0-9][a-z0-9+.-]+$")

    def test_missing_packages_are_told_from_installed_ones(self):
        with tempfile.TemporaryDirectory() as folder:
            listing = pathlib.Path(folder) / "packages.txt"
            listing.write_text("# a comment\ndpkg\nhutchwright-no-such-package\n\nlibc6 # and another\n")
            told = subprocess.run(["sh", "-c", '. "$0"; missing_packages "$1"',
                                   house.ROOT / "src/setup.sh", listing],
                                  capture_output=True, text=True, check=True).stdout
        self.assertEqual(told.split(), ["hutchwright-no-such-package"])

    def test_the_ci_runs_the_tests(self):
        self.assertIn("sh tests/run.sh", house.read(house.ROOT, ".ci/run"))
        self.assertTrue(os.access(house.ROOT / ".ci/run", os.X_OK))


@unittest.skipUnless(BUILD == house.ROOT / "build", "run.sh builds in build/, this is another folder")
class Run(unittest.TestCase):
    def setUp(self):
        self.scratch = tempfile.TemporaryDirectory()
        self.folder = pathlib.Path(self.scratch.name)
        self.addCleanup(self.scratch.cleanup)

    def run_sh(self, *arguments):
        env = {key: value for key, value in os.environ.items()
               if key not in ("DISPLAY", "WAYLAND_DISPLAY")}
        return subprocess.run(["sh", house.ROOT / "src/run.sh", *arguments], cwd=self.folder, env=env,
                              capture_output=True, text=True)

    def test_arguments_go_to_the_program_in_the_callers_folder(self):
        written = self.run_sh("example", "mini-router", "--to", "a b.hutch")
        self.assertEqual(written.returncode, 0, written.stderr)
        self.assertTrue((self.folder / "a b.hutch").exists())
        self.assertEqual(self.run_sh("check", "no such.hutch").returncode, 3)

    def test_without_a_display_the_set_is_written_twice_alike(self):
        first = self.run_sh()
        self.assertEqual(first.returncode, 0, first.stderr)
        files = {path.name: path.read_bytes() for path in (self.folder / "out").iterdir()}
        self.assertIn("manifest.xml", files)
        told = {pathlib.Path(line).name for line in re.findall(r"^out/\S+$", first.stdout, re.M)}
        self.assertEqual(told, set(files))
        self.assertEqual(self.run_sh().returncode, 0)
        self.assertEqual({path.name: path.read_bytes() for path in (self.folder / "out").iterdir()}, files)
        self.assertEqual([path.name for path in self.folder.iterdir()], ["out"])


if __name__ == "__main__":
    unittest.main()
