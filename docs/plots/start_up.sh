#!/bin/sh
# SPDX-License-Identifier: BSL-1.0
# Draws the plots of docs/theory/start_up.md anew. Needs a C++20 compiler, Boost's headers and gnuplot.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"${CXX:-c++}" -std=c++20 -O2 -I "$here/../../include" "$here/start_up.cpp" -o "$work/start_up"
cd "$work"
./start_up course > course.txt
./start_up seeding > seeding.txt
gnuplot -e "out='$here'" "$here/start_up.gp"
