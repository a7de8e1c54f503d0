# SPDX-License-Identifier: BSL-1.0
"""Mistakes that must not compile. With MISTAKE defined each case must fail and say what its `says:` line asks for; without,
its twin must compile, so that a case cannot fail for another reason: all twins together, and each alone where they do not.

Usage: run.py --root ROOT COMPILER [COMPILER ...] [--write-page | --check-page]
The page is docs/compiler-errors.md: what the compilers say for the cases that carry a `page:` number.
"""
import argparse
import concurrent.futures
import os
import re
import subprocess
import sys
from pathlib import Path

PAGE_OPENING = '''# What the compiler says

The ten commonest mistakes with units, what GCC and Clang answer, and the right way to write it. Written by
`tests/compile_fail/run.py --write-page`; do not edit. Read the first line of an error: it names the parameter or the type
that was expected; the rest is where the compiler looked.

'''


def compiled(compiler, root, folder, *source, text=None):
    command = [compiler, '-std=c++20', '-fsyntax-only', '-Wall', '-Wextra', '-fdiagnostics-color=never', '-I',
               str(root / 'include'), *source]
    run = subprocess.run(command, cwd=folder, input=text, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
                         env={**os.environ, 'LC_ALL': 'C'})
    return run.returncode, run.stdout


def twins_compile(compiler, root, cases):
    """All twins in one source: the headers of all of them first, then each in a namespace of its own."""
    headers = dict.fromkeys(line for case in cases for line in case.read_text().split('\n') if line.startswith('#include'))
    text = [*headers, *(f'namespace twin_{case.stem} {{\n#include "{case.name}"\n}}' for case in cases)]
    return compiled(compiler, root, cases[0].parent, '-x', 'c++', '-', text='\n'.join(text) + '\n')[0] == 0


def field(case, name):
    found = re.search(rf'^// {name}: (.*)$', case.read_text(), re.M)
    return found.group(1) if found else None


def branch(case, which):
    right = re.search(r'#ifdef MISTAKE\n(.*?)#else\n(.*?)#endif', case.read_text(), re.S)
    return '\n'.join(line.strip() for line in right.group(which).strip().split('\n'))


def check(compiler, root, case, twins):
    problems = []
    status, said = compiled(compiler, root, case.parent, '-DMISTAKE', case.name)
    wanted = field(case, 'says')
    if status == 0:
        problems.append('compiles, though it is a mistake')
    elif not wanted or not re.search(wanted, said):
        problems.append(f'fails, but does not say /{wanted}/:\n{said[:800]}')
    if not twins.result():
        status, said_twin = compiled(compiler, root, case.parent, case.name)
        if status != 0:
            problems.append(f'its twin does not compile:\n{said_twin[:800]}')
    return case, compiler, problems, said


def shortened(said):
    """The first error with its place in the code, without the system's paths and with long names cut."""
    lines = [line for line in said.split('\n') if line.strip()]
    start = next((i for i, line in enumerate(lines) if ' error: ' in line), 0)
    keep = [lines[start]]
    for line in lines[start + 1:start + 3]:
        if re.match(r'^\s', line):
            keep.append(line)
    # A sentence of ours: say whose field it was.
    if 'tankwright: ' in lines[start]:
        keep = [line for line in lines if re.search('[Ii]n instantiation|required from here', line)][:2] + lines[start:start + 1]
    # Where no overload fits, the reason stands in the first note about a candidate.
    if 'no matching function' in lines[start]:
        keep += [line for line in lines if 'note: ' in line and 'conver' in line][:1]
    text = '\n'.join(keep)
    text = re.sub(r'boost::units::', '', text)
    text = re.sub(r'unit<list<.*?>, homogeneous_system<.*?> >(?: *>)*', 'unit<...>', text)
    text = re.sub(r'\S*include/(tankwright/\S*?\.hpp)(?::\d+)*', r'\1', text)  # without lines, which move
    return '\n'.join(line if len(line) <= 240 else line[:237] + '...' for line in text.split('\n'))


def version(compiler):
    return subprocess.run([compiler, '--version'], stdout=subprocess.PIPE, text=True).stdout.split('\n')[0]


def page(results, compilers):
    text = PAGE_OPENING
    for compiler in compilers:
        text += f'* `{compiler}`: {version(compiler)}\n'
    cases = sorted({case for case, *_ in results if field(case, 'page')}, key=lambda c: int(field(c, 'page')))
    for case in cases:
        text += f"\n## {field(case, 'page')}. {field(case, 'mistake')[0].upper()}{field(case, 'mistake')[1:]}\n\n```cpp\n{branch(case, 1)}\n```\n"
        for name, compiler, _, said in results:
            if name == case:
                text += f'\n`{compiler}`:\n\n```text\n{shortened(said)}\n```\n'
        text += f'\nWrite instead:\n\n```cpp\n{branch(case, 2)}\n```\n'
    return text


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument('--root', required=True, type=Path)
    parser.add_argument('compilers', nargs='+')
    parser.add_argument('--write-page', action='store_true')
    parser.add_argument('--check-page', action='store_true')
    options = parser.parse_args()
    root = options.root.resolve()
    cases = sorted(Path(__file__).resolve().parent.glob('*.cpp'))
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count() or 1) as pool:
        twins = {compiler: pool.submit(twins_compile, compiler, root, cases) for compiler in options.compilers}
        jobs = [pool.submit(check, compiler, root, case, twins[compiler]) for case in cases for compiler in options.compilers]
        results = [job.result() for job in jobs]
    bad = 0
    for case, compiler, problems, _ in results:
        for problem in problems:
            bad += 1
            print(f'{case.name} ({compiler}): {problem}')
    target = root / 'docs' / 'compiler-errors.md'
    text = page(results, options.compilers)
    if options.write_page:
        target.write_text(text)
    elif options.check_page:
        same_compilers = all(version(c) in target.read_text() for c in options.compilers)
        if same_compilers and target.read_text() != text:
            bad += 1
            print(f'{target} is not what the compilers say; run with --write-page')
        elif not same_compilers:
            print('the page was written with other compilers; not compared')
    print(f'{len(cases)} mistakes, {len(options.compilers)} compilers, {bad} problems')
    return 1 if bad or not cases else 0


if __name__ == '__main__':
    sys.exit(main())
