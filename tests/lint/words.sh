#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Spelling of everything that is read, layout of the sources (.clang-format), faults in scripts. What is misspelt on purpose (mistakes that tests make, words that
# other words end in) stands in tests/lint/words.txt.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
cd "$root"
source tests/packages.sh
need codespell shellcheck pyflakes3 clang-format
mapfile -t texts < <(git ls-files '*.md' '*.hpp' '*.ipp' '*.cpp' '*.h' '*.c' '*.py' '*.sh' '*.toml' '*.js' '*.jsx' '*.mjs' '*.css' '*.html' '*.txt' |
  grep -v 'tests/lint/words.txt\|/licences/\|LICENSE')
mapfile -t scripts < <(git ls-files '*.sh'; echo .ci/run)
# A package names in its __init__.py what it offers.
mapfile -t pythons < <(git ls-files '*.py' | grep -v '/__init__.py$')
codespell --quiet-level 3 --ignore-words tests/lint/words.txt "${texts[@]}"
shellcheck -x --severity=warning "${scripts[@]}"
pyflakes3 "${pythons[@]}"
# What make.py writes is laid out by make.py.
mapfile -t sources < <(git ls-files '*.hpp' '*.ipp' '*.cpp' '*.h' '*.c' | grep -v '^examples/formulas/generated/')
clang-format --dry-run --Werror "${sources[@]}"
echo "${#texts[@]} texts, ${#scripts[@]} scripts, ${#pythons[@]} Python files, ${#sources[@]} sources: nothing misspelt, no faults, laid out as agreed"
