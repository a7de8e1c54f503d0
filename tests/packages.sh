# SPDX-License-Identifier: BSL-1.0
# shellcheck shell=bash
# Sourced by the run scripts.

# `need PACKAGE ...` installs the Debian/Ubuntu packages that are missing, as root or through sudo. Says what it installs;
# does nothing where everything is there.
need() {
  local missing=() package
  for package in "$@"; do
    dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q '^install ok installed' || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  if ! command -v apt-get >/dev/null; then
    echo "This machine has no apt-get. Install what corresponds to: ${missing[*]}" >&2
    return 1
  fi
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      echo "Needed: ${missing[*]}. Run as root: apt-get install ${missing[*]}" >&2
      return 1
    fi
    as_root=(sudo)
  fi
  echo "Installing: ${missing[*]}"
  "${as_root[@]}" apt-get update -qq
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

# Node.js and npm, from wherever they are; Debian's when there are none.
need_node() {
  command -v node >/dev/null && command -v npm >/dev/null && return 0
  need nodejs npm
}

# `configure_build SOURCE BUILD OPTION ...`: a new build folder is made for Ninja, one that is there keeps its generator.
configure_build() {
  local source=$1 build=$2 generator=()
  shift 2
  [ -f "$build/CMakeCache.txt" ] || generator=(-G Ninja)
  cmake -S "$source" -B "$build" "${generator[@]}" "$@"
}
