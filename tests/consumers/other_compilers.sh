#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Other standard libraries, word sizes and systems give what g++ gives: every formula by its name over the questions of the
# tests, and with libc++ the report of the demo plan. Usage: other_compilers.sh SOURCE BUILD SCRATCH, where BUILD is a folder of g++ in which
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
  local what=$1 kind=$2 ours=$3 tolerance=$4 share=${5:-0} said
  said=$(python3 "$here/same_results.py" "$ours" "$scratch/$kind.json" "$tolerance" --words-may-differ "$share") || failed=1
  echo "$what, $kind: $said"
}

# compiled NAME TARGETS OPTION...: in a folder of its own.
compiled() {
  local name=$1 targets
  read -ra targets <<<"$2"
  shift 2
  if ! { "${made_by[@]}" cmake -S "$here/other_compilers" -B "$scratch/$name" -G Ninja -DCMAKE_BUILD_TYPE=Release \
    -DCMAKE_CXX_FLAGS_RELEASE="-O$optimised" "$@" &&
    cmake --build "$scratch/$name" --target "${targets[@]}"; } >"$scratch/$name.log" 2>&1; then
    tail -n 40 "$scratch/$name.log"
    echo "$name: does not build"
    failed=1
    return 1
  fi
}
# formulas NAME TOLERANCE SHARE [COMMAND...]: asks the questions, of the program itself or of what runs it.
formulas() {
  local name=$1 tolerance=$2 share=$3
  shift 3
  if [ $# -eq 0 ]; then set -- "$scratch/$name/tankwright/$ask"; fi
  "$@" <"$questions" >"$scratch/$name.answers" # a file: node leaves before it has filled a pipe
  tr -d '\r' <"$scratch/$name.answers" >"$scratch/$name.formulas.json"
  same "$name" formulas "$scratch/$name.formulas.json" "$tolerance" "$share"
}

made_by=(env)
optimised=1

# Another compiler and standard library: the whole.
if compiled libc++ "ask_formula commission" -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_CXX_FLAGS=-stdlib=libc++; then
  formulas libc++ 1e-12 0
  "$scratch/libc++/tankwright/$commission" --json >"$scratch/libc++.report.json" || [ $? -eq 1 ]
  same libc++ report "$scratch/libc++.report.json" 1e-12
fi

# What a word size or a system may change is the same without optimising, which halves the time.
optimised=0
# 32 bits, with the arithmetic of today. (The x87, which keeps more digits between two stores, is not held to this.)
if compiled 32bit_sse ask_formula -DCMAKE_C_FLAGS=-m32 -DCMAKE_CXX_FLAGS="-m32 -msse2 -mfpmath=sse"; then
  program=$scratch/32bit_sse/tankwright/$ask
  run_by=()
  if ! "$program" </dev/null >/dev/null 2>&1; then # a kernel without programs of 32 bits
    need qemu-user
    run_by=(qemu-i386)
  fi
  formulas 32bit_sse 1e-12 0 "${run_by[@]}" "$program"
fi
# Windows: built; run where Wine is.
if compiled windows ask_formula -DCMAKE_SYSTEM_NAME=Windows -DCMAKE_C_COMPILER=x86_64-w64-mingw32-gcc-posix \
  -DCMAKE_CXX_COMPILER=x86_64-w64-mingw32-g++-posix -DCMAKE_EXE_LINKER_FLAGS=-static; then
  if command -v wine >/dev/null; then
    formulas windows 1e-12 0 wine "$scratch/windows/tankwright/$ask.exe"
  else
    echo "windows: built, not run (there is no Wine here)"
  fi
fi

# WebAssembly in node. The report in WebAssembly is held to the native one by the tests of examples/web. What Emscripten
# 3.1.6 writes takes a node that has fetch for a browser.
made_by=(emcmake)
if compiled wasm ask_formula -DCMAKE_CXX_FLAGS=-fwasm-exceptions \
  -DCMAKE_EXE_LINKER_FLAGS="-fwasm-exceptions -sALLOW_MEMORY_GROWTH=1 -sTOTAL_STACK=8MB -sEXIT_RUNTIME=1"; then
  formulas wasm 1e-12 0 node --no-experimental-fetch "$scratch/wasm/tankwright/$ask.js"
fi

[ $failed -eq 0 ] && echo "other compilers: the same results"
exit $failed
