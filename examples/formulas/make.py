#!/usr/bin/env python3
# SPDX-License-Identifier: BSL-1.0
"""Writes the list of formulas and the glue that calls them by name, from the public headers.

    make.py           writes formulas.json and generated/, prints the count by folder and what is not there, with the reason
    make.py --check   says whether the committed files fit the headers

The headers are read by the scanner of the docstring lint (tests/lint/declarations.py); no compiler is needed. The C++
compiler then checks every name and type that is written here.
"""
import json
import re
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
sys.path.insert(0, str(ROOT / 'tests' / 'lint'))
import declarations  # noqa: E402
from model import Model, Refused, count_of, is_plain  # noqa: E402
from numbers_of_text import Evaluator  # noqa: E402

FOLDERS = declarations.FOLDERS
LICENCE = (
    '// SPDX-License-Identifier: BSL-1.0\n// Written by examples/formulas/make.py from the headers. Do not edit.\n'
)


def cpp(text):
    return json.dumps(text, ensure_ascii=True)


class Formula:
    """A public function with its fields as a front end sees them."""

    def __init__(self, model, function):
        self.function = function
        self.folder = function.header.parent.name
        self.doc = declarations.tags(function.doc)
        self.scope = function.name.rsplit('::', 1)[0]
        self.short = function.name.rsplit('::', 1)[1]
        self.policy = any(p.type == 'range_policy' for p in function.parameters)
        self.arguments = []
        for p in function.parameters:
            if p.type == 'range_policy':
                continue
            try:
                kind = model.resolve(p.type, self.scope)
                model.need_read(kind)
            except Refused as why:
                raise Refused(f'{p.name}: {why}')
            self.arguments.append((p, kind))
        try:
            self.result = model.resolve(function.result, self.scope)
            model.need_write(self.result)
        except Refused as why:
            raise Refused(f'result: {why}')
        # One struct: its fields are the fields of the formula.
        self.flat = len(self.arguments) == 1 and self.arguments[0][1].kind == 'record'
        names = [self.field_name(p, kind) for p, kind in self.arguments]
        if len(set(names)) != len(names):
            names = [p.name for p, _ in self.arguments]
        self.names = names

    @staticmethod
    def field_name(parameter, kind):
        """A symbol of one or two letters says too little: the field is called by what it is."""
        if len(parameter.name) > 2 and parameter.name not in ('rho',):
            return parameter.name
        named = kind.of if kind.kind == 'estimate' else kind
        if named.kind in ('quantity', 'class', 'record', 'enum') and named.name != 'number':
            return named.name.split('::')[-1]
        return parameter.name

    def fields(self):
        """(name, kind, required, Field) in order."""
        if self.flat:
            return [field for field in self.arguments[0][1].fields if field[1].kind != 'caution']
        return [(name, kind, p.default is None, p) for name, (p, kind) in zip(self.names, self.arguments)]


def name_overloads(formulas):
    """Each overload has a name of its own: with what it takes that not all of them take."""
    groups = {}
    for f in formulas:
        groups.setdefault(f.function.name, []).append(f)
    for group in groups.values():
        sets = [[n for n, _, _, _ in f.fields()] for f in group]
        common = set(sets[0]).intersection(*sets[1:])
        for f, names in zip(group, sets):
            own = [n for n in names if n not in common]
            if f.flat and own:
                own = [f.arguments[0][1].name.split('::')[-1]]
            f.name = f'{f.folder}.{f.short}'
            if len(group) > 1 and own:
                f.name += '_with_' + '_and_'.join(own)
        for name in {f.name for f in group if sum(g.name == f.name for g in group) > 1}:
            for f in group:
                if f.name == name:  # the same fields of different types
                    of = f.fields()[0][1].of or f.fields()[0][1]
                    f.name += '_with_' + of.name.split('::')[-1]
        if len({f.name for f in group}) != len(group):
            raise SystemExit(f'overloads that no field tells apart: {[f.name for f in group]}')


