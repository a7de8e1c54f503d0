# SPDX-License-Identifier: BSL-1.0
"""Runs all tests and ends with "N passed, N failed"; a skipped test is a failed one."""
import sys
import unittest
from pathlib import Path

result = unittest.TextTestRunner(stream=sys.stderr).run(unittest.defaultTestLoader.discover(str(Path(__file__).parent)))
failed = len(result.failures) + len(result.errors) + len(result.skipped) + len(result.unexpectedSuccesses)
print(f'{result.testsRun - failed} passed, {failed} failed')
sys.exit(failed != 0)
