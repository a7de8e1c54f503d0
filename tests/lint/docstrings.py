# SPDX-License-Identifier: BSL-1.0
"""Every public function of the folders must have a complete docstring (DEVELOPERS.md says which lines), every plain number
its unit, every header its licence and its opening comment, and no header may be longer than 600 lines.
Usage: docstrings.py ROOT"""
import re
import sys
from pathlib import Path

import declarations
from headers import all_headers, public_functions


# Makers and readers, documented in groups.
MAKERS = ('temperature.hpp', 'thin_types.hpp', 'units.hpp')


def misnamed(text, public):
    """Errors name the function that was called: names in the text of a header that no public function has."""
    for name in re.findall(r'"(tankwright::[a-z0-9_:]+)"', text):
        *_, owner, last = name.split('::')  # a class, or a member of one: tankwright::numerics::simulated::quantile
        if name not in public and not re.search(rf'\b(?:class|struct) (?:{owner}|{last})\b', text):
            yield name


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


def numbers_without_unit(world):
    """The unit of most numbers is in their type. A plain double or integer carries it in its comment: `[m]`, `[1]`."""
    def lacks(declared, comment):
        return declarations.is_plain_number(declared) and not declarations.unit_in(comment)

    for function in world.functions:
        doc = declarations.tags(function.doc)
        for parameter in function.parameters:
            if lacks(parameter.type, doc['param'].get(parameter.name, '')):
                yield function.header, function.line, f'{function.name}: @param {parameter.name} without unit'
        if lacks(function.result, doc.get('return', '')):
            yield function.header, function.line, f'{function.name}: @return without unit'
    for record in world.records.values():
        public = record.header.parent.name in declarations.FOLDERS and not re.search(r'\b(detail|kernel)::', record.name)
        for field in record.fields if public else ():
            if lacks(field.type, field.comment):
                yield record.header, field.line, f'{record.name}: {field.name} without unit'


def main(root):
    bad = checked = 0
    public = {f.name for header in all_headers(root) for f in public_functions(header)}
    for header in sorted((Path(root) / 'include').rglob('*.hpp')):
        text = header.read_text()
        complaints = [f'an error names {name}, which is no public function' for name in misnamed(text, public)]
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
        for function in public_functions(header):
            if header.name in MAKERS:
                continue
            checked += 1
            for problem in problems_of(function):
                print(f'{header}:{function.line}: {function.name}: {problem}')
                bad += 1
    for header, line, problem in numbers_without_unit(declarations.read(root)):
        print(f'{header}:{line}: {problem}, such as [m] or [1]')
        bad += 1
    print(f'{checked} public functions checked, {bad} problems')
    return 1 if bad or not checked else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1]))