def reason_against(function):
    if function.template:
        return 'takes a function (a template)'
    types = [p.type for p in function.parameters]
    if function.result == 'void' and any('span' in t for t in types):
        return 'a batch over spans: call the formula for one value'
    if any('initializer_list' in t for t in types):
        return 'takes a list written in C++'
    if re.match(r'in_', function.name.rsplit('::', 1)[1]):
        return 'reads a thin type, whose number the result has'
    return None


# ---- the list -------------------------------------------------------------------------------------------------------


def field_data(model, values, name, kind, required, field, sentence, scope):
    data = {'name': name, **model.describe(kind, sentence), 'required': required}
    if sentence:
        data['sentence'] = sentence
    if field.default is not None:
        default = values.default_of(field.default, kind, scope)
        if default is not None or kind.kind == 'optional':
            data['default'] = default
        else:
            data['default_as_written'] = field.default
    return data


def list_of(model, values, formulas, refused):
    listed = []
    values.limits_of_types(formulas)
    for f in formulas:
        fields = []
        for name, kind, required, field in f.fields():
            sentence = field.comment if f.flat else f.doc['param'].get(field.name, '')
            scope = f.arguments[0][1].scope if f.flat else f.scope
            data = field_data(model, values, name, kind, required, field, sentence, scope)
            limit = values.limits_for(f, name if f.flat else field.name)
            if limit:
                data['limits'] = limit
            if not f.flat and name != field.name:
                data['symbol'] = field.name
            fields.append(data)
        entry = {
            'name': f.name,
            'folder': f.folder,
            'function': 'tankwright::' + f.function.name,
            'header': str(f.function.header.relative_to(ROOT / 'include')),
            'sentence': f.doc[''],
            'formula': f.doc['formula'],
            'fields': fields,
            'extrapolates': f.policy,
            'arguments': f.doc['param'],
            'result': {**model.describe(f.result, f.doc.get('return', '')), 'sentence': f.doc.get('return', '')},
            'throws': f.doc.get('throws', ''),
            'accuracy': f.doc.get('accuracy', ''),
            'source': f.doc.get('source', ''),
        }
        if f.flat:
            entry['fields_of'] = f.arguments[0][1].label
        cautions = values.cautions_of(f)
        if cautions:
            entry['cautions'] = cautions
        if plain_numbers(f):
            entry['numbers'] = {'in': sum(count_of(k) for _, k, _, _ in f.fields()), 'out': count_of(f.result)}
        listed.append(entry)
    return {
        'formulas': listed,
        'types': model.types(values, field_data),
        'units': model.units(),
        'constants': values.named_numbers(),
        'not_here': [{'function': 'tankwright::' + n, 'header': h, 'reason': r} for n, h, r in refused],
    }


def plain_numbers(f):
    return (
        bool(f.fields())
        and all(is_plain(k) for _, k, _, _ in f.fields())
        and is_plain(f.result)
        and count_of(f.result) > 0
    )


# ---- the glue -------------------------------------------------------------------------------------------------------


