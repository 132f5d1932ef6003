#!/bin/sh
# src/run.sh: installs what is missing, builds, and runs Hutchwright from the source tree.
# SPDX-License-Identifier: GPL-3.0-or-later
#
#   sh src/run.sh          with a display: opens the shipped example in the window;
#                          without one: writes its ready-to-cut set to ./out and says what it wrote
#   sh src/run.sh ARGS     passes ARGS to the program; it runs in the caller's folder
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/src/setup.sh"

example=engraver
build_dir=$root/build
program=$build_dir/src/app/hutchwright

install_packages "$root/src/packages.txt"
build "$build_dir" --buildtype=debugoptimized

# What an installed program finds under its prefix lies in the build folder here.
GSETTINGS_SCHEMA_DIR=$build_dir/src/app
HUTCHWRIGHT_LOCALE_DIR=$build_dir/po
export GSETTINGS_SCHEMA_DIR HUTCHWRIGHT_LOCALE_DIR

if [ $# -gt 0 ]
then
  exec "$program" "$@"
fi

# The example is the user's own copy: it is written once and never over later changes.
design=$build_dir/$example.hutch
[ -f "$design" ] || "$program" example "$example" --to "$design"

if [ -n "${WAYLAND_DISPLAY:-}${DISPLAY:-}" ]
then
  exec "$program" "$design"
fi

fresh=$(mktemp -d)
trap 'rm -rf "$fresh"' EXIT
trap 'exit 130' HUP INT TERM
"$program" example "$example" --to "$fresh/$example.hutch"
say "no display: writing the ready-to-cut set of the example $example to ./out"
"$program" export "$fresh/$example.hutch" --to out
