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
build "$sanitized" --buildtype=debugoptimized -Db_sanitize=address,undefined -Db_lundef=false
for folder in "$plain" "$sanitized"
do
  [ -d "$folder/tests" ] || die "$folder has no tests: meson found no cmocka, librsvg or libxdo"
done

# A locale with a comma as the decimal mark, private to the build folder.
if [ ! -d "$plain/locale/de_DE.UTF-8" ]
then
  mkdir -p "$plain/locale"
  localedef -i de_DE -f UTF-8 "$plain/locale/de_DE.UTF-8" || die "localedef failed"
fi
[ "$(LOCPATH=$plain/locale LC_ALL=de_DE.UTF-8 locale decimal_point)" = , ] ||
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

# Where a test goes over random designs, the plain build goes over all of them, the others over HUT_SEEDS_MOST.
say "core tests, plain build, and tests of the house"
run_suite "$plain" core --suite core --suite house
say "core tests with the sanitizers"
HUT_SEEDS_MOST=12 run_suite "$sanitized" core --suite core --timeout-multiplier 3
say "core tests in a locale with a decimal comma"
HUT_SEEDS_MOST=12 run_suite "$plain" comma --setup comma --suite core
say "window tests under Xvfb"
rm -f "$plain/meson-logs/gui"*
dbus-run-session -- xvfb-run -a -s '-screen 0 1920x1080x24 -nolisten tcp' \
  env GDK_BACKEND=x11 GSK_RENDERER=cairo GSETTINGS_BACKEND=memory \
  meson test -C "$plain" --no-rebuild --logbase gui --print-errorlogs --suite gui --num-processes 1 || failed=1

python3 "$root/tests/summary.py" \
  "plain=$plain/meson-logs/core.json" \
  "sanitizers=$sanitized/meson-logs/core.json" \
  "comma locale=$plain/meson-logs/comma-comma.json" \
  "window=$plain/meson-logs/gui.json" || failed=1
exit "$failed"