def formula_glue(f, number):
    """The functions behind one row of the table."""
    using = f'using namespace ::tankwright;\n    using namespace ::tankwright::{f.scope};'
    call = '::tankwright::' + f.function.name
    field_names = [n for n, _, _, _ in f.fields()]
    lines = [f'// {f.name}']
    if field_names:
        lines.append(f'constexpr std::string_view fields_{number}[] = {{{", ".join(cpp(n) for n in field_names)}}};')
    required = [n for n, _, r, _ in f.fields() if r]
    if required:
        lines.append(f'constexpr std::string_view required_{number}[] = {{{", ".join(cpp(n) for n in required)}}};')
    lines.append(f'auto call_{number}([[maybe_unused]] const given& in) -> std::remove_cvref_t<{result_type(f)}> {{')
    passed = []
    if f.flat:
        passed.append(f'io<{f.arguments[0][1].cpp}>::fields(in)')
    else:
        lines.append(f'  in.only({"fields_" + str(number) if field_names else "{}"});')
        for i, (name, (p, kind)) in enumerate(zip(f.names, f.arguments)):
            if p.default is None:
                lines.append(f'  const auto a{i} = must<{kind.cpp}>(in, {cpp(name)});')
            else:
                lines.append(
                    f'  const auto a{i} = may_or<{kind.cpp}>(in, {cpp(name)}, [] {{\n    {using}\n    return {default_text(p.default, kind)};\n  }});'
                )
            passed.append(f'a{i}')
    if f.policy:
        lines.append('  const auto policy = in.policy();')
        passed.append('policy')
    lines.append(f'  return {call}({", ".join(passed)});')
    lines.append('}')
    plain = plain_numbers(f)
    if plain:
        lines.append(
            f'void numbers_{number}(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {{'
        )
        passed = []
        for i, (p, kind) in enumerate(f.arguments):
            lines.append(f'  const auto a{i} = io<{kind.cpp}>::take(in);')
            passed.append(f'a{i}')
        if f.policy:
            passed.append('policy')
        lines.append(f'  io<{f.result.cpp}>::put({call}({", ".join(passed)}), out);')
        lines.append('}')
        lines.append(f'void defaults_{number}(double* at) {{')
        for i, (p, kind) in enumerate(f.arguments):
            if p.default is not None:
                lines.append(
                    f'  const auto a{i} = [] {{\n    {using}\n    return {default_text(p.default, kind)};\n  }}();'
                )
                lines.append(f'  io<{kind.cpp}>::put(a{i}, at);')
            elif kind.kind == 'record':
                lines.append(f'  io<{kind.cpp}>::defaults(at);')
            else:
                lines.append(f'  not_given(at, {count_of(kind)});')
        lines.append('}')
    return '\n'.join(lines) + '\n'


def default_text(text, kind):
    if text.startswith('{'):
        return f'{kind.cpp}{text}'
    return f'{kind.cpp}({text})'


def result_type(f):
    return f.result.cpp


def row_of(f, number):
    has = [n for n, _, _, _ in f.fields()]
    required = any(r for _, _, r, _ in f.fields())
    plain = plain_numbers(f)
    count_in = sum(count_of(k) for _, k, _, _ in f.fields()) if plain else 0
    count_out = count_of(f.result) if plain else 0
    key = f'&key_of_type<{f.result.cpp}>' if f.result.kind in ('record', 'class') else 'nullptr'
    make = f'&make_with<&call_{number}>' if f.result.kind in ('record', 'class') else 'nullptr'
    return (
        '  {'
        + ', '.join(
            [
                cpp(f.name),
                cpp('tankwright::' + f.function.name),
                cpp(f.doc.get('source', '')),
                f'required_{number}' if required else '{}',
                f'fields_{number}' if has else '{}',
                'true' if f.policy else 'false',
                key,
                f'&answer_with<&call_{number}>',
                make,
                f'{{{"true" if plain else "false"}, {count_in}, {count_out}}}',
                f'&numbers_{number}' if plain else 'nullptr',
                f'&defaults_{number}' if plain else 'nullptr',
            ]
        )
        + '},'
    )


def folder_source(model, values, folder, formulas):
    mine = [f for f in formulas if f.folder == folder]
    text = LICENCE + f'#include "{folder}.hpp"\n\nnamespace tankwright_formulas {{\n\n'
    text += ''.join(model.definition(t) for t in model.used_in(folder))
    text += 'namespace {\n\n'
    text += '\n'.join(formula_glue(f, i) for i, f in enumerate(mine))
    text += (
        '\nconst row rows[] = {\n' + '\n'.join(row_of(f, i) for i, f in enumerate(mine)) + '\n};\n\n}  // namespace\n\n'
    )
    text += f'std::span<const row> {folder}_rows() {{ return rows; }}\n\n'
    text += f'std::span<const constant> {folder}_constants() {{\n  static const constant all[] = {{\n'
    text += ''.join(
        f'    named({cpp(c.name.split("::")[-1])}, ::tankwright::{c.name}),\n' for c in values.numbers_in(folder)
    )
    text += '  };\n  return all;\n}\n\n}  // namespace tankwright_formulas\n'
    return text


