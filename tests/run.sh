#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Installs what a fresh Debian or Ubuntu machine lacks, builds the tests and runs them all.
# TANKWRIGHT_BUILD_DIR chooses the build folder (default: build, in the checkout).
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
source "$root/tests/packages.sh"

need g++ cmake ninja-build libboost-dev doctest-dev libtomlplusplus-dev nlohmann-json3-dev \
  python3 python3-numpy python3-gsw python3-iapws python3-jsonschema python3-scipy mypy pkg-config
need_node

# What the tests need of the build folder, which may have been made by another command. A new one is made for Ninja.
# -O1: the tests check numbers, not speed, and compile twice as fast. Bundles of test files halve it again.
configure_build "$root" "$build" -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE="-O1" \
  -DTANKWRIGHT_WARNINGS_AS_ERRORS=ON -DTANKWRIGHT_BUILD_TESTS=ON -DTANKWRIGHT_BUILD_EXAMPLES=ON \
  -DTANKWRIGHT_TESTS_TOGETHER="${TANKWRIGHT_TESTS_TOGETHER:-ON}" \
  -DTANKWRIGHT_BUILD_BENCHMARKS=OFF -DTANKWRIGHT_BUILD_DOCS=OFF >/dev/null
cmake --build "$build"
ctest --test-dir "$build" --output-on-failure --no-tests=error -j "$(nproc)"
