#!/usr/bin/env python3
# SPDX-License-Identifier: BSL-1.0
"""Write what an editor and mypy know of the package: each formula as a typed function, from formulas.json.

    stubs.py            writes tankwright/__init__.pyi, types.pyi and one stub for each folder of formulas
    stubs.py --check    says which of the committed stubs does not fit

The formulas are made when they are asked for (`calculations.py`), so nothing of them can be read in the sources.
"""
import builtins
import json
import keyword
import re
import sys
import textwrap
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
sys.path.insert(0, str(HERE))
import tankwright  # noqa: E402  (the library is not loaded)
from tankwright.calculations import argument_of  # noqa: E402

PACKAGE = HERE / 'tankwright'
HEAD = '# SPDX-License-Identifier: BSL-1.0\n# Written by examples/python/stubs.py. Do not edit.\n'
WIDTH = 120

#: What a TypedDict written as a class, or the classes of results, cannot have as names.
RESERVED = {'Quantity', 'Result', *keyword.kwlist, *dir(builtins)}
#: What every result has already.
OF_RESULT = {'value', 'formula', 'arguments', 'cautions', 'source'}

ALIASES = '''
class AmountInUnit(TypedDict):
    """A number in a unit: `{"value": 24, "unit": "degC"}`."""
    value: float
    unit: NotRequired[str]
    quantity: NotRequired[str]

class Band(TypedDict):
    """From where to where a number may lie."""
    low: Amount
    central: Amount
    high: Amount
    unit: NotRequired[str]
    reason: NotRequired[str]

#: A text with its unit ("2150 L"), the name of a constant, a number in SI, or a number of an answer.
Amount: TypeAlias = Union[Quantity, str, float, AmountInUnit]
#: The same, and a band.
Estimate: TypeAlias = Union[Amount, Band]

_T = TypeVar("_T")

class Single(Result, Generic[_T]):
    """A result that is one thing and no quantity."""
    value: _T
'''


def units_by_quantity(listed):
    """The names and symbols that can stand behind a field, by quantity: what tw_keys says of them."""
    table = (ROOT / 'include/tankwright/core/unit_table.hpp').read_text()
    more = (ROOT / 'examples/c_library/keys_json.cpp').read_text()
    names = {(q, symbol): name for q, name, symbol in re.findall(r'ROW\((\w+),\s*(\w+),\s*"([^"]+)"', table)}
    names.update({(q, symbol): name for q, name, symbol in re.findall(r'\{"(\w+)", "(\w+)", "([^"]+)"\}', more)})
    found = {}
    for quantity, units in listed['units'].items():
        of = 'pressure' if quantity in ('gauge_pressure', 'absolute_pressure') else quantity
        for unit in units:
            name = names.get((of, unit['unit']))
            if name:
                found.setdefault(quantity, []).extend(n for n in (name, unit['unit']) if n.isidentifier())
    return {quantity: list(dict.fromkeys(all_of)) for quantity, all_of in found.items()}


def short(name):
    return name.rpartition('.')[2]


def commented(text, indent):
    """A sentence as comment lines."""
    return [indent + line for line in textwrap.wrap(text, WIDTH - len(indent), initial_indent='#: ',
                                                    subsequent_indent='#: ')]


def docstring(parts, indent):
    """Paragraphs as a docstring."""
    lines = []
    for part in parts:
        clean = re.sub(r'\s+', ' ', part).strip().replace('\\', '\\\\').replace('"""', "'''")
        if lines and clean:
            lines.append('')
        lines += textwrap.wrap(clean, WIDTH - len(indent) - 6, break_on_hyphens=False)
    if not lines:
        return []
    if lines[-1].endswith('"'):
        lines[-1] += ' '
    lines[0] = '"""' + lines[0]
    if len(lines) == 1:
        return [indent + lines[0] + '"""']
    return [(indent + line).rstrip() for line in lines] + [indent + '"""']


