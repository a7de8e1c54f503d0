#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Other standard libraries, word sizes and systems give what g++ gives: every formula by its name over the questions of the
# tests, and the report of the demo plan. Usage: other_compilers.sh SOURCE BUILD SCRATCH, where BUILD is a folder of g++ in which
# the tests have run (they leave the questions there). Installs the compilers.
set -euo pipefail
source_dir=$(realpath "$1")
build=$(realpath "$2")
scratch=$3
here=$source_dir/tests/consumers
source "$source_dir/tests/packages.sh"
need g++ cmake ninja-build python3 libboost-dev libtomlplusplus-dev nlohmann-json3-dev clang libc++-dev libc++abi-dev \
  g++-multilib g++-mingw-w64-x86-64-posix emscripten
need_node
mkdir -p "$scratch"

questions=$build/tests/answered.txt
ask=examples/formulas/ask_formula
commission=examples/commission/commission
"$build/$ask" <"$questions" >"$scratch/formulas.json"
"$build/$commission" --json >"$scratch/report.json" || [ $? -eq 1 ] # 1: the demo has what does not hold

failed=0
# same WHAT FORMULAS|REPORT OURS TOLERANCE [SHARE]
same() {
  local what=$1 kind=$2 ours=$3 tolerance=$4 share=${5:-0}
  echo "$what, $kind: $(python3 "$here/same_results.py" "$ours" "$scratch/$kind.json" "$tolerance" --words-may-differ "$share")" ||
    { python3 "$here/same_results.py" "$ours" "$scratch/$kind.json" "$tolerance" --words-may-differ "$share" || true; failed=1; }
}

# compiled NAME TARGETS OPTION...: in a folder of its own.
compiled() {
  local name=$1 targets=$2
  shift 2
  if ! { "${made_by[@]}" cmake -S "$here/other_compilers" -B "$scratch/$name" -G Ninja -DCMAKE_BUILD_TYPE=Release \
    -DCMAKE_CXX_FLAGS_RELEASE=-O1 "$@" &&
    # shellcheck disable=SC2086 # targets are words
    cmake --build "$scratch/$name" --target $targets; } >"$scratch/$name.log" 2>&1; then
    tail -n 40 "$scratch/$name.log"
    echo "$name: does not build"
    failed=1
    return 1
  fi
}
# ran NAME TOLERANCE SHARE: both programs of a folder that run here.
ran() {
  local name=$1 tolerance=$2 share=$3
  "$scratch/$name/tankwright/$ask" <"$questions" >"$scratch/$name.formulas.json"
  same "$name" formulas "$scratch/$name.formulas.json" "$tolerance" "$share"
  "$scratch/$name/tankwright/$commission" --json >"$scratch/$name.report.json" || [ $? -eq 1 ]
  same "$name" report "$scratch/$name.report.json" "$tolerance" "$share"
}

made_by=(env)
both="ask_formula commission"

compiled libc++ "$both" -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_CXX_FLAGS=-stdlib=libc++ && ran libc++ 1e-12 0
compiled 32bit_sse "$both" -DCMAKE_C_FLAGS="-m32" -DCMAKE_CXX_FLAGS="-m32 -msse2 -mfpmath=sse" && ran 32bit_sse 1e-12 0
