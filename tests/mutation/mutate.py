#!/usr/bin/env python3
# SPDX-License-Identifier: BSL-1.0
"""Does a test notice when a header of the library is wrong?

Every number, comparison, sum, text and argument of a folder's headers is changed, one at a time, and the folder's own test
program is run. The headers are rewritten once, with a switch in each place (`switch.hpp`), so one build judges thousands of
mutants. What must be a constant expression is built again for each mutant.

  mutate.py --folder water                     all of them: prints those that no test noticed, fails when one is not accepted
  mutate.py --folder water --sample 300 --seed 7      300 of them
  mutate.py --folder water --header ammonia    those of one header
  mutate.py --folder water --write             the same as the first, and its row of docs/mutants.md

Live tables must have been made: run the tests first. `accepted/` names survivors that no test can notice, with reasons.
"""
import argparse
import csv
import hashlib
import html
import json
import os
import random
import re
import resource
import shutil
import subprocess
import sys
import threading
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from xml.etree import ElementTree

sys.path.insert(0, str(Path(__file__).resolve().parent))
from places import Finder, Header  # noqa: E402

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
NO_SWITCH = 199_999  # a number that no place has
MARKS = 200_000  # bytes that a program tells what it ran with
QUICK = 0.4  # seconds of the processor, with marks, of a test case that is run with others
FOLDERS = ('water', 'vessel', 'plumbing', 'room', 'life')


def limits_of(seconds):
    """For a run: memory, no core file, and seconds of the processor, so that a busy machine fails no mutant."""
    def limited():
        resource.setrlimit(resource.RLIMIT_AS, (4 << 30, 4 << 30))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds))

    return limited


def as_filter(cases):
    """The option of a test program that runs these cases."""
    return '--test-case=' + ','.join(name.replace('\\', '\\\\').replace(',', '\\,') for name in cases)


