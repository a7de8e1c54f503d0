#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Installs what a fresh Debian or Ubuntu machine lacks, builds the main job and runs it: without arguments on the
# built-in demo plan, otherwise with the arguments given (`examples/run.sh my_plan.toml --json`).
# TANKWRIGHT_BUILD_DIR chooses the build folder (default: build, in the checkout).
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
source "$root/tests/packages.sh"

need g++ cmake ninja-build libboost-dev libtomlplusplus-dev nlohmann-json3-dev >&2

# What this command needs of the build folder. Where there is one already, whatever else it builds stays as it is.
needed=(-DTANKWRIGHT_BUILD_EXAMPLES=ON)
if [ ! -f "$build/CMakeCache.txt" ]; then
  needed+=(-DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE=-O1 -DTANKWRIGHT_BUILD_TESTS=OFF -DTANKWRIGHT_BUILD_BENCHMARKS=OFF
    -DTANKWRIGHT_BUILD_DOCS=OFF)
fi
configure_build "$root" "$build" "${needed[@]}" >&2
cmake --build "$build" --target commission >&2
exec "$build/examples/commission/commission" "$@"
