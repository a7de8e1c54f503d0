#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Faults that clang-tidy finds (.clang-tidy) in every header and body of the library. Usage: tidy.sh SCRATCH.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
source "$root/tests/packages.sh"
need clang-tidy libboost-dev libtomlplusplus-dev nlohmann-json3-dev
mkdir -p "$1"
cp "$root/.clang-tidy" "$1"
printf '#include <tankwright/%s.hpp>\n' tankwright text plan decisions exchange >"$1/everything.cpp"
clang-tidy --quiet "$1/everything.cpp" -- -std=c++20 -I"$root/include"
echo "no faults"