def folder_header(model, folder):
    text = LICENCE + '#pragma once\n\n#include "../glue.hpp"\n'
    for other in FOLDERS:
        if folder != 'water' and other == 'water':
            text += '#include "water.hpp"\n'
    text += ''.join(
        f'#include <tankwright/{folder}/{h}>\n'
        for h in sorted(p.name for p in (ROOT / 'include/tankwright' / folder).glob('*.hpp'))
    )
    text += '\nnamespace tankwright_formulas {\n\n'
    text += ''.join(model.declaration(t) for t in model.used_in(folder))
    return text + '}  // namespace tankwright_formulas\n'


def as_text(data):
    """JSON with a line for each formula, type and constant, so that a change shows as what it is."""
    parts = []
    for key, all_of in data.items():
        rows = all_of.items() if isinstance(all_of, dict) else ((None, one) for one in all_of)
        lines = [(f'{json.dumps(name)}: ' if name else '') + json.dumps(one, ensure_ascii=True) for name, one in rows]
        left, right = '{}' if isinstance(all_of, dict) else '[]'
        parts.append(f'{json.dumps(key)}: {left}\n' + ',\n'.join(lines) + f'\n{right}')
    return '{\n' + ',\n'.join(parts) + '\n}\n'


# ---- main -----------------------------------------------------------------------------------------------------------


def everything():
    world = declarations.read(ROOT)
    model = Model(world)
    formulas, refused = [], []
    # A class that nothing but a formula makes (a shape, a curve of a pump) can be given as that formula.
    model.made = {
        model.resolve(f.result, f.name.rsplit('::', 1)[0]).name
        for f in world.functions
        if model.can_resolve(f.result, f.name.rsplit('::', 1)[0])
    }
    for function in world.functions:
        why = reason_against(function)
        if not why:
            try:
                formulas.append(Formula(model, function))
                continue
            except Refused as refusal:
                why = str(refusal)
        refused.append((function.name, str(function.header.relative_to(ROOT / 'include')), why))
    name_overloads(formulas)
    values = Evaluator(world, model)
    files = {'formulas.json': as_text(list_of(model, values, formulas, refused))}
    for folder in FOLDERS:
        files[f'generated/{folder}.hpp'] = folder_header(model, folder)
        files[f'generated/{folder}.cpp'] = folder_source(model, values, folder, formulas)
    return world, formulas, refused, files


def main(arguments):
    world, formulas, refused, files = everything()
    if '--check' in arguments:
        bad = [name for name, text in files.items() if not (HERE / name).exists() or (HERE / name).read_text() != text]
        bad += [f'generated/{p.name}' for p in (HERE / 'generated').iterdir() if f'generated/{p.name}' not in files]
        for name in bad:
            print(f'examples/formulas/{name} does not fit the headers: run examples/formulas/make.py')
    else:
        bad = []
        for name, text in files.items():
            if not (HERE / name).exists() or (HERE / name).read_text() != text:
                (HERE / name).write_text(text)
    for name, header, why in refused:
        print(f'not here: {name} ({header}): {why}')
    total = 0
    for folder in FOLDERS:
        here = sum(f.folder == folder for f in formulas)
        all_of = here + sum(n.startswith(folder + '::') for n, _, _ in refused)
        total += all_of
        print(f'{folder}: {here} of {all_of} public functions')
    share = len(formulas) / total
    print(
        f'{len(formulas)} of {total} ({share:.1%}); {sum(plain_numbers(f) for f in formulas)} of them by plain numbers too'
    )
    if share < 0.9:
        print('fewer than 90 % are there')
        return 1
    return 1 if bad else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1:]))
