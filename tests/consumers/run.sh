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

# As the README says it, word for word, in a checkout of its own; then with nothing but a compiler, CMake and Boost.
mkdir "$scratch/checkout"
cp -r "$source_dir"/{CMakeLists.txt,LICENSE,README.md,include,examples,tests,benchmarks,docs} "$scratch/checkout"
(
  cd "$scratch/checkout"
  export DESTDIR=$scratch/as_the_readme_says
  cmake -B build && cmake --install build
) >"$scratch/log.txt" 2>&1 || { cat "$scratch/log.txt"; exit 1; }
[ -f "$scratch/as_the_readme_says/usr/local/include/tankwright/tankwright.hpp" ]
echo "cmake -B build && cmake --install build: ok"

cmake -S "$source_dir" -B "$scratch/build" -DCMAKE_INSTALL_PREFIX="$scratch/first_prefix" \
  -DCMAKE_DISABLE_FIND_PACKAGE_{doctest,benchmark,tomlplusplus,nlohmann_json,Doxygen}=ON >"$scratch/log.txt"
grep -q 'TANKWRIGHT_BUILD_TESTS is off: doctest' "$scratch/log.txt"
cmake --install "$scratch/build" >/dev/null
mv "$scratch/first_prefix" "$scratch/prefix" # what is installed may be moved
echo "with Boost alone: ok"

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

# A compiler that takes for granted that there is no NaN is told so; one that may only reorder is not.
if said=$("$cxx" -std=c++20 -ffast-math -fsyntax-only -I"$source_dir/include" "$here/main.cpp" 2>&1); then
  echo "-ffast-math: accepted"
  exit 1
fi
grep -q 'compile without -ffast-math' <<<"$said"
"$cxx" -std=c++20 -ffast-math -fno-finite-math-only -fsyntax-only -I"$source_dir/include" "$here/main.cpp"
echo "-ffast-math: ok"
