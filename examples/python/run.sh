#!/usr/bin/env bash
# SPDX-License-Identifier: BSL-1.0
# Installs what a fresh Debian or Ubuntu machine lacks, builds libtankwright, and runs the program of the README, or the
# program given (`examples/python/run.sh my_program.py`).
# With --wheel FOLDER: makes a wheel with the library inside, and prints its path.
# With --check: runs the tests instead, and ends with "N passed, N failed".
# TANKWRIGHT_BUILD_DIR chooses the build folder (default: build, in the checkout).
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
source "$here/../../tests/packages.sh"
need python3 >&2

TANKWRIGHT_LIBRARY=$("$here/../c_library/run.sh")
export TANKWRIGHT_LIBRARY PYTHONPATH=$here${PYTHONPATH:+:$PYTHONPATH} PYTHONDONTWRITEBYTECODE=1

if [ "${1:-}" = --wheel ]; then
  exec python3 "$here/wheel.py" "$TANKWRIGHT_LIBRARY" "${2:?--wheel needs a folder}"
fi
if [ "${1:-}" != --check ]; then
  exec python3 "${@:-$here/first.py}"
fi
need mypy >&2
exec python3 "$here/tests/run.py"
