#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Installs what a fresh Debian or Ubuntu machine lacks, builds libtankwright and says where it is.
# With --check: also builds and runs its tests, and ends with "N passed, N failed".
# TANKWRIGHT_BUILD_DIR chooses the build folder (default: build, in the checkout).
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
source "$root/tests/packages.sh"

need gcc g++ cmake ninja-build libboost-dev libtomlplusplus-dev nlohmann-json3-dev binutils >&2

# What this command needs of the build folder. Where there is one already, whatever else it builds stays as it is.
needed=(-DTANKWRIGHT_BUILD_EXAMPLES=ON)
if [ ! -f "$build/CMakeCache.txt" ]; then
  needed+=(-DCMAKE_BUILD_TYPE=Release -DTANKWRIGHT_BUILD_TESTS=OFF -DTANKWRIGHT_BUILD_BENCHMARKS=OFF
    -DTANKWRIGHT_BUILD_DOCS=OFF)
fi
configure_build "$root" "$build" "${needed[@]}" >&2
here=$build/examples/c_library

if [ "${1:-}" != --check ]; then
  cmake --build "$build" --target tankwright_c >&2
  echo "$here/libtankwright.so"
  exit 0
fi

cmake --build "$build" --target tankwright_c c_library_tests c_library_first >&2
passed=0
failed=0
count() { # count NAME COMMAND...: one check
  local name=$1
  shift
  if "$@"; then
    passed=$((passed + 1))
  else
    failed=$((failed + 1))
    echo "FAILED: $name"
  fi
}

# The tests in C say themselves how many passed.
said=$("$here/c_library_tests" | tee /dev/stderr | tail -n 1) || true
if [[ $said =~ ^([0-9]+)\ passed,\ ([0-9]+)\ failed$ ]]; then
  passed=${BASH_REMATCH[1]}
  failed=${BASH_REMATCH[2]}
else
  failed=1
  echo "FAILED: the tests in C did not end"
fi

# The program of the README is the one that is compiled, and it says what it should.
in_readme() { diff <(sed -n '/^```c$/,/^```$/p' "$root/examples/c_library/README.md" | sed '1d;$d') "$root/examples/c_library/first.c"; }
runs() { [[ $("$here/c_library_first") == '{"findings":[{"id":"sump.power_cut","verdict":"'* ]]; }
count "exported symbols" "$root/examples/c_library/tests/exported.sh" "$here/libtankwright.so"
count "the program of the README is first.c" in_readme
count "the program of the README runs" runs
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
