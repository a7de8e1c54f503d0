#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Nothing is shared between threads without a guard: threads.cpp with the thread sanitizer. Usage: threads.sh SOURCE SCRATCH.
set -euo pipefail
source_dir=$(realpath "$1")
scratch=$2
source "$source_dir/tests/packages.sh"
need g++ cmake ninja-build libboost-dev doctest-dev libtomlplusplus-dev nlohmann-json3-dev
cmake -S "$source_dir" -B "$scratch" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE="-O1 -g1" \
  -DTANKWRIGHT_SANITIZE=thread -DTANKWRIGHT_BUILD_TESTS=ON -DTANKWRIGHT_BUILD_EXAMPLES=OFF \
  -DTANKWRIGHT_BUILD_BENCHMARKS=OFF -DTANKWRIGHT_BUILD_DOCS=OFF >/dev/null
cmake --build "$scratch" --target threads
# Addresses as the sanitizer needs them, also on kernels that spread them wider.
setarch -R "$scratch/tests/threads" "$source_dir"/examples/commission/demo{,_us,_plywood_us}.toml
