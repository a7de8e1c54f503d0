# SPDX-License-Identifier: BSL-1.0
"""Every TOML listing in docs/guides is a plan that is read without a mistake and assessed, and answers what the comment before
it says: `<!-- plan: sump.power_cut sump.running -->`. A listing after `<!-- part -->` is a piece of a plan: whatever is wrong
with it may only be that something is missing. Usage: plans.py COMMISSION ROOT"""
import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path

program, root = sys.argv[1], Path(sys.argv[2])
LISTING = re.compile(r'(?:<!-- (part|plan: [a-z_. ]+) -->\n)?^```toml\n(.*?)^```', re.S | re.M)
MISSING = re.compile(r': (is missing|needs one of)\b')
NO_PLAN = {'front-ends', 'plan-file', 'reading-and-writing-quantities'}  # guides to files and calls, not to a day of the job
bad = plans = 0


def complain(text):
    global bad
    bad += 1
    print(text)


for page in sorted((root / 'docs' / 'guides').rglob('*.md')):
    where = page.relative_to(root)
    listings = LISTING.findall(page.read_text())
    if not listings and page.parent.name == 'guides' and page.stem not in NO_PLAN:
        complain(f'{where}: a guide to a day of the job starts with a plan')
    for answers, text in listings:
        plans += 1
        with tempfile.NamedTemporaryFile('w', suffix='.toml', encoding='utf-8') as file:
            file.write(text)
            file.flush()
            run = subprocess.run([program, '--json', file.name], capture_output=True, text=True)
        if answers == 'part':
            for mistake in run.stderr.splitlines():
                if not MISSING.search(mistake):
                    complain(f'{where}: {mistake}')
            continue
        answers = answers.removeprefix('plan: ')
        if run.returncode != 0:
            complain(f'{where}: {run.stderr.strip() or run.returncode}')
            continue
        if not answers:
            complain(f'{where}: a plan without <!-- plan: what it answers -->')
        verdicts = {}
        for finding in json.loads(run.stdout)['findings']:
            verdicts.setdefault(finding['id'], []).append(finding['verdict'])
        for wanted in answers.split():
            if wanted not in verdicts or 'not enough known' in verdicts[wanted]:
                complain(f'{where}: the plan does not answer {wanted}: {verdicts.get(wanted, "no such finding")}')

if not plans:
    complain('no plan was found')
print(f'{plans} plans, {bad} problems')
sys.exit(1 if bad else 0)
