# SPDX-License-Identifier: BSL-1.0
"""The package as a whole: what importing costs, and what its README shows."""
import base64
import hashlib
import os
import re
import subprocess
import sys
import tempfile
import unittest
import zipfile
from pathlib import Path

import tankwright

HERE = Path(__file__).resolve().parent.parent


def run(*words: str, cwd: Path = HERE, **variables: str) -> subprocess.CompletedProcess:
    return subprocess.run([sys.executable, *words], capture_output=True, text=True, cwd=cwd,
                          env={**os.environ, 'PYTHONPATH': str(HERE), **variables})


class Package(unittest.TestCase):
    def test_importing_loads_nothing(self):
        code = 'import sys, tankwright; print("ctypes" in sys.modules, "json" in sys.modules)'
        self.assertEqual(run('-c', code).stdout.split(), ['False', 'False'])

    def test_the_program_of_the_readme(self):
        shown = re.search(r'```python\n(.*?)```', (HERE / 'README.md').read_text(), re.S).group(1)
        self.assertEqual(shown, (HERE / 'first.py').read_text())
        ran = run('first.py')
        self.assertEqual(ran.returncode, 0, ran.stderr)
        self.assertRegex(ran.stdout, r'^(holds|thin margin|does not hold)\n-?\d+ mm left\n')
        self.assertRegex(ran.stdout, r'\n\d+\.\d kg of mix\n')

    def test_a_wheel_brings_the_library_along(self):
        with tempfile.TemporaryDirectory() as folder:
            wheels = [run('wheel.py', os.environ['TANKWRIGHT_LIBRARY'], folder).stdout.strip() for _ in range(2)]
            wheel = Path(wheels[0])
            self.assertRegex(wheel.name, r'^tankwright-\d+\.\d+\.\d+-py3-none-\w+\.whl$')
            with zipfile.ZipFile(wheel) as whole:
                record = next(n for n in whole.namelist() if n.endswith('/RECORD'))
                rows = [line.split(',') for line in whole.read(record).decode().splitlines()]
                self.assertEqual([r[0] for r in rows], whole.namelist())
                for name, digest, size in rows[:-1]:
                    data = whole.read(name)
                    self.assertEqual(int(size), len(data))
                    kind, _, told = digest.partition('=')
                    made = base64.urlsafe_b64encode(hashlib.new(kind, data).digest()).rstrip(b'=').decode()
                    self.assertEqual(told, made, name)
                whole.extractall(os.path.join(folder, 'site'))
            ran = run('-c', 'import tankwright; print(tankwright.__file__, len(tankwright.demo()) > 100)', cwd=Path(folder),
                      PYTHONPATH=os.path.join(folder, 'site'), TANKWRIGHT_LIBRARY='')
            self.assertEqual(ran.stdout.split(), [os.path.join(folder, 'site', 'tankwright', '__init__.py'), 'True'], ran.stderr)

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
