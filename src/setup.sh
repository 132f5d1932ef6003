# src/setup.sh: installs what is missing and builds. Sourced by src/run.sh and tests/run.sh.
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The caller sets root to the top of the source tree. Everything that is said goes to standard error.

say ()
{
  printf 'hutchwright: %s\n' "$*" >&2
}

die ()
{
  say "$*"
  exit 3
}

# package_names LIST...: the names in the lists, without comments.
package_names ()
{
  sed -e 's/#.*//' -e '/^[[:space:]]*$/d' "$@"
}

# missing_packages LIST...: those names that are not installed.
missing_packages ()
{
  names=$(package_names "$@")
  # Word splitting is wanted: one argument per package. Unknown names make dpkg-query fail; they are
  # simply not in its output.
  # shellcheck disable=SC2086
  present=$(dpkg-query -W -f '${db:Status-Status} ${Package}\n' $names 2>/dev/null |
            sed -n 's/^installed //p' || true)
  for name in $names
  do
    printf '%s\n' "$present" | grep -qxF -e "$name" || printf '%s ' "$name"
  done
}

# as_root COMMAND...: runs it as root, through sudo when need be.
as_root ()
{
  if [ "$(id -u)" -eq 0 ]
  then
    "$@"
  elif command -v sudo >/dev/null 2>&1
  then
    sudo "$@"
  else
    die "packages are missing ($missing); run this as root, or install sudo"
  fi
}

# install_packages LIST...: nothing happens when everything is there.
install_packages ()
{
  if ! command -v dpkg-query >/dev/null 2>&1
  then
    say "not a Debian system; these packages are taken as there: $(package_names "$@" | tr '\n' ' ')"
    return 0
  fi
  missing=$(missing_packages "$@")
  [ -n "$missing" ] || return 0
  say "installing: $missing"
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -o Acquire::Retries=3 update >&2 ||
    say "apt-get update failed; trying with the lists that are there"
  # shellcheck disable=SC2086
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o Acquire::Retries=3 \
      -o DPkg::Lock::Timeout=300 --no-install-recommends install $missing >&2 </dev/null ||
    die "could not install: $missing"
}

# build FOLDER [OPTION...]: configures it once with the options, then builds; the log is shown only
# when something fails.
build ()
{
  folder=$1
  shift
  mkdir -p "$folder" || die "cannot write to $folder"
  if [ ! -f "$folder/build.ninja" ]
  then
    say "configuring $folder"
    if ! meson setup "$@" "$folder" "$root" >"$folder/setup.log" 2>&1
    then
      cat "$folder/setup.log" >&2
      die "meson could not configure $folder"
    fi
  fi
  say "building $folder"
  if ! ninja -C "$folder" >"$folder/build.log" 2>&1
  then
    cat "$folder/build.log" >&2
    die "the build in $folder failed"
  fi
}
