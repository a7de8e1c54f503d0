#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# The site of the handbook: guides, tables, theory, ledger, with a search that needs no network.
# Writes build/handbook/site. Its pages open from disk; the search wants a server, because browsers let no worker start
# from a file: python3 -m http.server --directory build/handbook/site. TANKWRIGHT_BUILD_DIR chooses the build folder.
# The theory pages have calculators, which need no server, where examples/web/run.sh has run before; --check tests them in a
# headless Chromium against the program ask_formula (built with the examples).
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build=${TANKWRIGHT_BUILD_DIR:-$root/build}
source "$root/tests/packages.sh"

need python3 mkdocs mkdocs-material python3-pymdownx
mkdir -p "$build/handbook"
# The page of examples/web and the reference of the headers come along where they have been built.
extra=()
form=$build/web/tankwright.html
[ -f "$form" ] && extra+=("$form")
[ -f "$form" ] && [ -d "$build/docs/html" ] && extra+=("$build/docs/html")
/usr/bin/python3 "$root/docs/site/make.py" "$root" "$build/handbook" "${extra[@]}"
(cd "$build/handbook" && mkdocs build --quiet --clean)
/usr/bin/python3 "$root/docs/site/links.py" "$build/handbook/site"
echo "the handbook: $build/handbook/site/index.html"
if [ "${1:-}" = --check ]; then
  need chromium
  need_node
  node "$root/docs/site/check.mjs" "$build/handbook" "$build/examples/formulas/ask_formula"
fi
