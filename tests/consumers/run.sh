#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Installs tankwright into a scratch folder and builds a first program against it in four ways.
# Usage: run.sh SOURCE SCRATCH
set -euo pipefail
source_dir=$1
scratch=$2
here=$source_dir/tests/consumers
cxx=${CXX:-c++}
wanted="1023.344 kg/m3"

expect() {
  local said
  said=$("$2")
  if [ "$said" != "$wanted" ]; then
    echo "$1: printed '$said', expected '$wanted'"
    exit 1
  fi
  echo "$1: ok"
}

rm -rf "$scratch"
mkdir -p "$scratch"

cmake -S "$source_dir" -B "$scratch/build" -DCMAKE_INSTALL_PREFIX="$scratch/prefix" -DTANKWRIGHT_BUILD_TESTS=OFF \
  -DTANKWRIGHT_BUILD_EXAMPLES=OFF -DTANKWRIGHT_BUILD_BENCHMARKS=OFF -DTANKWRIGHT_BUILD_DOCS=OFF >/dev/null
cmake --install "$scratch/build" >/dev/null

cmake -S "$here/find_package" -B "$scratch/found" -DCMAKE_PREFIX_PATH="$scratch/prefix" >/dev/null
cmake --build "$scratch/found" >/dev/null
expect "find_package" "$scratch/found/consumer"

cmake -S "$here/subdirectory" -B "$scratch/embedded" -DTANKWRIGHT_SOURCE="$source_dir" >/dev/null
cmake --build "$scratch/embedded" >/dev/null
expect "add_subdirectory" "$scratch/embedded/consumer"

flags=$(PKG_CONFIG_PATH="$scratch/prefix/share/pkgconfig" pkg-config --cflags tankwright)
# shellcheck disable=SC2086 # flags are words
"$cxx" -std=c++20 $flags "$here/main.cpp" -o "$scratch/by_pkg_config"
expect "pkg-config" "$scratch/by_pkg_config"

"$cxx" -std=c++20 -I"$source_dir/include" "$here/main.cpp" -o "$scratch/by_include"
expect "one include folder" "$scratch/by_include"
