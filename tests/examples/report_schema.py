# SPDX-License-Identifier: BSL-1.0
"""Holds the JSON report of plans against docs/report.schema.json, and looks for what a schema cannot say: every finding
whose id is about water on floors, panels, animals or current carries its caution; figures belong to findings; low <= central
<= high. Usage: report_schema.py PROGRAM SCHEMA [PLAN ...]"""
import json
import subprocess
import sys

import jsonschema

MUST_WARN = ('hold.', 'sump.', 'life.', 'room.', 'vessel.panels', 'vessel.first_fill', 'vessel.floor', 'vessel.brace',
             'vessel.lids', 'salt.mix', 'salt.match', 'water.ammonia', 'plumbing.drains', 'plumbing.flow', 'plumbing.overflow')


def problems_of(report):
    ids = [f['id'] for f in report['findings']]
    if len(set(ids)) != len(ids):
        yield f'an id stands twice: {ids}'
    for finding in report['findings']:
        name = finding['id']
        if name.startswith(MUST_WARN) and not finding['caution']:
            yield f'{name} has no caution'
        if finding['verdict'] == 'not enough known' and not finding['measure_next']:
            yield f'{name} does not say what it needs'
        for number in finding['numbers']:
            values = [number[k] for k in ('low', 'central', 'high')]
            if None not in values and not values[0] <= values[1] <= values[2]:
                yield f'{name}: {number["label"]}: {values} are not in order'
    by_id = {f['id']: f for f in report['findings']}
    known = {d['path'] for d in report['doubts']}
    for first in report['measure_first']:
        if by_id[first['id']]['verdict'] not in ('does not hold', 'thin margin'):
            yield f'{first["id"]} is not open, and is to be measured'
        if first['path'] and first['path'] not in known:
            yield f'{first["path"]} is not doubtful'
    for finding in report['findings']:
        is_open = 'margin' in finding and finding['verdict'] in ('does not hold', 'thin margin')
        if report['judged_by'] == 'chance' and is_open != ('would_hold' in finding):
            yield f'{finding["id"]}: {finding["verdict"]}, and would_hold is {finding.get("would_hold")}'
        parts = [d['part'] for d in finding.get('shares', {}).get('doubts', [])]
        if parts and abs(sum(parts) + finding['shares']['together'] - 1.0) > 1e-9:
            yield f'{finding["id"]}: shares come to {sum(parts)}'
    for figure in report['figures']:
        if figure['id'] not in ids:
            yield f'figure {figure["id"]} belongs to no finding'
        for curve in figure.get('curves', []):
            lengths = {len(curve[k]) for k in ('x', 'y', 'low', 'high') if k in curve}
            if len(lengths) != 1:
                yield f'figure {figure["id"]}: {curve["label"]} has lists of different lengths'


def main(program, schema_path, plans):
    with open(schema_path) as file:
        schema = json.load(file)
    jsonschema.Draft7Validator.check_schema(schema)
    bad = 0
    for plan in [[], ['--quick']] + [[p] for p in plans]:
        run = subprocess.run([program, '--json'] + plan, stdout=subprocess.PIPE, check=True)
        report = json.loads(run.stdout)
        complaints = [e.message[:300] for e in jsonschema.Draft7Validator(schema).iter_errors(report)]
        complaints += list(problems_of(report))
        for complaint in complaints:
            print(f'{plan or "demo"}: {complaint}')
        bad += len(complaints)
    # The twin: a broken report must be refused.
    report['findings'][0]['verdict'] = 'fine'
    if not list(jsonschema.Draft7Validator(schema).iter_errors(report)):
        print('the schema accepts an unknown verdict')
        bad += 1
    print(f'{len(plans) + 2} reports, {bad} problems')
    return 1 if bad else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1], sys.argv[2], sys.argv[3:]))
