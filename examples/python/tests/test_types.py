# SPDX-License-Identifier: BSL-1.0
"""What mypy and an editor are told of the formulas is what the library takes."""
import ast
import keyword
import re
import runpy
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import tankwright

TESTS = Path(__file__).resolve().parent
HERE = TESTS.parent
PACKAGE = HERE / 'tankwright'


class Types(unittest.TestCase):
    def mypy(self, *files: Path) -> subprocess.CompletedProcess:
        tool = shutil.which('mypy')
        if tool is None:
            self.fail('mypy is missing: apt-get install mypy')
        with tempfile.TemporaryDirectory() as cache:
            return subprocess.run([tool, '--strict', '--hide-error-context', '--no-error-summary', '--cache-dir', cache,
                                   *map(str, files)], capture_output=True, text=True, cwd=HERE)

    def test_the_stubs_fit_the_list(self):
        said = subprocess.run([sys.executable, '-B', str(HERE / 'stubs.py'), '--check'], capture_output=True, text=True)
        self.assertEqual((said.stdout, said.stderr, said.returncode), ('', '', 0))

    def test_a_stub_that_does_not_fit_is_named(self):
        with tempfile.TemporaryDirectory() as folder:
            copy = Path(folder) / 'examples/python'
            shutil.copytree(HERE, copy, ignore=shutil.ignore_patterns('__pycache__'))
            for part in ('examples/formulas/formulas.json', 'examples/c_library/keys_json.cpp',
                         'include/tankwright/core/unit_table.hpp'):
                (Path(folder) / part).parent.mkdir(parents=True, exist_ok=True)
                shutil.copy(HERE.parent.parent / part, Path(folder) / part)
            water = copy / 'tankwright/_water.pyi'
            water.write_text(water.read_text().replace('mix_yield', 'yield_of_mix', 1))
            said = subprocess.run([sys.executable, '-B', str(copy / 'stubs.py'), '--check'], capture_output=True, text=True)
            self.assertEqual(said.returncode, 1, said.stderr)
            self.assertEqual(re.findall(r'\w+\.pyi', said.stdout), ['_water.pyi'])

    def test_mypy_accepts_the_package_and_a_program_that_runs(self):
        said = self.mypy(TESTS / 'typed.py', PACKAGE)
        self.assertEqual((said.stdout, said.stderr, said.returncode), ('', '', 0))
        runpy.run_path(str(TESTS / 'typed.py'))

    def test_mypy_refuses_each_mistake_for_its_reason(self):
        file = TESTS / 'mistyped.py'
        expected = {number: line.rpartition('# refused: ')[2] for number, line in
                    enumerate(file.read_text().splitlines(), 1) if '# refused: ' in line}
        self.assertGreaterEqual(len(expected), 3)
        said = self.mypy(file)
        self.assertEqual(said.returncode, 1, said.stderr)
        found = {int(n): text for n, text in re.findall(r'mistyped\.py:(\d+): error: (.*)', said.stdout)}
        self.assertEqual(set(found), set(expected), said.stdout)
        for number, word in expected.items():
            self.assertIn(word, found[number])

    def test_every_argument_that_a_formula_takes_is_in_its_stub(self):
        # The package asks the library, the stubs were made from its sources.
        for folder in ('water', 'vessel', 'plumbing', 'room', 'life'):
            stub: dict[str, set[str]] = {}
            for node in ast.parse((PACKAGE / f'_{folder}.pyi').read_text()).body:
                if isinstance(node, ast.FunctionDef):
                    stub.setdefault(node.name, set()).update(a.arg for a in node.args.kwonlyargs)
            formulas = vars(getattr(tankwright, folder))
            self.assertEqual(set(stub), set(formulas), folder)
            for name, formula in formulas.items():
                takes = {n for n in formula._names if n.isidentifier() and not keyword.iskeyword(n)}
                if any(row['extrapolates'] for row in formula.rows):
                    takes.add('extrapolate')
                self.assertEqual(stub[name], takes, f'{folder}.{name}')

    def test_what_stands_at_the_top_is_what_the_package_finds(self):
        stub = {alias.asname for node in ast.parse((PACKAGE / '__init__.pyi').read_text()).body
                if isinstance(node, ast.ImportFrom) for alias in node.names}
        for name in stub:
            self.assertIsNotNone(getattr(tankwright, name), name)
        for name in dir(tankwright):
            try:
                getattr(tankwright, name)
            except AttributeError:  # in several folders
                self.assertNotIn(name, stub)
            else:
                self.assertIn(name, stub)


if __name__ == '__main__':
    unittest.main()
