#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# What the library shows to the outside is what exported.txt lists, what tankwright.h declares, and nothing else; and
# programs ask for it by the name of this version.
# Usage: exported.sh LIBRARY
set -euo pipefail
export LC_ALL=C
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
status=0

compare() { # compare WHAT EXPECTED ACTUAL
  if ! diff <(printf '%s\n' "$2") <(printf '%s\n' "$3"); then
    echo "$1: not the same"
    status=1
  fi
}

exported=$(nm -D --defined-only "$1" | awk '{print $3}' | sort)
declared=$(grep -o 'TW_API [^(]*(' "$here/../tankwright.h" | grep -o 'tw_[a-z_]*(' | tr -d '(' | sort)
compare "exported symbols and exported.txt" "$(sort "$here/exported.txt")" "$exported"
compare "exported symbols and tankwright.h" "$declared" "$exported"

version=$(sed -nE 's/.*TANKWRIGHT_VERSION "([0-9]+\.[0-9]+)\..*/\1/p' "$here/../../../include/tankwright/version.hpp")
compare "SONAME" "libtankwright.so.$version" "$(readelf -d "$1" | sed -nE 's/.*SONAME.*\[(.*)\]/\1/p')"
exit $status
