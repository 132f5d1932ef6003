# tests/house/house.py: how the tests of the house find and read the sources.
# SPDX-License-Identifier: GPL-3.0-or-later
"""Each check is a function that takes the top of a source tree and returns a list of complaints, one
line each, so that a test can also give it a small tree with a known fault and expect the complaint."""
import contextlib
import os
import pathlib
import re
import subprocess
import tempfile

ROOT = pathlib.Path(os.environ.get("HUT_SOURCE_ROOT") or pathlib.Path(__file__).parents[2])

# Lowest first; DESIGN: a file includes from its own layer and from lower ones.
LAYERS = ("geom", "format", "catalog", "design", "assembly", "physics", "engineering", "checks", "sheets", "draw", "export",
          "cli", "app")
# The layers that make the core library: pure, without GTK, free of locale, clock and environment.
CORE = LAYERS[:LAYERS.index("cli")]

_TOKEN = re.compile(r"""
    (?P<comment> //[^\n]* | /\*.*?\*/ )
  | (?P<text> "(?:\\.|[^"\\\n])*" | '(?:\\.|[^'\\\n])*' )
""", re.X | re.S)


def sources(root, *suffixes):
    """All files under src/ with one of these suffixes, sorted, relative to root."""
    found = [path for path in (root / "src").rglob("*") if path.suffix in suffixes]
    return sorted(path.relative_to(root) for path in found)


def layer_of(path):
    """"geom" for src/geom/hut-path.c."""
    return path.parts[1] if len(path.parts) > 2 else None


def _blank(match, keep):
    if match.lastgroup == keep:
        return match.group()
    return re.sub(r"[^\n]", " ", match.group())


def without_comments(code):
    """The code with each comment blanked; lines and columns stay."""
    return _TOKEN.sub(lambda match: _blank(match, "text"), code)


def without_comments_and_text(code):
    """The code with comments and string literals blanked."""
    return _TOKEN.sub(lambda match: _blank(match, None), code)


def read(root, path):
    return (root / path).read_text(encoding="utf-8")


def line_of(code, offset):
    return code.count("\n", 0, offset) + 1


def tracked(root):
    """Names of all files that git tracks, or None where this is no clone (a source archive)."""
    try:
        listing = subprocess.run(["git", "-c", "safe.directory=*", "-C", root, "ls-files", "-z"],
                                 capture_output=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return None
    return sorted(listing.stdout.decode().split("\0")[:-1])


@contextlib.contextmanager
def small_tree(files):
    """A source tree of a few files (name: text) in a scratch folder."""
    with tempfile.TemporaryDirectory() as folder:
        root = pathlib.Path(folder)
        for name, text in files.items():
            path = root / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        yield root


def report(complaints):
    """What a failing assertion shows."""
    return "\n" + "\n".join(complaints)
