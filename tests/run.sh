#!/bin/sh
# tests/run.sh: installs what is missing, builds twice (plain, and with the address and undefined
# behaviour sanitizers) and runs all tests. Ends with "N passed, M failed" and non-zero on failure.
# SPDX-License-Identifier: GPL-3.0-or-later
#
# One test alone: meson test -C build --print-errorlogs NAME   (see DEVELOPERS.md)
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/src/setup.sh"

plain=$root/build
sanitized=$root/build-asan

install_packages "$root/src/packages.txt" "$root/tests/packages.txt"
# A folder that was configured before the test libraries were there has no tests.
for folder in "$plain" "$sanitized"
do
  if [ -f "$folder/build.ninja" ] && [ ! -d "$folder/tests" ]
  then
    meson setup --reconfigure "$folder" "$root" >&2 || die "meson could not configure $folder"
  fi
done
build "$plain" --buildtype=debugoptimized
# Warnings are errors in the plain build; here they would be those of another optimisation. -O1 takes half
# the time of -O2 to compile.
build "$sanitized" --buildtype=debugoptimized -Doptimization=1 -Dwerror=false \
      -Db_sanitize=address,undefined -Db_lundef=false
for folder in "$plain" "$sanitized"
do
  [ -d "$folder/tests" ] || die "$folder has no tests: meson found no cmocka, librsvg or libxdo"
done

# A locale with a comma as the decimal mark, private to the build folder.
if [ ! -d "$sanitized/locale/de_DE.UTF-8" ]
then
  mkdir -p "$sanitized/locale"
  localedef -i de_DE -f UTF-8 "$sanitized/locale/de_DE.UTF-8" || die "localedef failed"
fi
[ "$(LOCPATH=$sanitized/locale LC_ALL=de_DE.UTF-8 locale decimal_point)" = , ] ||
  die "the locale with a decimal comma does not work"

# Nothing of the caller's desktop is read or written.
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
trap 'exit 130' HUP INT TERM
unset DISPLAY WAYLAND_DISPLAY DBUS_SESSION_BUS_ADDRESS LANGUAGE LANG
export HOME="$scratch/home" LC_ALL=C.UTF-8
export XDG_CONFIG_HOME="$scratch/config" XDG_DATA_HOME="$scratch/data"
export XDG_CACHE_HOME="$scratch/cache" XDG_STATE_HOME="$scratch/state"
export XDG_RUNTIME_DIR="$scratch/runtime"
mkdir -p "$HOME" "$XDG_CONFIG_HOME" "$XDG_DATA_HOME" "$XDG_CACHE_HOME" "$XDG_STATE_HOME"
mkdir -m 700 "$XDG_RUNTIME_DIR"

failed=0

# run_suite BUILD LOGNAME OPTION...: what fails is counted and shown by summary.py at the end.
run_suite ()
{
  folder=$1
  log=$2
  shift 2
  rm -f "$folder/meson-logs/$log"*
  meson test -C "$folder" --no-rebuild --logbase "$log" --print-errorlogs "$@" || failed=1
}

# The plain build goes over all random designs of each test, in the locale C. The other run has the
# sanitizers and the decimal comma at once: what only one of both finds shows in what the test prints,
# and a second plain run would find nothing more. Window tests have a display and a message bus each, so they run
# beside the others. Where a test goes over random designs, HUT_SEEDS_MOST caps their number.
say "plain build: core tests, tests of the house and of the window"
run_suite "$plain" plain --suite core --suite house --suite gui
say "core tests with the sanitizers, in a locale with a decimal comma"
HUT_SEEDS_MOST=12 run_suite "$sanitized" core --setup comma --suite core --timeout-multiplier 3

python3 "$root/tests/summary.py" \
  "plain and window=$plain/meson-logs/plain.json" \
  "sanitizers, comma locale=$sanitized/meson-logs/core-comma.json" || failed=1
exit "$failed"