class Stubs:
    def __init__(self, listed):
        self.listed = listed
        self.types = listed['types']
        self.units = units_by_quantity(listed)
        shorts = [short(label) for label in self.types]
        self.names = {}
        for label in self.types:
            parts = label.split('.')
            named = parts if shorts.count(parts[-1]) > 1 else parts[-1:]
            self.names[label] = ''.join(word.capitalize() for part in named for word in part.split('_'))
        self.makers = {}
        for row in listed['formulas']:
            if row['result']['kind'] in ('fields', 'value'):
                names = (row['name'], row['function'].replace('tankwright::', '').replace('::', '.'))
                for name in names:
                    self.makers.setdefault(row['result']['type'], {}).update({short(name): row, name: row})
        self.wanted = []  # definitions still to be written
        self.done = {}

    # ---- names that are defined when they are used ----

    def ask(self, what, label):
        name = self.names[label] + {'given': 'Given', 'made': 'Made', 'parts': 'Parts', 'result': '', 'word': '',
                                    'band': 'Band'}[what]
        if name not in self.done:
            self.done[name] = None
            self.wanted.append((what, label, name))
        return name

    def one_number(self, label):
        """A value that comes back as one quantity."""
        shows = self.types[label].get('shows', [])
        return len(shows) == 1 and shows[0]['kind'] == 'quantity'

    def given(self, of):
        """The type of an argument."""
        kind = of['kind']
        plain = {'quantity': 'Amount', 'integer': 'int', 'flag': 'bool', 'text': 'str', 'caution': 'str'}
        if kind in plain:
            return plain[kind]
        if kind == 'word':
            return self.ask('word', of['type'])
        if kind == 'list':
            return f'Sequence[{self.given(of["of"])}]'
        if kind == 'optional':
            return f'Optional[{self.given(of["of"])}]'
        if kind == 'estimate':
            inner = self.given(of['of'])
            return 'Estimate' if inner == 'Amount' else f'Union[{inner}, Band]'
        if kind == 'one_of':
            return 'Union[' + ', '.join(self.option(o) for o in of['options']) + ']'
        known = self.types[of['type']]
        ways = [] if kind == 'value' and 'as' in known else [self.ask('given', of['type'])]
        if kind == 'value' and 'as' in known:
            ways = [self.given(known['as'])]
        if kind == 'value' and not known.get('ways', True):
            ways = []  # only a formula makes it
        for way in known.get('ways', ()):  # the ways of what names none
            if way['name'] == 'list' or (way['kind'] == 'quantity' and self.names_none(known['ways'])):
                ways.append(self.given(way))
        if of['type'] in self.makers:
            ways += [self.ask('made', of['type']), self.ask('result', of['type'])] if not (
                kind == 'value' and self.one_number(of['type'])) else [self.ask('made', of['type'])]
        if known.get('constants') and 'as' not in known:
            ways.append('Literal[' + ', '.join(json.dumps(c) for c in known['constants']) + ']')
        return ways[0] if len(ways) == 1 else 'Union[' + ', '.join(ways) + ']'

    @staticmethod
    def names_none(ways):
        """Whether a number alone says which way it is: the other ways are lists."""
        return sum(w['kind'] == 'quantity' for w in ways) == 1

    def option(self, of):
        """One of several: an object that names it."""
        name = short(of['type'])
        mine = ''.join(word.capitalize() for word in of['type'].replace('.', '_').split('_')) + 'Option'
        if mine not in self.done:
            self.done[mine] = [f'{mine} = TypedDict("{mine}", {{"{name}": {self.given(of)}}})']
        return mine

    def returned(self, of, top=False):
        """The type of a result, or of a part of one."""
        kind = of['kind']
        if kind == 'quantity':
            return 'Quantity'
        if kind == 'estimate':
            inner = of['of']
            if inner['kind'] == 'quantity' or (inner['kind'] == 'value' and self.one_number(inner['type'])):
                return 'Quantity'
            return self.ask('band', inner['type'])
        if kind == 'value' and self.one_number(of['type']):
            return 'Quantity'
        if kind in ('fields', 'value'):
            return self.ask('result' if top else 'parts', of['type'])
        plain = {'integer': 'int', 'flag': 'bool', 'text': 'str', 'caution': 'str'}
        if kind == 'optional' and top:
            return f'Union[{self.returned(of["of"], True)}, Single[None]]'
        if kind == 'optional':
            inside = f'Optional[{self.returned(of["of"])}]'
        elif kind == 'list':
            inside = f'List[{self.returned(of["of"])}]'
        elif kind == 'word':
            inside = self.ask('word', of['type'])
        elif kind == 'one_of':
            inside = 'Dict[str, Any]'
        else:
            inside = plain[kind]
        return f'Single[{inside}]' if top else inside

    # ---- definitions ----

    def parts_of(self, label):
        known = self.types[label]
        return known['fields'] if known['kind'] == 'fields' else known['shows']

    def define(self, what, label, name):
        known = self.types[label]
        sentence = [known.get('sentence', '')]
        if what == 'word':
            said = '; '.join(w['word'] + (': ' + w['sentence'] if w.get('sentence') else '') for w in known['words'])
            words = [json.dumps(w['word']) for w in known['words']]
            return commented(f'{known["sentence"]} {said}', '') + wrapped(f'{name}: TypeAlias = Literal[', words, ']')
        if what == 'made':
            makers = {f'"{maker}"': 'Mapping[str, Any]' for maker in self.makers[label]}
            return [*commented('The formula that makes it, with its arguments: '
                               '{"seawater": {"practical_salinity": 35, ...}}.', ''),
                    *wrapped(f'{name} = TypedDict("{name}", {{', [f'{k}: {v}' for k, v in makers.items()],
                             '}, total=False)')]
        if what == 'band':
            inner = self.ask('parts', label)
            return [f'class {name}(Result):',
                    *(f'    {end}: {inner}' for end in ('low', 'central', 'high')), '    reason: str']
        if what == 'result':
            value = self.ask('parts', label)
            rows = [(p['name'], self.returned(p), p.get('sentence', '')) for p in self.parts_of(label)
                    if p['name'] not in OF_RESULT and not keyword.iskeyword(p['name'])]
            return [f'class {name}(Result):', *docstring(sentence, '    '), f'    value: {value}',
                    *(line for n, t, s in rows for line in (*commented(s, '    '), f'    {n}: {t}'))]
        if what == 'parts':
            return typed_dict(name, sentence, [(p['name'], self.returned(p), p.get('sentence', ''), True)
                                               for p in self.parts_of(label)])
        if known['kind'] == 'fields':
            return typed_dict(name, sentence, [(f['name'], self.given_or_none(f), said_of(f), f['required'])
                                               for f in known['fields']])
        if 'parts' in known:
            return typed_dict(name, sentence, [(p['name'], self.given(p), '', True) for p in known['parts']])
        return typed_dict(name, [*sentence, 'One of these.'],
                          [(w['name'], self.given(w), '', False) for w in known['ways']])

    def given_or_none(self, field):
        """What is left out, or None, keeps its default."""
        told = self.given(field)
        return told if field['required'] or told.startswith('Optional[') else f'Optional[{told}]'

    # ---- formulas ----

    def function(self, name, row, overload):
        indent = '    '
        taken = {f['name'] for f in row['fields']}
        lines, units, needed = [], {}, []
        for f in row['fields']:
            own = argument_of(f['name'])
            with_unit = self.units.get(f.get('quantity', ''), []) if f['kind'] == 'quantity' else []
            for unit in with_unit:
                units.setdefault(f'{f["name"]}_{unit}', None)
            must = f['required']
            if must:
                needed.append(own)
            # With its unit in its name it is another argument, so it cannot be asked for under this one.
            default = '' if must and not with_unit else ' = ...'
            lines.append(f'{indent}{own}: {qualified(self.given_or_none(f))}{default},')
        if row['extrapolates']:
            lines.append(f'{indent}extrapolate: bool = ...,')
        also = [f'{unit}: float = ...,' for unit in units if unit not in taken]
        lines += textwrap.wrap(' '.join(a.replace(' ', '\0') for a in also), WIDTH, initial_indent=indent,
                               subsequent_indent=indent, break_long_words=False, break_on_hyphens=False)
        said = [row['sentence']]
        if row['fields']:
            said.append('Takes ' + '; '.join(
                argument_of(f['name']) + told(f) for f in row['fields']) + '.')
        if needed:
            said.append('Needs ' + ', '.join(needed) + '.')
        said.append('Gives ' + row['result']['sentence'] if row['result'].get('sentence') else '')
        said += ['Caution: ' + c for c in row.get('cautions', ())]
        head = [f'def {name}(', f'{indent}*,', *lines] if lines else [f'def {name}(']
        return [*(['@overload'] if overload else []), *(line.replace('\0', ' ') for line in head),
                f') -> {qualified(self.returned(row["result"], True))}:', *docstring(said, indent), f'{indent}...']

    def folder(self, folder):
        """The stub of a folder, and the names in it."""
        rows = [r for r in self.listed['formulas'] if r['folder'] == folder]
        by_name = {}
        for row in rows:
            by_name.setdefault(short(row['function'].replace('::', '.')), []).append(row)
        common = list(by_name)
        for row in rows:
            if short(row['name']) not in common:
                by_name.setdefault(short(row['name']), []).append(row)
        lines = []
        for name, own in by_name.items():
            for row in sorted(own, key=lambda r: len(r['fields'])):  # what takes less stands first
                lines += ['', *self.function(name, row, len(own) > 1)]
        return lines, list(by_name)

    def files(self):
        folders = list(dict.fromkeys(r['folder'] for r in self.listed['formulas']))
        made, names = {}, {}
        for folder in folders:
            lines, names[folder] = self.folder(folder)
            text = '\n'.join(lines) + '\n'
            imports = 'import ' + ', '.join(w for w in ('List', 'Literal', 'Optional', 'Sequence', 'Union', 'overload')
                                            if re.search(rf'\b{w}\b', text))
            made[f'_{folder}.pyi'] = (f'{HEAD}"""The formulas of {folder}."""\nfrom typing {imports}\n\n'
                                      'from . import types as _t\nfrom .quantity import Quantity\n' + text)
        while self.wanted:
            what, label, name = self.wanted.pop(0)
            self.done[name] = self.define(what, label, name)
        body = [line for name in sorted(self.done) for line in ('', *self.done[name])]
        made['types.pyi'] = (
            f'{HEAD}"""What formulas are given and what they give, by name: for type checkers alone, so import it where\n'
            '`typing.TYPE_CHECKING` is true."""\n'
            'from typing import Any, Dict, Generic, List, Literal, Mapping, Optional, Sequence, TypeVar, Union\n\n'
            'from typing_extensions import NotRequired, TypeAlias, TypedDict\n\n'
            'from .calculations import Result\nfrom .quantity import Quantity\n' + ALIASES + '\n'.join(body) + '\n')
        made['__init__.pyi'] = self.package(folders, names)
        return made

    @staticmethod
    def package(folders, names):
        lines = [HEAD + '"""Engineering calculations for people who build large saltwater displays by hand."""']
        for module, own in tankwright._NAMES.items():
            lines += wrapped(f'from .{module} import (', [f'{n} as {n}' for n in own], ')')
        lines += [f'from . import _{folder} as {folder}' for folder in folders]
        taken = {*tankwright.__all__, *folders}
        for folder in folders:
            # As calculations.by_attribute: a name that is in one folder alone.
            own = [n for n in names[folder] if n not in taken and sum(n in other for other in names.values()) == 1]
            lines += wrapped(f'from ._{folder} import (', [f'{n} as {n}' for n in own], ')')
        lines += ['', *wrapped('__all__ = [', [repr(n) for n in tankwright.__all__], ']')]
        return '\n'.join(lines) + '\n'


