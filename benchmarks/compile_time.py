# SPDX-License-Identifier: BSL-1.0
"""What including a header costs: user time of the compiler against `boost/units/quantity.hpp` alone, as ratios in one run.

Usage: compile_time.py [--root ROOT] [--compiler g++] [--runs 9] [--budgeted] [--strict]
The budgets: umbrella 2.5, each header of `water` 1.5. --strict fails when one is exceeded; without it the figures are
only printed, because a busy machine must not fail a build.
"""
import argparse
import os
import resource
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

BASE = 'boost/units/quantity.hpp'


def budget_of(header):
    if header == 'tankwright/tankwright.hpp':
        return 2.5
    return 1.5 if header.startswith('tankwright/water/') else None


def seconds(compiler, root, header):
    with tempfile.NamedTemporaryFile('w', suffix='.cpp') as source:
        source.write(f'#include <{header}>\n')
        source.flush()
        before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
        subprocess.run([compiler, '-std=c++20', '-fsyntax-only', '-I', str(root / 'include'), source.name], check=True)
        return resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument('--root', type=Path, default=Path(__file__).resolve().parent.parent)
    parser.add_argument('--compiler', default=os.environ.get('CXX', 'g++'))
    parser.add_argument('--runs', type=int, default=9)
    parser.add_argument('--strict', action='store_true')
    parser.add_argument('--budgeted', action='store_true', help='only the headers that have a budget')
    options = parser.parse_args()
    include = options.root / 'include'
    headers = [str(p.relative_to(include)) for p in sorted(include.rglob('*.hpp')) if 'detail' not in p.parts]
    if options.budgeted:
        headers = [header for header in headers if budget_of(header)]
    ratios = {header: [] for header in headers}
    base_times = []
    for _ in range(options.runs):
        base = seconds(options.compiler, options.root, BASE)
        base_times.append(base)
        for header in headers:
            ratios[header].append(seconds(options.compiler, options.root, header) / base)
    print(f'{BASE}: {statistics.median(base_times):.3f} s (median of {options.runs}); ratios to it, median [min max]:')
    over = 0
    for header in headers:
        middle = statistics.median(ratios[header])
        budget = budget_of(header)
        late = budget is not None and middle > budget
        over += late
        print(f'  {middle:5.2f} [{min(ratios[header]):.2f} {max(ratios[header]):.2f}]  {header}'
              + (f'  budget {budget}' if budget else '') + ('  OVER' if late else ''))
    return 1 if over and options.strict else 0


if __name__ == '__main__':
    sys.exit(main())
