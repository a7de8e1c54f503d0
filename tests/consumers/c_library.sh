#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Installs the C library from a build folder, moves it, and builds a first program in C against it in two ways.
# Usage: c_library.sh SOURCE BUILD SCRATCH
set -euo pipefail
source_dir=$1
build=$2
scratch=$3
first=$source_dir/examples/c_library/first.c
export LD_LIBRARY_PATH=

rm -rf "$scratch"
mkdir -p "$scratch/found"
cmake --install "$build" --prefix "$scratch/first_prefix" >/dev/null
mv "$scratch/first_prefix" "$scratch/prefix"

runs() { # runs NAME PROGRAM
  local said
  said=$(LD_LIBRARY_PATH=$scratch/prefix/lib "$2")
  if [[ $said != '{"findings":[{"id":"sump.power_cut"'* ]]; then
    echo "$1: printed '${said:0:80}'"
    exit 1
  fi
  echo "$1: ok"
}

flags=$(PKG_CONFIG_PATH="$scratch/prefix/share/pkgconfig" pkg-config --cflags --libs tankwright-c)
# shellcheck disable=SC2086 # flags are words
"${CC:-cc}" "$first" $flags -o "$scratch/by_pkg_config"
runs "pkg-config" "$scratch/by_pkg_config"

cat >"$scratch/found/CMakeLists.txt" <<END
cmake_minimum_required(VERSION 3.25)
project(consumer LANGUAGES C CXX)
find_package(tankwright 0.2 REQUIRED)
add_executable(consumer $first)
target_link_libraries(consumer PRIVATE tankwright::c)
if(NOT TARGET tankwright::compiled)
  message(FATAL_ERROR "tankwright::compiled was built and is not found")
endif()
END
cmake -S "$scratch/found" -B "$scratch/found/build" -DCMAKE_PREFIX_PATH="$scratch/prefix" >/dev/null
cmake --build "$scratch/found/build" >/dev/null
runs "find_package" "$scratch/found/build/consumer"
