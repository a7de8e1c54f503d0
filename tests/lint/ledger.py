# SPDX-License-Identifier: BSL-1.0
"""Merges the evidence of a test run into the ledger docs/validation.md.

--write writes it; --check fails when the committed ledger differs, when checks name a function that does not exist, or
when a public function has no evidence. Evidence of a formula, and of each answer to a decision, is a published value, a
live library or mathematics. What carries no formula (paths, reading, writing, lists) must at least have a property or
be called by hand; a regression is never enough. What lies in the folders of `plan`, `decisions` and `exchange` beside the
answers are parts of them, held by the answers that they make.
"""
import argparse
import re
import sys
from collections import defaultdict
from pathlib import Path

from headers import all_headers, public_functions, unit_makers

EVIDENCE = ('published', 'library', 'identity')
CARRIES_NO_FORMULA = EVIDENCE + ('property', 'wiring')
KINDS = EVIDENCE + ('property', 'wiring', 'common practice', 'from memory', 'regression')
OPENING = '''# Validation ledger

Written by the tests (`tests/lint/ledger.py --write`); do not edit. Each row is a public function: how many checks it has of
each kind, the worst deviation as a share of the tolerance, and the sources of the expected values. The first three
kinds are evidence: a printed value, a live general-purpose library, or mathematics. `wiring` is the same calls by hand
and proves nothing but that they are made; `from memory` values were not read in their source, `common practice` has
none, and a `regression` proves nothing but that a result has not changed.

'''


def share_text(share):
    for limit, text in ((0.0, '0'), (0.01, '< 1 %'), (0.1, '< 10 %'), (0.25, '< 25 %'), (0.5, '< 50 %'), (0.75, '< 75 %')):
        if share <= limit:
            return text
    return '<= 100 %' if share <= 1 else 'FAILS'


def read(directory):
    rows = defaultdict(lambda: {'count': defaultdict(int), 'worst': 0.0, 'sources': set()})
    files = sorted(Path(directory).glob('*_tests.tsv'))
    if not files:
        sys.exit(f'no evidence in {directory}: run the tests first')
    for file in files:
        for line in file.read_text().splitlines():
            function, kind, count, share, source = line.split('\t')
            if kind not in KINDS:
                sys.exit(f'{file}: unknown kind {kind}')
            row = rows[function]
            row['count'][kind] += int(count)
            row['worst'] = max(row['worst'], float(share))
            row['sources'].add(source)
    return rows


def ledger_text(rows, public):
    text = OPENING
    folders = defaultdict(list)
    for name in sorted(public):
        parts = name.split('::')
        folders[parts[1] if len(parts) > 2 else 'core'].append(name)
    order = ['core', 'text', 'numerics', 'water', 'vessel', 'plumbing', 'room', 'life', 'plan', 'decisions', 'exchange']
    for folder in sorted(folders, key=lambda f: order.index(f) if f in order else 99):
        text += f'## {folder}\n\n'
        text += '| function | published | library | identity | property | other | worst of tolerance | sources |\n'
        text += '|--|--:|--:|--:|--:|--:|--|--|\n'
        for name in folders[folder]:
            row = rows.get(name)
            if not row:
                text += f'| `{name.removeprefix("tankwright::")}` | | | | | | | **no checks** |\n'
                continue
            counts = row['count']
            other = ', '.join(f'{counts[k]} {k}' for k in KINDS[4:] if counts[k])
            cells = [str(counts[k]) if counts[k] else '' for k in KINDS[:4]]
            sources = '; '.join(sorted(s.replace('|', '/') for s in row['sources'] if s))
            text += (f'| `{name.removeprefix("tankwright::")}` | ' + ' | '.join(cells) +
                     f' | {other} | {share_text(row["worst"])} | {sources} |\n')
        text += '\n'
    total = defaultdict(int)
    for row in rows.values():
        for kind, count in row['count'].items():
            total[kind] += count
    text += 'Checks in all: ' + ', '.join(f'{total[k]} {k}' for k in KINDS if total[k]) + '.\n'
    return text


def is_class_or_constant(name, root):
    folder, own = name.split('::')[-2:]
    if folder == 'kernel':  # arithmetic on raw numbers is public too
        folder = name.split('::')[1]
    headers = Path(root, 'include/tankwright', 'core' if folder == 'tankwright' else folder).rglob('*.hpp')
    declared = re.compile(rf'^(?:class|struct|enum class|using|inline constexpr [\w:<>, ]+?) {own}\b' +
                          (rf'|\b{own}\(' if '::kernel::' in name else ''), re.M)
    return any(declared.search(header.read_text()) for header in headers)


UPPER = ('plan', 'decisions', 'exchange')
# Answers whose case by hand or independent model is still to be written: they are called by hand alone. One that has it
# must leave this list.
OWED = {'tankwright::decisions::answer_drying_methods', 'tankwright::decisions::answer_heater_choice',
        'tankwright::decisions::answer_outage_warm'}


def kinds_needed(name, parts):
    """On the upper floors only the answers to decisions are results; the rest moves them about."""
    folder, own = (['', *name.split('::')])[-2:] if name.count('::') < 2 else (name.split('::')[1], name.split('::')[-1])
    if folder not in UPPER:
        return EVIDENCE
    if own.startswith('answer_'):
        return ('wiring', 'property') if name in OWED else EVIDENCE
    return () if name in parts else CARRIES_NO_FORMULA


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument('--evidence', required=True)
    parser.add_argument('--root', required=True)
    mode = parser.add_mutually_exclusive_group(required=True)
    mode.add_argument('--write', action='store_true')
    mode.add_argument('--check', action='store_true')
    options = parser.parse_args()
    rows = read(options.evidence)
    public = {f.name for header in all_headers(options.root) for f in public_functions(header)}
    public |= {name for pair in unit_makers(options.root) for name in pair}
    floors = Path(options.root, 'include', 'tankwright')
    parts = {f.name for header in all_headers(options.root) for f in public_functions(header)
             if header.parent.parent != floors and header.parent != floors}
    # Classes and constants may carry evidence too, under their own name; they are listed with the functions.
    unknown = [n for n in rows if n not in public and not is_class_or_constant(n, options.root)]
    listed = public | {n for n in rows if n not in unknown}
    text = ledger_text(rows, listed)
    target = Path(options.root) / 'docs' / 'validation.md'
    if options.write:
        target.write_text(text)
        print(f'wrote {target}')
    problems = [f'evidence names {n}, which is not in the headers' for n in sorted(unknown)]
    for name in sorted(public):
        has = {k for k in KINDS if name in rows and rows[name]['count'][k]}
        needed = kinds_needed(name, parts)
        if needed and not has & set(needed):
            problems.append(f'{name} has no check that is {", ".join(needed[:-1])} or {needed[-1]}')
        if name in OWED and has & set(EVIDENCE):
            problems.append(f'{name} has its evidence: it must leave the list of what is owed')
    if options.check and (not target.exists() or target.read_text() != text):
        problems.append(f'{target} is not what the tests give; run the target "ledger" and commit it')
    for problem in problems:
        print(problem)
    print(f'{len(listed)} functions, {len(problems)} problems')
    return 1 if problems else 0


if __name__ == '__main__':
    sys.exit(main())
