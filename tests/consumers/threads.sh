#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Nothing is shared between threads without a guard: threads.cpp with the thread sanitizer. Usage: threads.sh SOURCE SCRATCH.
set -euo pipefail
source_dir=$(realpath "$1")
scratch=$2
source "$source_dir/tests/packages.sh"
need g++ libboost-dev libtomlplusplus-dev nlohmann-json3-dev
mkdir -p "$scratch"
g++ -std=c++20 -O1 -g1 -fsanitize=thread -pthread -I"$source_dir/include" "$source_dir/tests/consumers/threads.cpp" \
  -o "$scratch/threads"
# Addresses as the sanitizer needs them, also on kernels that spread them wider.
setarch -R "$scratch/threads" "$source_dir"/examples/commission/demo{,_us,_plywood_us}.toml
