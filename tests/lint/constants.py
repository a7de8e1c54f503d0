#!/usr/bin/env python3
# SPDX-License-Identifier: BSL-1.0
"""Every public constant of the headers (limits, presets, defaults, cautions, sources) is held by a test against a table.

The names stand in tests/<folder>/constants_test.cpp, which `--write` makes; the values in
tests/reference/<folder>/constants.csv, which people write, each with where it was read. A constant that the headers have
and the test does not name fails, and so does the reverse.

`--rows FOLDER PROGRAM` appends a row for each constant that has none, with the value that the program gives and the kind
"regression": a record, no evidence. It fails until somebody has held it against its source, or has given the reason for which
it was chosen, and said so.
"""
import argparse
import csv
import os
import re
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from declarations import FOLDERS, Scanner, World  # noqa: E402


def constants_of(root, folder):
    world = World()
    for header in sorted((root / 'include/tankwright' / folder).glob('*.hpp')):
        Scanner(header, world).scan()
    return [c for n, c in world.constants.items()
            if n.startswith(folder + '::') and '::detail::' not in n and '::kernel::' not in n and '<T>' not in c.type
            and c.type != 'T']


def unread(root, folder, constants):
    """Constants of namespaces that the scanner did not read: a constant that no test names would hide there."""
    named = {c.name.split('::')[-1] for c in constants}
    for header in sorted((root / 'include/tankwright' / folder).glob('*.hpp')):
        inside = []
        before = ''
        for number, line in enumerate(header.read_text().split('\n'), 1):
            space = re.match(r'(?:inline )?namespace ([\w:]+) \{|\}  // namespace ([\w:]+)', line)
            if space:
                inside = [*inside, space.group(1)] if space.group(1) else inside[:-1]
            found = re.match(r'inline constexpr .*?(\w+)(?:\[\w*\])?(?: =|\{|$)', line)
            private = {'detail', 'kernel'} & {part for space in inside for part in space.split('::')}
            if found and not private and not before.startswith('template') and found.group(1) not in named:
                yield f'{header}:{number}: a constant that this lint cannot read: {line}'
            before = line


def test_of(folder, constants):
    lines = ['// SPDX-License-Identifier: BSL-1.0',
             '// Written by tests/lint/constants.py. What the constants must be: tests/reference/%s/constants.csv.' % folder,
             f'#include <tankwright/{folder}.hpp>', '', '#include "support/constants.hpp"', '',
             f'TEST_CASE("{folder}: limits, presets, defaults, cautions and sources are what the table says") {{',
             '  tankwright::testing::constants_by_name all;']
    lines += [f'  TW_CONSTANT({c.name});' for c in constants]
    return '\n'.join([*lines, f'  tankwright::testing::check_constants("{folder}", all);', '}', ''])


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument('root', type=Path)
    parser.add_argument('--write', action='store_true')
    parser.add_argument('--rows', nargs=2, metavar=('FOLDER', 'PROGRAM'))
    options = parser.parse_args()
    faults = 0
    if options.rows:
        folder, program = options.rows
        path = options.root / 'tests/reference' / folder / 'constants.csv'
        old = list(csv.reader(path.open(newline=''))) if path.exists() else [['name', 'value', 'source', 'kind']]
        with tempfile.NamedTemporaryFile('r') as out:
            subprocess.run([program, '--source-file=*constants_test.cpp'], check=True, stdout=subprocess.DEVNULL,
                           env={**os.environ, 'TANKWRIGHT_CONSTANTS_TO': out.name})
            found = [line.rstrip('\n').split('\t', 1) for line in Path(out.name).read_text().splitlines()]
        known = {row[0] for row in old}
        with path.open('w', newline='') as f:
            csv.writer(f, lineterminator='\n').writerows(
                old + [[name, value, 'as written in the header', 'regression'] for name, value in found if name not in known])
        return 0
    for folder in FOLDERS:
        path = options.root / 'tests' / folder / 'constants_test.cpp'
        constants = constants_of(options.root, folder)
        for fault in unread(options.root, folder, constants):
            print(fault)
            faults += 1
        text = test_of(folder, constants)
        if options.write:
            path.write_text(text)
        elif not path.exists() or path.read_text() != text:
            print(f'{path}: does not name the constants of the headers; tests/lint/constants.py . --write')
            faults += 1
        with (options.root / 'tests/reference' / folder / 'constants.csv').open(newline='') as f:
            rows = list(csv.DictReader(f))
        for row in rows:
            if row['kind'] == 'regression':
                print(f'{folder}: {row["name"]}: nobody has held it against a source or given its reason')
                faults += 1
        kinds = Counter(row['kind'] for row in rows)
        print(f'{folder}: {len(constants)} constants; rows: ' + ', '.join(f'{n} {kind}' for kind, n in kinds.most_common()))
    return 1 if faults else 0


if __name__ == '__main__':
    sys.exit(main())
