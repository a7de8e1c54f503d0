# SPDX-License-Identifier: BSL-1.0
"""The package as a whole: what importing costs, and what its README shows."""
import os
import re
import subprocess
import sys
import unittest
from pathlib import Path

import tankwright

HERE = Path(__file__).resolve().parent.parent


def run(*words: str, **variables: str) -> subprocess.CompletedProcess:
    return subprocess.run([sys.executable, *words], capture_output=True, text=True, cwd=HERE,
                          env={**os.environ, 'PYTHONPATH': str(HERE), **variables})


class Package(unittest.TestCase):
    def test_importing_loads_nothing(self):
        code = ('import sys, time; t = time.perf_counter(); import tankwright; t = time.perf_counter() - t; '
                'print(t * 1e3, "ctypes" in sys.modules, "json" in sys.modules)')
        said = run('-c', code).stdout.split()
        self.assertLess(float(said[0]), 50.0)
        self.assertEqual(said[1:], ['False', 'False'])

    def test_the_program_of_the_readme(self):
        shown = re.search(r'```python\n(.*?)```', (HERE / 'README.md').read_text(), re.S).group(1)
        self.assertEqual(shown, (HERE / 'first.py').read_text())
        ran = run('first.py')
        self.assertEqual(ran.returncode, 0, ran.stderr)
        self.assertRegex(ran.stdout, r'^(holds|thin margin|does not hold)\n-?\d+ mm left\n')
        self.assertRegex(ran.stdout, r'\n\d+\.\d kg of mix\n')

    def test_says_where_the_library_is_missing(self):
        ran = run('-c', 'import tankwright; tankwright.demo()', TANKWRIGHT_LIBRARY='/nowhere/libtankwright.so')
        self.assertIn('ImportError: libtankwright is not here', ran.stderr)
        ran = run('-c', 'import tankwright; tankwright.demo()', TANKWRIGHT_LIBRARY='libm.so.6')
        self.assertIn('is no tankwright of version', ran.stderr)

    def test_every_public_thing_has_a_docstring(self):
        for name in tankwright.__all__:
            thing = getattr(tankwright, name)
            self.assertTrue(thing.__doc__, name)
            for part, value in vars(thing).items() if isinstance(thing, type) else ():
                if not part.startswith('_') and callable(value):
                    self.assertTrue(value.__doc__, f'{name}.{part}')

    def test_version_is_the_librarys(self):
        self.assertTrue(tankwright.version().startswith(tankwright.library.VERSION + '.'))


if __name__ == '__main__':
    unittest.main()
