#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Would a test notice? A sample of mutants of one of the folders, none of which has an open survivor: another one, and
# other mutants, at each commit. Live tables come from the build folder of the tests (TANKWRIGHT_BUILD_DIR, default: build).
# The seed is printed; without one it is the number of commits. `run.sh [SAMPLE [SEED [FOLDER]]]`.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
source "$root/tests/packages.sh"
need clang python3-clang-14 libboost-dev doctest-dev
folders=(water vessel plumbing room life)
sample=${1:-400}
seed=${2:-$(git -C "$root" rev-list --count HEAD 2>/dev/null || echo 1)}
folder=${3:-${folders[seed % ${#folders[@]}]}}
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
/usr/bin/python3 "$root/tests/mutation/mutate.py" --folder "$folder" --sample "$sample" --seed "$seed" --budget 20 --not-accepted \
  --live "$build/tests/live" --scratch "${TANKWRIGHT_CI_DIR:-$build}/mutation"
