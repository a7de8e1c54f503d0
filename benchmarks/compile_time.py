# SPDX-License-Identifier: BSL-1.0
"""What using the library costs a compiler: user time against `boost/units/quantity.hpp` alone, as ratios in one run.

Usage: compile_time.py [--root ROOT] [--compiler g++] [--runs 9] [--headers]
First what people do, then each header that has a budget (--headers: every header). Where a figure is over its budget it
is marked; beyond twice a budget the run fails, because a busy machine does not double a compiler's user time. Three budgets
are missed today (docs/compile-time.md): those fail beyond 1.3 times where they stand, so that they cannot slip further.
"""
import argparse
import os
import resource
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

BASE = '#include <boost/units/quantity.hpp>\n'
WHOLE = '''#include <tankwright/tankwright.hpp>
#include <tankwright/plan.hpp>
#include <tankwright/decisions.hpp>
#include <tankwright/exchange.hpp>
int main() {
  return static_cast<int>(tankwright::decisions::assess(tankwright::exchange::read_plan("", {}).build).findings.size());
}
'''
SYNTAX, OPTIMISED = ['-fsyntax-only'], ['-O2', '-c', '-o', os.devnull]
COMPILED = ['-DTANKWRIGHT_COMPILED']

# name, source, options, budget as a ratio, budget in seconds
USES = [
    ('the formulas, header-only', '#include <tankwright/tankwright.hpp>\n', SYNTAX, 5.0, None),
    ('everything and assess, compiled once', WHOLE, COMPILED + SYNTAX, 5.0, None),
    ('the same at -O2', WHOLE, COMPILED + OPTIMISED, None, 4.0),
]

# Where the missed budgets stand, in the unit of the budget. A figure that comes down is written here.
STANDS_AT = {'the formulas, header-only': 8.4, 'everything and assess, compiled once': 11.6, 'the same at -O2': 9.3}


def seconds(compiler, root, source, options):
    with tempfile.NamedTemporaryFile('w', suffix='.cpp') as file:
        file.write(source)
        file.flush()
        before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
        subprocess.run([compiler, '-std=c++20', '-I', str(root / 'include'), *options, file.name], check=True)
        return resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument('--root', type=Path, default=Path(__file__).resolve().parent.parent)
    parser.add_argument('--compiler', default=os.environ.get('CXX', 'g++'))
    parser.add_argument('--runs', type=int, default=9)
    parser.add_argument('--headers', action='store_true', help='every header, not only those that have a budget')
    options = parser.parse_args()
    include = options.root / 'include'
    cases = list(USES)
    for path in sorted(include.rglob('*.hpp')):
        header = str(path.relative_to(include))
        has_budget = header.startswith('tankwright/water/') and 'detail' not in path.parts
        if has_budget or (options.headers and 'detail' not in path.parts):
            cases.append((header, f'#include <{header}>\n', COMPILED + SYNTAX, 1.5 if has_budget else None, None))
    base, times = [], {case[0]: [] for case in cases}
    for _ in range(options.runs):
        base.append(seconds(options.compiler, options.root, BASE, SYNTAX))
        for name, source, flags, _, _ in cases:
            times[name].append(seconds(options.compiler, options.root, source, flags))
    unit = statistics.median(base)
    print(f'boost/units/quantity.hpp: {unit:.3f} s of user time (median of {options.runs}); medians [min max]:')
    over = far_over = 0
    for name, _, _, ratio, most in cases:
        ratios = [t / b for t, b in zip(times[name], base)]
        middle, took = statistics.median(ratios), statistics.median(times[name])
        used = max(middle / ratio if ratio else 0.0, took / most if most else 0.0)
        over += used > 1.0
        most_used = max(2.0, 1.3 * STANDS_AT.get(name, 0.0) / (ratio or most or 1.0))
        far_over += used > most_used
        budget = f'  budget {ratio}' if ratio else f'  budget {most} s' if most else ''
        mark = '  FAR OVER' if used > most_used else '  OVER' if used > 1.0 else ''
        print(f'  {middle:5.2f} [{min(ratios):.2f} {max(ratios):.2f}] {took:6.2f} s  {name}{budget}{mark}')
    print(f'{len(cases)} figures, {over} over their budget, {far_over} beyond what fails')
    return 1 if far_over else 0


if __name__ == '__main__':
    sys.exit(main())
