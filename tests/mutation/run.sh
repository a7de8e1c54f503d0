#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Would a test notice? A sample of mutants of the folders whose survivors are known. Live tables come from the build folder of
# the tests (TANKWRIGHT_BUILD_DIR, default: build). The seed is printed; without one it is the number of commits, so that
# each change is tried with other mutants. `run.sh [SAMPLE [SEED]]`.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
source "$root/tests/packages.sh"
need clang python3-clang-14 libboost-dev doctest-dev
sample=${1:-400}
seed=${2:-$(git -C "$root" rev-list --count HEAD 2>/dev/null || echo 1)}
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
/usr/bin/python3 "$root/tests/mutation/mutate.py" --folder water --sample "$sample" --seed "$seed" --budget 20 \
  --live "$build/tests/live" --scratch "${TANKWRIGHT_CI_DIR:-$build}/mutation"
