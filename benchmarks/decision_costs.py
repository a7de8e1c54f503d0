#!/usr/bin/env python3
# SPDX-License-Identifier: BSL-1.0
"""What each decision of the example plans costs, as docs/decision-costs.md.

    benchmarks/decision_costs.py build/benchmarks/decisions_assess_bench [--write docs/decision-costs.md]

One run of the program gives all rows, so their ratios hold on a busy machine too.
"""
import argparse
import json
import subprocess
import sys

parser = argparse.ArgumentParser(description=__doc__.split('\n')[0])
parser.add_argument('program')
parser.add_argument('--write')
args = parser.parse_args()

out = subprocess.run([args.program, '--benchmark_filter=^each/', '--benchmark_format=json', '--benchmark_min_time=0.05'],
                     capture_output=True, text=True, check=True).stdout
rows = {}
for one in json.loads(out)['benchmarks']:
    _, plan, what = one['name'].split('/', 2)
    rows.setdefault(what, {})[plan] = one['cpu_time'] / 1000.0  # ns to us

whole = {plan: rows['all'][plan] for plan in ('demo', 'plywood')}
fixed = ('all', 'validate', 'shared')
lines = ['# What each decision costs', '',
         'Made by `benchmarks/decision_costs.py build/benchmarks/decisions_assess_bench --write docs/decision-costs.md`: microseconds of',
         'the processor, the library at -O1, one machine, one run; read the shares. A row is the decision\'s own part, with',
         'the cases of the sections worked out before it ("shared": levels, circuit, power cut, room, filter). The forecast of the',
         'start-up is off; it costs more than all the rest.', '',
         '| | demo [us] | share | plywood [us] | share |', '|--|--:|--:|--:|--:|']


def cells(what):
    text = ''
    for plan in ('demo', 'plywood'):
        us = rows[what].get(plan)
        text += ' | |' if us is None else f' {us:.1f} | {100 * us / whole[plan]:.1f} % |'
    return text


names = {'all': 'all of it: `assess`', 'validate': '`validate`', 'shared': 'shared by several'}
for what in fixed:
    lines.append(f'| {names[what]} |{cells(what)}')
for what in sorted((w for w in rows if w not in fixed), key=lambda w: -max(rows[w].values())):
    lines.append(f'| `{what}` |{cells(what)}')
text = '\n'.join(lines) + '\n'
if args.write:
    with open(args.write, 'w', encoding='utf-8') as to:
        to.write(text)
else:
    sys.stdout.write(text)