class Folder:
    def __init__(self, name, scratch, live, jobs, options):
        self.name, self.live, self.jobs, self.options = name, live, jobs, options
        self.scratch = scratch / name
        self.include = self.scratch / 'include'
        self.tests = sorted((ROOT / 'tests' / name).glob('*_test.cpp'))
        self.flags = ['-std=c++20', '-O1', '-g0', '-w', '-D_GLIBCXX_ASSERTIONS', '-Wno-invalid-constexpr', '-ferror-limit=0',
                      '-fno-caret-diagnostics', '-ftemplate-backtrace-limit=0', '-fconstexpr-backtrace-limit=0',
                      '-include', str(HERE / 'switch.hpp'), f'-I{self.include}', f'-I{ROOT}/include', f'-I{ROOT}/tests',
                      f'-DTANKWRIGHT_REFERENCE_DIR="{ROOT}/tests/reference"', f'-DTANKWRIGHT_SOURCE_DIR="{ROOT}"']
        self.compiler = ['ccache', 'clang++'] if shutil.which('ccache') else ['clang++']
        base = ROOT / 'include' / 'tankwright'
        self.headers = [Header(p, str(p.relative_to(base))) for p in sorted((base / name).rglob('*.hpp'))]
        Finder(self.headers, ['-std=c++20', '-xc++', f'-I{ROOT}/include']).find(base / f'{name}.hpp')
        number = 0
        self.mutants = {}  # id -> (header, place, change)
        for header in self.headers:
            for place in sorted(header.places.values(), key=lambda p: (p.start, p.end)):
                place.first = number
                for i, change in enumerate(place.changes):
                    self.mutants[number + i] = (header, place, change)
                number += len(place.changes)
        # Mutant -> its header as it is, its place and its change: those of headers that have not changed are known again.
        text = {h.name: hashlib.sha256(h.bytes).hexdigest()[:16] for h in self.headers}
        self.names = {i: f'{h.name}|{text[h.name]}|{p.start}|{p.end}|{p.kind}|{change}'
                      for i, (h, p, change) in self.mutants.items()}

    # ---- what the last run said

    def remembered(self):
        """Verdicts of the last runs on headers that are still the same."""
        path = self.scratch / 'verdicts.json'
        last = json.loads(path.read_text()) if path.exists() else {}
        return {i: last[name] for i, name in self.names.items() if name in last}

    def remember(self, verdicts):
        (self.scratch / 'verdicts.json').write_text(json.dumps({self.names[i]: v for i, v in verdicts.items()}))

    # ---- build

    def write(self):
        for header in self.headers:
            path = self.include / 'tankwright' / header.name
            path.parent.mkdir(parents=True, exist_ok=True)
            text = header.rewritten()
            if not path.exists() or path.read_text() != text:
                path.write_text(text)

    def compile(self, source, output, *more):
        command = [*self.compiler, *self.flags, *more, '-c', str(source), '-o', str(output)]
        return subprocess.run(command, capture_output=True, text=True)

    def objects(self):
        return {t: self.scratch / (t.stem + '.o') for t in self.tests}

    def build(self):
        """Rewrite and compile until the compiler takes it: what must be a constant becomes one again."""
        support = [ROOT / 'tests' / 'support' / f'{s}.cpp' for s in ('main', 'check', 'constants', 'edges', 'reference')]
        everything = {**self.objects(), **{s: self.scratch / (s.stem + '.o') for s in support}}
        waiting = dict(everything)
        self.take_back_again()
        for _ in range(40):
            self.write()
            with ThreadPoolExecutor(self.jobs) as pool:
                results = dict(zip(waiting, pool.map(lambda item: self.compile(*item), waiting.items())))
            errors = {s: r.stderr for s, r in results.items() if r.returncode}
            if not errors:
                if len(waiting) == len(everything):
                    break
                waiting = dict(everything)
                continue
            changed = sum(self.mend(text) for text in errors.values())
            if not changed:
                raise SystemExit(f'{self.name}: cannot be rewritten:\n' + next(iter(errors.values()))[:3000])
            waiting = {s: everything[s] for s in errors}
        taken = {'off': [key for key, place in self.keys() if place.off],
                 'kept': [key for key, header, offset in self.variables() if header.variables[offset]]}
        (self.scratch / 'taken_back.json').write_text(json.dumps(taken))
        self.program = self.scratch / f'{self.name}_tests'
        self.support = [everything[s] for s in support]
        self.link([everything[t] for t in self.tests], self.program)

    def keys(self):
        """Places by what they say, so that they are known again when other lines of the headers have changed."""
        seen = {}
        for header in self.headers:
            for place in sorted(header.places.values(), key=lambda p: (p.start, p.end)):
                key = f'{header.name}|{place.kind}|{place.changes[0]}|{place.code}'
                seen[key] = seen.get(key, 0) + 1
                yield f'{key}|{seen[key]}', place

    def variables(self):
        """The same for variables that are `constexpr`, by their lines."""
        for header in self.headers:
            for offset in header.variables:
                line = header.bytes[offset:].split(b'\n')[0].decode(errors='ignore')
                yield f'{header.name}|{line}', header, offset

    def take_back_again(self):
        """What the last build had to take back, so that it need not be found again."""
        path = self.scratch / 'taken_back.json'
        last = json.loads(path.read_text()) if path.exists() else {}
        off, kept = set(last.get('off', ())), set(last.get('kept', ()))
        for key, place in self.keys():
            place.off = place.off or key in off
        for key, header, offset in self.variables():
            header.variables[offset] = header.variables[offset] or key in kept

    def link(self, objects, program):
        subprocess.run(['clang++', *map(str, objects), *map(str, self.support), '-o', str(program)], check=True)

    def mend(self, text):
        """Take back what an error is about. How much was taken back."""
        by_path = {str(self.include / 'tankwright' / h.name): h for h in self.headers}
        changed = 0
        for block in re.split(r'(?m)^(?=[^\n]*: (?:fatal )?error: )', text):
            if ': error: ' not in block.split('\n')[0]:
                continue
            found = re.findall(r'(?m)^([^\s:]+):(\d+):(\d+): (error|note)', block)
            found = [(str(Path(p).resolve()), line, column, what) for p, line, column, what in found]
            places = [(by_path[p], int(line), int(column)) for p, line, column, _ in found if p in by_path]
            notes = [(by_path[p], int(line)) for p, line, _, what in found if p in by_path and what == 'note']
            done = False
            for header, line in reversed(notes):  # a variable that must be constexpr
                for offset, kept in header.variables.items():
                    if header.line_of(offset) == line and not kept:
                        header.variables[offset] = True
                        done = True
            for header, line, column in [] if done else places:
                # A compiler that was told of this error by another file's already has it mended.
                row = header.rewritten().split('\n')[line - 1]
                found = [(m.start(), int(m.group(1))) for m in re.finditer(r'::mut::\w+<::mut::\w+>\((\d+)', row)]
                before = [f for f in found if f[0] < column] or found[:1]
                if before:
                    self.mutants[before[-1][1]][1].off = True
                    done = True
                    break
            # What is said about the size of an array names no variable: those of the line must be constants.
            for header, line, _ in [] if done else places:
                row = set(re.findall(r'\w+', header.rewritten().split('\n')[line - 1]))
                for other in self.headers:
                    for offset, kept in other.variables.items():
                        if not kept and other.name_of(offset) in row:
                            other.variables[offset] = done = True
            changed += done
        return changed

    # ---- run

    def own_tests(self, header):
        """The tests of a header's topic; of a private header, those of the nearest headers that include it."""
        near = {header.name}
        while near:
            own = [t for t in self.tests if any(t.stem.startswith(Path(name).stem) for name in near)]
            if own:
                return own
            lines = [f'#include <tankwright/{name}>'.encode() for name in near]
            near = {h.name for h in self.headers if any(line in h.bytes for line in lines)}
        return self.tests[:1]

    def environment(self, mutant, evidence_only=True):
        environment = {**os.environ, 'TANKWRIGHT_LIVE_DIR': str(self.live), 'TANKWRIGHT_MUTANT_ON': str(mutant)}
        environment.pop('TANKWRIGHT_EVIDENCE_DIR', None)
        if evidence_only:
            environment['TANKWRIGHT_EVIDENCE_ONLY'] = '1'
        return environment

    def run(self, program=None, mutant=-1, seconds=600, reached=None, evidence_only=True, files=None, cases=None,
            quiet=False):
        environment = self.environment(mutant, evidence_only)
        if reached:
            environment['TANKWRIGHT_MUTANT_REACHED'] = str(reached)
        command = [str(program or self.program), '--abort-after=1', '--no-breaks']
        if files:
            command.append('--source-file=' + ','.join(f'*/{name}' for name in files))
        if cases:
            command.append(as_filter(cases))
        try:
            quiet = subprocess.DEVNULL if mutant >= 0 or cases or quiet else None
            return subprocess.run(command, env=environment, timeout=100 + 10 * seconds, stdout=quiet, stderr=quiet,
                                  preexec_fn=limits_of(seconds)).returncode == 0
        except subprocess.TimeoutExpired:
            return False

    def run_cases(self, mutant, cases, seconds):
        """The case that notices a mutant, '' for one that cannot be named; None when all of them pass."""
        environment = self.environment(mutant)
        command = [str(self.program), '--abort-after=1', '--no-breaks', '--reporters=xml', as_filter(cases)]
        try:
            result = subprocess.run(command, env=environment, timeout=100 + 10 * seconds, stdout=subprocess.PIPE,
                                    stderr=subprocess.DEVNULL, preexec_fn=limits_of(seconds))
        except subprocess.TimeoutExpired:
            return ''
        if result.returncode == 0:
            return None
        names = re.findall(rb'<TestCase name="([^"]*)"', result.stdout)
        return html.unescape(names[-1].decode()) if names else ''

    def reached_by(self, case=None):
        """Marks of what this test case runs, or the whole program, and its seconds of the processor; fails when it does not
        pass as written."""
        path = self.scratch / f'reached_{threading.get_ident()}'
        if not self.run(reached=path, quiet=case is not None, cases=case and [case]):
            raise SystemExit(f'{self.name}: the rewritten program fails with no mutant on')
        told = path.read_bytes()
        path.unlink()
        return told[:MARKS], float(told[MARKS:])

    def cases(self):
        """Names of the test cases and the file of each."""
        listed = subprocess.run([str(self.program), '--list-test-cases', '--reporters=xml'], stdout=subprocess.PIPE, text=True,
                                check=True, env={**os.environ, 'TANKWRIGHT_LIVE_DIR': str(self.live)}).stdout
        return {case.get('name'): Path(case.get('filename')) for case in ElementTree.fromstring(listed).iter('TestCase')}

    def judge(self, chosen, budget):
        """Mutant -> 'noticed', 'recorded' (noticed by a table that no source stands behind), 'survived', 'not reached',
        'the same' (changes nothing in any type), 'not built'."""
        marks, once = self.reached_by()
        at_most = lambda *times: int(2.0 + 20.0 * sum(times))
        seconds = at_most(once)
        files = self.cases()
        with ThreadPoolExecutor(self.jobs) as pool:
            by_case = dict(zip(files, pool.map(self.reached_by, files)))
        by_time = sorted(files, key=lambda case: by_case[case][1])
        at_of = lambda i: i if self.mutants[i][1].kind in ('lt', 'le', 'gt', 'ge', 'number') else self.mutants[i][1].first
        verdicts, rest = {}, []
        live = []
        for i in chosen:
            header, place, _ = self.mutants[i]
            kept = place.variable is not None and header.variables[place.variable]
            mark = marks[at_of(i)]
            if place.off:
                verdicts[i] = 'not built'
            elif self.mutants[i][2] in place.same or self.mutants[i][2] == 'text dropped: ""':
                verdicts[i] = 'the same'
            elif kept:
                rest.append(i)
            elif mark & 1:
                live.append(i)
            elif mark & 2:
                verdicts[i] = 'the same'
            else:
                verdicts[i] = 'not reached'
        with ThreadPoolExecutor(self.jobs) as pool:

            noticed_by = {}  # header -> the cases that noticed its last mutants, the newest first

            def same_answers(i):
                """Only what reaches it: first the cases that noticed its neighbours, where most mutants end; then those of its
                own file and the other quick ones, the quickest first; then each of those that take longer."""
                name, own = self.mutants[i][0].name, self.own_tests(self.mutants[i][0])
                reach = [case for case in by_time if by_case[case][0][at_of(i)] & 1]
                quick = [case for case in reach if by_case[case][1] < QUICK]
                known = [case for case in noticed_by.get(name, []) if case in quick][:3]
                parts = [known]
                for wanted in (True, False):
                    others = [case for case in quick if (files[case] in own) == wanted and case not in known]
                    while others:  # in parts, each some three times as long as the one before
                        count, spent, most = 0, 0.0, 0.01 * 3 ** min(len(parts), 4)
                        while count < len(others) and spent <= most:
                            spent += by_case[others[count]][1]
                            count += 1
                        parts.append(others[:count])
                        others = others[count:]
                if not self.options.quick:
                    parts += [[case] for case in reach if case not in quick]
                for part in filter(None, parts):
                    seconds = at_most(*(by_case[case][1] for case in part))
                    notice = self.run_cases(i, part, seconds)
                    if notice is not None:
                        if notice in part:
                            before = [case for case in noticed_by.get(name, []) if case != notice]
                            noticed_by[name] = [notice, *before][:8]
                        return False
                return True

            for done, (i, same) in enumerate(zip(live, pool.map(same_answers, live)), 1):
                verdicts[i] = 'survived' if same else 'noticed'
                if done % 50 == 0:  # a run that is ended goes on from here with --again
                    print(f'{self.name}: {done} of {len(live)} run', file=sys.stderr, flush=True)
                    self.remember({**self.remembered(), **verdicts})
            again = [i for i in live if verdicts[i] == 'survived']
            by_record = lambda i: self.run(mutant=i, seconds=seconds, evidence_only=False, files=['constants_test.cpp'])
            for i, same in zip(again, pool.map(by_record, again)):
                if not same:
                    verdicts[i] = 'recorded'
        # Constants, and what ran only while compiling: built again, one by one, while there is time.
        rest += [i for i in chosen if verdicts.get(i) == 'not reached' and self.mutants[i][1].mode == 'guarded']
        deadline = time.time() + budget
        with ThreadPoolExecutor(self.jobs) as pool:
            for i, verdict in zip(rest, pool.map(lambda i: self.judge_fixed(i, deadline, seconds), rest)):
                verdicts[i] = verdict or verdicts.get(i, 'not built')
        return verdicts

    def judge_fixed(self, mutant, deadline, seconds):
        if time.time() > deadline:
            return None
        header, place, _ = self.mutants[mutant]
        own = self.own_tests(header)
        home = self.scratch / f'fixed_{mutant}'
        include = home / 'tankwright'
        home.mkdir(exist_ok=True)
        place_mode, place.mode = place.mode, 'fixed'
        variable, place.variable = place.variable, None
        text = header.rewritten()
        place.mode, place.variable = place_mode, variable
        (include / header.name).parent.mkdir(parents=True, exist_ok=True)
        (include / header.name).write_text(text)
        verdict = 'survived'
        objects = self.objects()
        rebuilt = {}

        def compiled(test, number):
            command = [*self.compiler, f'-I{home}', *self.flags, f'-DTANKWRIGHT_MUTANT_FIXED={number}', '-c', str(test),
                       '-o', str(home / (test.stem + '.o'))]
            return subprocess.run(command, capture_output=True).returncode == 0

        others = [t for t in self.tests if t not in own]
        for group in (own, others) if self.options.thorough else (own,):
            for test in group:
                if time.time() > deadline + 60:
                    return None
                if not compiled(test, mutant):  # a static_assert notices; what does not compile as written is no mutant
                    verdict = 'noticed' if compiled(test, -1) else 'not built'
                    break
                rebuilt[test] = home / (test.stem + '.o')
            if verdict != 'survived':
                break
            self.link([*rebuilt.values(), *(o for t, o in objects.items() if t not in rebuilt)], home / 'tests')
            if not self.run(home / 'tests', NO_SWITCH, seconds):
                verdict = 'noticed'
                break
        shutil.rmtree(home, ignore_errors=True)
        return verdict