def told(field):
    """Unit and sentence of a field, for the docstring."""
    unit = f' [{field["unit"]}]' if field.get('unit') else ''
    sentence = field.get('sentence', '').replace('[1] ', '').strip().rstrip('.;')
    return unit + (f' ({sentence})' if sentence and sentence != '[1]' else '')


def said_of(field):
    unit = f'[{field["unit"]}] ' if field.get('unit') else ''
    sentence = field.get('sentence', '')
    return (sentence if sentence.startswith('[') else unit + sentence).strip()


def qualified(text):
    """A type as the stub of a folder sees it: all but the words of typing and Quantity is in types.pyi."""
    here = {'Quantity', 'Optional', 'Union', 'Sequence', 'List', 'Literal', 'None', 'int', 'bool', 'str', 'float'}
    parts = re.split(r'("(?:[^"\\]|\\.)*")', text)
    return ''.join(p if p.startswith('"') else re.sub(r'\b[A-Za-z]\w*\b', lambda m: m[0] if m[0] in here else '_t.' + m[0], p)
                   for p in parts)


def wrapped(head, items, tail):
    """A list on one line, or over several."""
    one = head + ', '.join(items) + tail
    if len(one) <= WIDTH:
        return [one]
    text = ', '.join(item.replace(' ', '\0') for item in items)
    lines = textwrap.wrap(text, WIDTH, initial_indent='    ', subsequent_indent='    ', break_long_words=False,
                          break_on_hyphens=False)
    return [head, *(line.replace('\0', ' ') for line in lines), tail]


