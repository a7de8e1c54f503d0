#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Builds the page: build/web/tankwright.html, one file that opens by double click. Installs what a fresh Debian or Ubuntu
# machine lacks. `--npm FOLDER` also lays out the npm package of the modules there, ready for `npm pack`, in place of what an
# earlier one left. `--check` also builds the program `commission`, opens the page in a headless Chromium and tests it and the
# package; the last line is "N passed, N failed". TANKWRIGHT_BUILD_DIR chooses the build folder (default: build, in the checkout).
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
source "$root/tests/packages.sh"

need cmake ninja-build libboost-dev libtomlplusplus-dev nlohmann-json3-dev emscripten
need_node

# The packages of package-lock.json, again only where that has changed.
if [ ! -d "$here/node_modules" ] || [ "$here/package-lock.json" -nt "$here/node_modules/.package-lock.json" ]; then
  npm ci --prefix "$here" --no-audit --no-fund --loglevel=error
fi

module=$build/web/module
[ -f "$module/CMakeCache.txt" ] ||
  emcmake cmake -S "$here/module" -B "$module" -G Ninja -DCMAKE_BUILD_TYPE=MinSizeRel \
    ${CMAKE_CXX_COMPILER_LAUNCHER:+-DCMAKE_CXX_COMPILER_LAUNCHER="$CMAKE_CXX_COMPILER_LAUNCHER"} >/dev/null
cmake --build "$module" --target page formulas
package=$build/web/npm
if [ "${1:-}" = --npm ]; then
  package=$(realpath -m "${2:?--npm needs a folder}")
fi
node "$here/build.mjs" "$module" "$build/web/tankwright.html" --npm "$package"

if [ "${1:-}" = --check ]; then
  need chromium
  needed=(-DTANKWRIGHT_BUILD_EXAMPLES=ON)
  if [ ! -f "$build/CMakeCache.txt" ]; then
    needed+=(-DCMAKE_BUILD_TYPE=Release -DTANKWRIGHT_BUILD_TESTS=OFF -DTANKWRIGHT_BUILD_BENCHMARKS=OFF
      -DTANKWRIGHT_BUILD_DOCS=OFF)
  fi
  configure_build "$root" "$build" "${needed[@]}" >/dev/null
  cmake --build "$build" --target commission
  exec node "$here/check/run.mjs" "$build/web/tankwright.html" "$build/examples/commission/commission" "$package"
fi