def accepted_survivors(folder):
    with open(HERE / 'accepted' / f'{folder}.csv', newline='') as f:
        return {(r['header'], r['code'], r['change']): r['reason'] for r in csv.DictReader(f)}


def named(accepted, header, place, change):
    return (header.name, place.code, change) in accepted


def write_row(row):
    """The row of a folder in docs/mutants.md."""
    path = ROOT / 'docs' / 'mutants.md'
    share = row['noticed'] / max(row['judged'], 1)
    of_others = row['noticed'] / max(row['judged'] - row['accepted'], 1)
    line = (f"| `{row['folder']}` | {row['made']} | {row['judged']} | {row['noticed']} | {share:.2%} | {row['recorded']} | "
            f"{row['accepted']} | {of_others:.2%} | {row['judged'] - row['noticed'] - row['accepted']} |")
    text = path.read_text()
    text, count = re.subn(rf"(?m)^\| `{row['folder']}` \|.*$", line, text)
    if count != 1:
        raise SystemExit(f'{path}: no row for {row["folder"]}')
    path.write_text(text)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument('--folder', action='append', choices=FOLDERS)
    parser.add_argument('--header', action='append', help='only headers with this in their name')
    parser.add_argument('--kind', action='append')
    parser.add_argument('--sample', type=int, help='how many mutants of each folder')
    parser.add_argument('--seed', type=int, default=1)
    parser.add_argument('--scratch', type=Path, default=ROOT / 'build-mutation')
    parser.add_argument('--live', type=Path, default=ROOT / 'build' / 'tests' / 'live')
    parser.add_argument('--jobs', type=int, default=os.cpu_count())
    parser.add_argument('--budget', type=float, default=600, help='seconds for mutants that are built one by one')
    parser.add_argument('--thorough', action='store_true', help='build all test files for those, not only the own ones')
    parser.add_argument('--again', action='store_true',
                        help='only what survived the last run; for the same headers, when tests were added')
    parser.add_argument('--not-accepted', action='store_true',
                        help='leave out what accepted/ names: it counts as a survivor without being run')
    parser.add_argument('--quick', action='store_true',
                        help=f'only the cases that take less than {QUICK} s: what survives may be noticed by the others (--again)')
    parser.add_argument('--write', action='store_true', help='write the row of docs/mutants.md')
    options = parser.parse_args()
    if options.write and (options.header or options.kind or options.quick):
        parser.error('--write needs all headers, kinds and cases of a folder, or a sample of its mutants')
    failed = False
    for name in options.folder or FOLDERS:
        started = time.time()
        folder = Folder(name, options.scratch.resolve(), options.live.resolve(), options.jobs, options)
        folder.scratch.mkdir(parents=True, exist_ok=True)
        accepted = accepted_survivors(name)
        for row in sorted(set(accepted) - {(h.name, p.code, c) for h, p, c in folder.mutants.values()}):
            print(f'{name}: accepted, and not there any more: {row}')
            failed = True
        folder.build()
        last = folder.remembered() if options.again else {}
        built = time.time()
        chosen = [i for i, (h, p, _) in folder.mutants.items()
                  if (not options.header or any(n in h.name for n in options.header))
                  and (not options.kind or p.kind in options.kind)]
        if options.sample and options.sample < len(chosen):
            chosen = sorted(random.Random(options.seed).sample(chosen, options.sample))
        wanted = set(chosen)
        settled = {i: v for i, v in last.items()
                   if v in ('noticed', 'recorded', 'the same', 'not built') and i in wanted}
        if options.not_accepted:
            settled.update((i, 'survived') for i in chosen if i not in settled and named(accepted, *folder.mutants[i]))
        verdicts = {**settled, **folder.judge([i for i in chosen if i not in settled], options.budget)}
        folder.remember({**folder.remembered(), **verdicts})
        count = {v: sum(w == v for w in verdicts.values())
                 for v in ('noticed', 'recorded', 'survived', 'not reached', 'the same', 'not built')}
        excused = 0
        for i in chosen:
            header, place, change = folder.mutants[i]
            if verdicts[i] in ('survived', 'not reached'):
                if named(accepted, header, place, change):
                    excused += 1
                    continue
                print(f'{header.name}:{place.line}: {change} [{place.kind}, {verdicts[i]}]: {place.code}')
        held = count['noticed'] + count['recorded']
        judged = held + count['survived'] + count['not reached']
        made = len(chosen) if len(chosen) == len(folder.mutants) else f'{len(chosen)} of {len(folder.mutants)}'
        row = {'folder': name, 'made': made, 'judged': judged, 'noticed': held, 'recorded': count['recorded'],
               'accepted': excused}
        print(f'{name}: made {made}, judged {judged}, noticed {held}, of these {count["recorded"]} by a record alone, '
              f'survived {count["survived"]}, not reached {count["not reached"]}, accepted {excused}; the same {count["the same"]}, '
              f'not built {count["not built"]}; share {held / max(judged, 1):.2%}, seed {options.seed}; '
              f'built in {built - started:.0f} s, judged in {time.time() - built:.0f} s')
        (folder.scratch / 'result.json').write_text(json.dumps(row))
        failed = failed or judged - held > excused
        if options.write:
            write_row(row)
    return failed


if __name__ == '__main__':
    sys.exit(main())