def typed_dict(name, sentences, rows):
    """A TypedDict; written as a call where a name of it cannot be an attribute."""
    if any(n in RESERVED or n in dir(builtins) for n, _, _, _ in rows):
        items = [f'"{n}": {t if must else f"NotRequired[{t}]"}' for n, t, _, must in rows]
        return [*commented(' '.join(s for s in sentences if s), ''),
                *wrapped(f'{name} = TypedDict("{name}", {{', items, '})')]
    lines = [f'class {name}(TypedDict):', *docstring(sentences, '    ')]
    for n, t, sentence, must in rows:
        lines += [*commented(sentence, '    '), f'    {n}: {t if must else f"NotRequired[{t}]"}']
    return lines if len(lines) > 1 else [*lines, '    ...']


def main(arguments):
    listed = json.loads((ROOT / 'examples/formulas/formulas.json').read_text())
    files = Stubs(listed).files()
    bad = [name for name, text in files.items()
           if not (PACKAGE / name).exists() or (PACKAGE / name).read_text() != text]
    bad += [p.name for p in PACKAGE.glob('*.pyi') if p.name not in files]
    if '--check' in arguments:
        for name in bad:
            print(f'examples/python/tankwright/{name} does not fit formulas.json: run examples/python/stubs.py')
        return 1 if bad else 0
    for name in bad:
        if name in files:
            (PACKAGE / name).write_text(files[name])
        else:
            (PACKAGE / name).unlink()
    return 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1:]))
