# SPDX-License-Identifier: BSL-1.0
"""Runs a program and compares what it prints with a file. Usage: same_output.py EXPECTED PROGRAM [ARGUMENT ...]"""
import difflib
import subprocess
import sys

expected_path, command = sys.argv[1], sys.argv[2:]
run = subprocess.run(command, stdout=subprocess.PIPE, text=True)
with open(expected_path) as file:
    expected = file.read()
difference = list(difflib.unified_diff(expected.splitlines(True), run.stdout.splitlines(True), expected_path, 'this run'))
sys.stdout.writelines(difference)
if run.returncode != 0:
    print(f'exit status {run.returncode}')
sys.exit(1 if difference or run.returncode != 0 else 0)
