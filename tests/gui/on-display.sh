#!/bin/sh
# tests/gui/on-display.sh: runs a command on an X server and a message bus of its own, with empty user folders.
# SPDX-License-Identifier: GPL-3.0-or-later
# Usage: on-display.sh COMMAND [ARG...]; HUT_SCREEN=WxH sets the size of the screen (1366x768).
set -eu

scratch=$(mktemp -d)
server=

finish ()
{
  if [ -n "$server" ]; then
    kill "$server" 2>/dev/null || true
    wait "$server" 2>/dev/null || true
  fi
  rm -rf "$scratch"
}
trap finish EXIT
trap 'exit 143' TERM
trap 'exit 130' INT

mkfifo "$scratch/number"
mkdir "$scratch/home" "$scratch/runtime"
chmod 700 "$scratch/runtime"

# The server picks a free number and tells it when it is ready.
Xvfb -displayfd 3 -screen 0 "${HUT_SCREEN:-1366x768}x24" -nolisten tcp -noreset \
  3>"$scratch/number" >"$scratch/server.log" 2>&1 &
server=$!
if ! read -r number <"$scratch/number"; then
  echo "on-display.sh: the X server did not start:" >&2
  cat "$scratch/server.log" >&2
  exit 99
fi

unset WAYLAND_DISPLAY XAUTHORITY DBUS_SESSION_BUS_ADDRESS
export DISPLAY=":$number" GDK_BACKEND=x11 GSK_RENDERER=cairo GSETTINGS_BACKEND=memory
export HOME="$scratch/home" XDG_RUNTIME_DIR="$scratch/runtime"
export XDG_CONFIG_HOME="$HOME/.config" XDG_DATA_HOME="$HOME/.local/share"
export XDG_CACHE_HOME="$HOME/.cache" XDG_STATE_HOME="$HOME/.local/state"
export GTK_A11Y="${GTK_A11Y:-test}"

status=0
dbus-run-session -- "$@" || status=$?
exit "$status"
