# SPDX-License-Identifier: BSL-1.0
"""Every public function of the folders must have a complete docstring (DEVELOPERS.md says which lines), every header its
licence and its opening comment, and no header may be longer than 600 lines. Usage: docstrings.py ROOT"""
import re
import sys
from pathlib import Path

from headers import all_headers, public_functions


def problems_of(function):
    doc = '\n'.join(function.doc)
    if not doc:
        return ['no docstring']
    missing = []
    for name in function.parameters:
        if not re.search(rf'@param\s+{name}\b', doc):
            missing.append(f'no @param {name}')
    for name in re.findall(r'@param\s+(\w+)', doc):
        if name not in function.parameters:
            missing.append(f'@param {name} is not a parameter')
    if not function.returns_void and '@return' not in doc:
        missing.append('no @return')
    if not function.is_noexcept and '@throws' not in doc:
        missing.append('no @throws')
    missing += [f'no {tag}' for tag in ('@accuracy', '@source') if tag not in doc]
    return missing


def main(root):
    bad = checked = 0
    for header in sorted((Path(root) / 'include').rglob('*.hpp')):
        text = header.read_text()
        complaints = []
        if not text.startswith('// SPDX-License-Identifier: BSL-1.0\n/// @file\n/// '):
            complaints.append('must open with the licence line, /// @file and what question it answers')
        if text.count('\n') > 600:
            complaints.append(f"{text.count(chr(10))} lines; split by question (600 at most)")
        for line, content in enumerate(text.split('\n'), 1):
            if len(content) > 120:
                complaints.append(f'line {line} is {len(content)} characters long (120 at most)')
        for complaint in complaints:
            print(f'{header}: {complaint}')
        bad += len(complaints)
    for header in all_headers(root):
        if header.parent.name in ('core', 'tankwright'):
            continue  # makers, readers and types; documented in groups
        for function in public_functions(header):
            checked += 1
            for problem in problems_of(function):
                print(f'{header}:{function.line}: {function.name}: {problem}')
                bad += 1
    print(f'{checked} public functions checked, {bad} problems')
    return 1 if bad or not checked else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1]))
