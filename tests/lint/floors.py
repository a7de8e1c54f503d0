# SPDX-License-Identifier: BSL-1.0
"""Holds the floors of the library apart. Usage: floors.py ROOT

* A header includes headers of its own floor and of floors below it, never of a neighbour's or of one above.
* A header opens the namespace of its own folder only (`core` also `tankwright` itself).
* No floor uses another floor's `detail`, neither its names nor its headers. What a neighbour needs is public, or lies
  further down; arithmetic kernels that floors above call are in `namespace kernel`.
"""
import re
import sys
from pathlib import Path

# From the ground up. Neighbours on one line do not include each other.
FLOORS = (('core',), ('numerics', 'text'), ('water',), ('life', 'room', 'plumbing', 'vessel'), ('plan',), ('decisions',),
          ('exchange',))
HEIGHT = {folder: height for height, folders in enumerate(FLOORS) for folder in folders}


def floor_of(path):
    """The folder of a header, given below include/tankwright; an umbrella belongs to the folder it is named after."""
    return path.parts[0] if len(path.parts) > 1 else path.stem


def problems_of(path, text):
    """(line, what is wrong) of one header; `path` is relative to include/tankwright."""
    own = floor_of(path)
    if own not in HEIGHT:
        if len(path.parts) > 1:
            yield 1, f'{own} is not one of the floors'
        return  # tankwright.hpp and version.hpp
    others = '|'.join(folder for folder in HEIGHT if folder != own)
    for number, line in enumerate(text.split('\n'), 1):
        code = line.split('//')[0]
        include = re.match(r'\s*#\s*include\s*[<"]tankwright/([^>"]+)[>"]', line)
        if include:
            there = Path(include.group(1))
            theirs = floor_of(there)
            if theirs == own:
                continue
            if theirs == 'version':
                continue
            if theirs not in HEIGHT:
                yield number, f'{own} includes {there}, which is above all floors'
            elif HEIGHT[theirs] == HEIGHT[own]:
                yield number, f'{own} includes {there} of its neighbour {theirs}'
            elif HEIGHT[theirs] > HEIGHT[own]:
                yield number, f'{own} includes {there} of {theirs}, which stands above it'
            elif 'detail' in there.parts:
                yield number, f'{own} includes {there}, which is private to {theirs}'
            continue
        for name in re.findall(rf'\b((?:{others})::detail(?:::\w+)*)', code):
            yield number, f'{own} uses {name}'
        namespace = re.match(r'(?:inline\s+)?namespace\s+([\w:]+)\s*\{', code)
        if namespace and namespace.group(1).startswith('tankwright'):
            parts = namespace.group(1).split('::')
            opened = parts[1] if len(parts) > 1 else 'core'
            if opened != own:
                yield number, f'{own} opens namespace {namespace.group(1)}'


def main(root):
    include = Path(root) / 'include' / 'tankwright'
    headers = sorted(p for p in include.rglob('*') if p.suffix in ('.hpp', '.ipp'))
    bad = 0
    for header in headers:
        for line, problem in problems_of(header.relative_to(include), header.read_text()):
            print(f'{header}:{line}: {problem}')
            bad += 1
    print(f'{len(headers)} headers, {bad} problems')
    return 1 if bad or not headers else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1]))
