# SPDX-License-Identifier: BSL-1.0
"""The types of the library as a front end sees them, and the glue that reads and writes each."""
import json
import re
from dataclasses import dataclass, field
from pathlib import Path

import declarations

QUANTITY_HEADERS = Path(__file__).resolve().parents[2] / 'include' / 'tankwright' / 'core'


class Refused(Exception):
    """Why something cannot be called by name."""


@dataclass
class Kind:
    kind: str  # quantity, integer, flag, text, enum, record, class, estimate, optional, list, variant, caution
    cpp: str  # the type, spelled from the global namespace
    name: str = ''  # quantity, or the type without tankwright::
    of: object = None  # what an estimate, an optional or a list is of
    options: list = field(default_factory=list)  # of a variant
    fields: list = field(default_factory=list)  # of a record: (name, Kind, required, declarations.Field)
    ways: list = field(default_factory=list)  # of a class: (way, C++ maker or '', [(Field, Kind)])
    readers: list = field(default_factory=list)  # of a class: (name, expression that reads {}, Kind)
    scope: str = ''
    source: object = None

    @property
    def label(self):
        return self.name.replace('::', '.')


def cpp(text):
    return json.dumps(text, ensure_ascii=True)


def is_number(kind):
    return kind.kind in ('quantity', 'integer', 'flag')


def is_plain(kind):
    """Whether a value is so many plain numbers."""
    if kind.kind in ('quantity', 'integer', 'flag', 'enum', 'caution'):
        return True
    if kind.kind == 'estimate':
        return is_plain(kind.of)
    if kind.kind == 'record':
        return bool(kind.fields) and all(is_plain(k) for _, k, _, _ in kind.fields)
    if kind.kind == 'class':
        return (
            bool(kind.ways)
            and len(kind.ways[0][2]) == 1
            and bool(kind.readers)
            and is_plain(kind.ways[0][2][0][1])
            and kind.readers[0][2].cpp == kind.ways[0][2][0][1].cpp
            and (len(kind.ways) == 1 or kind.ways[0][0] == kind.readers[0][0])
        )
    return False


def count_of(kind):
    if kind.kind == 'caution':
        return 0
    if kind.kind == 'estimate':
        return 3 * count_of(kind.of)
    if kind.kind == 'record':
        return sum(count_of(k) for _, k, _, _ in kind.fields)
    return 1


class Model:
    def __init__(self, world):
        self.world = world
        names = (QUANTITY_HEADERS / 'quantity_name.hpp').read_text()
        table = (QUANTITY_HEADERS / 'unit_table.hpp').read_text()
        self.rows = re.findall(r'ROW\((\w+),\s*(\w+),\s*"([^"]+)",\s*(.*?)\)\s*\\?\n', table)
        more = (QUANTITY_HEADERS.parent / 'text' / 'detail' / 'units.hpp').read_text()
        self.all_units = [(q, symbol, self.factor(f)) for q, _, symbol, f in self.rows]
        self.all_units += [
            (q, symbol, self.factor(f))
            for q, symbol, f in re.findall(r'^    \{"(\w+)", "([^"]+)", ([\d./ e+-]+)\},$', more, flags=re.M)
        ]
        self.thin = set(re.findall(r'std::is_same_v<Q, (\w+)>', names)) - {'double', 'quantity_type'}
        self.quantities = {row[0] for row in self.rows} | self.thin
        self.kinds = {}
        self.made = set()
        self.readable, self.writable = {}, {}

    @staticmethod
    def factor(text):
        """A factor of the unit table: a number, or a quotient of numbers."""
        first, *rest = (float(part) for part in text.split('/'))
        for divisor in rest:
            first /= divisor
        return first

    # ---- names ----

    def find(self, name, scope, *tables):
        """The full name of a type as it is seen from a namespace."""
        name = re.sub(r'^(::)?tankwright::', '', name)
        parts = scope.split('::') if scope else []
        for end in range(len(parts), -1, -1):
            full = '::'.join(parts[:end] + [name])
            if any(full in table for table in tables):
                return full
        return None

    def can_resolve(self, text, scope):
        try:
            self.resolve(text, scope)
            return True
        except Refused:
            return False

    def resolve(self, text, scope):
        text = re.sub(r'\bconst\b', '', text).replace('&', '').strip()
        text = re.sub(r'^(::)?tankwright::', '', text)
        wrapped = re.match(r'([\w:]+)\s*<(.*)>$', text)
        if wrapped and self.find(text, scope, self.world.aliases) is None:
            outer, inner = wrapped.group(1), wrapped.group(2)
            if outer == 'required':
                return self.resolve(inner, scope)
            if outer in ('std::vector', 'std::span'):
                of = self.resolve(inner, scope)
                return Kind('list', f'std::vector<{of.cpp}>' if outer == 'std::vector' else f'std::span<const {of.cpp}>', of=of)
            if outer == 'std::array':
                of = self.resolve(declarations.split(inner)[0], scope)
                size = declarations.split(inner)[1]
                return Kind('array', f'std::array<{of.cpp}, ::tankwright::{scope.split("::")[0]}::{size}>', of=of)
            if outer == 'std::optional':
                of = self.resolve(inner, scope)
                return Kind('optional', f'std::optional<{of.cpp}>', of=of)
            if outer == 'estimate':
                of = self.resolve(inner, scope)
                return Kind('estimate', f'::tankwright::estimate<{of.cpp}>', of=of)
            if outer == 'std::variant':
                options = [self.resolve(one, scope) for one in declarations.split(inner)]
                return Kind('variant', 'std::variant<' + ', '.join(o.cpp for o in options) + '>', options=options)
            template = self.find(outer, scope, self.world.records)
            if template and self.world.records[template].is_class:
                return self.class_of(
                    template,
                    f'::tankwright::{template}<::tankwright::{self.find(inner, scope, self.world.records)}>',
                    template,
                )
            if template:
                return self.record_of(template, self.resolve(inner, scope))
            raise Refused(f'{text} is of a kind that JSON has no form for')
        if text == 'double':
            return Kind('quantity', 'double', 'number')
        if text in ('int', 'std::size_t'):
            return Kind('integer', text, 'number')
        if text == 'bool':
            return Kind('flag', 'bool')
        if text in ('std::string', 'std::string_view'):
            return Kind('text', text)
        if text == 'caution':
            return Kind('caution', '::tankwright::caution')
        # From the inside out: an alias, a record, an enum of the folder hides a quantity of the same name.
        full = self.find(text, scope, self.world.aliases, self.world.records, self.world.enums, self.quantities)
        if full in self.quantities:
            return Kind('quantity', f'::tankwright::{full}', full)
        if full in self.world.records:
            record = self.world.records[full]
            return self.class_of(full, f'::tankwright::{full}', full) if record.is_class else self.record_of(full)
        if full in self.world.enums:
            return Kind('enum', f'::tankwright::{full}', full, source=self.world.enums[full])
        if full in self.world.aliases:
            inside = full.rsplit('::', 1)[0] if '::' in full else ''
            if self.world.aliases[full].startswith(('boost::', 'core::', 'typename')):
                # Another name for the same dimension: a moment is an energy.
                same = [q for q in self.quantities if self.world.aliases.get(q) == self.world.aliases[full]]
                if not same:
                    raise Refused(f'{text} has no text form')
                return Kind('quantity', f'::tankwright::{same[0]}', same[0])
            kind = self.resolve(self.world.aliases[full], inside)
            if kind.kind == 'class' and '<' in kind.cpp:
                kind.name = full
            return kind
        raise Refused(f'{text} is of a kind that JSON has no form for')

    def record_of(self, full, argument=None):
        record = self.world.records[full]
        spelled = f'::tankwright::{full}' + (f'<{argument.cpp}>' if argument else '')
        if spelled in self.kinds:
            return self.kinds[spelled]
        kind = Kind(
            'record', spelled, full + (f'_of_{argument.name.split("::")[-1]}' if argument else ''), source=record
        )
        self.kinds[spelled] = kind
        kind.scope = full.rsplit('::', 1)[0] if '::' in full else ''
        try:
            if record.others or record.base or bool(record.template) != bool(argument):
                raise Refused(f'{full} is no plain struct')
            for f in record.fields:
                inner = argument if f.type == record.template and argument else self.resolve(f.type, full)
                required = f.default is None and inner.kind not in ('list', 'text', 'optional', 'caution')
                kind.fields.append((f.name, inner, required, f))
        except Refused as why:
            kind.fields = []
            kind.kind = 'refused'
            kind.of = str(why)
        return kind

    def class_of(self, full, spelled, template):
        key = spelled
        if key in self.kinds:
            return self.kinds[key]
        record = self.world.records[template]
        kind = Kind('class', spelled, full, source=record)
        kind.scope = full.rsplit('::', 1)[0] if '::' in full else ''
        self.kinds[key] = kind
        base = re.match(r'(?:public\s+)?([\w:]+)<(\w+)>$', record.base)
        sources = []
        if base and base.group(1) == 'core::scalar':
            kind.ways = [('', '', [(declarations.Field('double', 'value'), Kind('quantity', 'double', 'number'))])]
            kind.readers = [('value', '{}.value()', Kind('quantity', 'double', 'number'))]
            return kind
        if base:
            parent = self.find(base.group(1), kind.scope, self.world.records)
            if parent:
                sources.append(self.world.records[parent])
        sources.append(record)
        for one in sources:
            scope = one.name
            for way, fields in one.ways_in:
                try:
                    wanted = [(f, self.resolve(f.type, scope)) for f in fields if f.default is None]
                except Refused:
                    continue
                if len(wanted) > 1 and way:
                    continue  # more than one number for one thing: the other ways do
                maker = f'from_{way}' if way else ''
                if not way and len(record.ways_in) > 1 and len(wanted) == 1:
                    way = wanted[0][1].name.split('::')[-1] or 'list'
                kind.ways.append((way, maker, wanted))
            for result, reader in one.ways_out:
                try:
                    read = self.resolve(result, scope)
                except Refused:
                    continue
                if read.kind in ('quantity', 'text', 'enum', 'integer', 'record'):
                    name = reader[3:] if reader.startswith('as_') else reader
                    kind.readers.append((name, '{}.' + reader + '()', read))
        kind.readers = self.in_units(kind) or kind.readers
        return kind

    def in_units(self, kind):
        """The readers of a class whose number is read in a named unit: in_kv(valve)."""
        if any(way == 'kilograms_per_kilogram' for way, _, _ in kind.ways):
            return []  # value() is in SI
        readers = []
        for way, _, _ in kind.ways:
            for f in self.world.functions:
                types = [p.type for p in f.parameters]
                if f.name == f'{kind.scope}::in_{way}' and types == [kind.name.split('::')[-1]]:
                    readers.append((way, f'::tankwright::{f.name}({{}})', Kind('quantity', 'double', 'number')))
        return readers

    # ---- what is used ----

    def need_read(self, kind, path=()):
        if kind.kind == 'refused':
            raise Refused(kind.of)
        if kind.kind == 'array':
            raise Refused('a list of fixed length')
        if kind.kind == 'caution':
            return
        key = kind.cpp
        if key in self.readable:
            return
        if kind.kind in ('estimate', 'optional', 'list'):
            self.need_read(kind.of)
            return
        if kind.kind == 'variant':
            for option in kind.options:
                self.need_read(option)
            self.readable[key] = kind
            return
        self.readable[key] = kind
        try:
            if kind.kind == 'record':
                for _, inner, _, _ in kind.fields:
                    self.need_read(inner)
                    if inner.kind in ('estimate', 'optional', 'list'):
                        self.need_read(inner.of)
            elif kind.kind == 'class':
                for _, _, wanted in kind.ways:
                    for _, inner in wanted:
                        self.need_read(inner)
                if not kind.ways and kind.name not in self.made:
                    raise Refused(f'{kind.name} is made by nothing that has a name here')
        except Refused:
            del self.readable[key]
            raise

    def need_write(self, kind):
        if kind.kind == 'refused':
            raise Refused(kind.of)
        key = kind.cpp
        if key in self.writable:
            return
        if kind.kind in ('estimate', 'optional', 'list', 'array'):
            self.need_write(kind.of)
            return
        if kind.kind == 'variant':
            for option in kind.options:
                self.need_write(option)
            self.writable[key] = kind
            return
        self.writable[key] = kind
        try:
            if kind.kind == 'record':
                for _, inner, _, _ in kind.fields:
                    self.need_write(inner)
            elif kind.kind == 'class':
                for _, _, inner in kind.readers:
                    self.need_write(inner)
        except Refused:
            del self.writable[key]
            raise

    def used(self):
        both = {**self.readable, **self.writable}
        return [k for k in both.values() if k.kind in ('record', 'class', 'enum', 'variant')]

    def home_of(self, kind):
        """The folder whose file has the glue of a type; what the core has is in that of water."""
        if kind.kind == 'variant':
            return self.home_of(next(o for o in kind.options if o.kind in ('record', 'class')))
        folder = kind.name.split('::')[0]
        return folder if folder in declarations.FOLDERS else 'water'

    def used_in(self, folder):
        order = {'enum': 0, 'class': 1, 'record': 2, 'variant': 3}
        mine = [k for k in self.used() if self.home_of(k) == folder]
        ordered, done = [], set()

        def add(kind):
            if kind.cpp in done:
                return
            done.add(kind.cpp)
            for _, inner, _, _ in kind.fields:
                while inner.of is not None and not isinstance(inner.of, str):
                    inner = inner.of
                if inner.kind == 'record':
                    add(inner)
            if any(k is kind for k in mine):
                ordered.append(kind)

        # What a struct has in it stands before it: its numbers are read and written in place.
        for kind in sorted(mine, key=lambda k: (order[k.kind], k.name, k.cpp)):
            add(kind)
        return ordered

    # ---- the glue ----

    def declaration(self, kind):
        reads, writes = kind.cpp in self.readable, kind.cpp in self.writable
        text = f'template <>\nstruct io<{kind.cpp}> {{\n'
        if reads:
            text += f'  static {kind.cpp} read(const given& in);\n'
            if kind.kind == 'record':
                text += f'  static {kind.cpp} fields(const given& in);\n'
        if writes:
            text += f'  static void write(answer& out, const {kind.cpp}& v);\n'
        if kind.kind == 'class' and is_plain(kind) and is_number(kind.ways[0][2][0][1]):
            way, reader = kind.ways[0], kind.readers[0][1]
            inner = way[2][0][1]
            text += (
                f'  static void write_band(answer& out, const tw::estimate<{kind.cpp}>& v) {{\n'
                f'    out.band({cpp(self.quantity_label(kind))}, {cpp(self.unit_of(kind))}, {{'
                + ', '.join(f'tw::core::si_number({reader.format("v." + end)})' for end in ('low', 'central', 'high'))
                + '}, v.reason);\n  }\n'
            )
        if is_plain(kind):
            if kind.kind == 'class':
                _, maker, wanted = kind.ways[0]
                reader = kind.readers[0][1]
                inner = wanted[0][1]
                make = (
                    f'{kind.cpp}::{maker}(io<{inner.cpp}>::take(at))'
                    if maker
                    else f'{kind.cpp}{{io<{inner.cpp}>::take(at)}}'
                )
                text += f'  static {kind.cpp} take(const double*& at) {{ return {make}; }}\n'
                text += f'  static void put(const {kind.cpp}& v, double*& at) {{ io<{inner.cpp}>::put({reader.format("v")}, at); }}\n'
            elif kind.kind == 'enum':
                last = len(kind.source.words) - 1
                text += f'  static {kind.cpp} take(const double*& at) {{ return static_cast<{kind.cpp}>(whole_number(*at++, 0, {last})); }}\n'
                text += f'  static void put({kind.cpp} v, double*& at) {{ *at++ = static_cast<double>(v); }}\n'
            else:
                if reads:
                    text += f'  static {kind.cpp} take(const double*& at) {{\n    return {{'
                    taken = [f'.{n} = io<{k.cpp}>::take(at)' for n, k, _, _ in kind.fields if k.kind != 'caution']
                    text += self.in_order(kind, taken + self.silent(kind)) + '};\n  }\n'
                    text += '  static void defaults(double*& at);\n'
                text += f'  static void put(const {kind.cpp}& v, double*& at) {{\n'
                text += ''.join(f'    io<{k.cpp}>::put(v.{n}, at);\n' for n, k, _, _ in kind.fields) + '  }\n'
        return text + '};\n\n'

    def presets(self, kind):
        """Constants of a type: (name, C++ expression of it or of an array, whether an array, field that names elements)."""
        found = []
        for c in self.world.constants.values():
            if c.name.split('::')[0] != self.home_of(kind) or re.search(r'\b(detail|kernel)::', c.name):
                continue
            scope = c.name.rsplit('::', 1)[0]
            if not re.match(r'[\w:<> ]+$', c.type) or c.type in ('auto', 'limits', 'interval'):
                continue
            if self.can_resolve(c.type, scope) and self.resolve(c.type, scope).cpp == kind.cpp:
                found.append(c)
        return found

    def definition(self, kind):
        reads, writes = kind.cpp in self.readable, kind.cpp in self.writable
        me = f'io<{kind.cpp}>'
        text = ''
        if kind.kind == 'enum':
            words = [w for w, _ in kind.source.words]
            ident = re.sub(r'\W+', '_', kind.name)
            text += f'namespace {{\nconstexpr std::string_view words_of_{ident}[] = {{{", ".join(cpp(w) for w in words)}}};\n}}  // namespace\n'
            if reads:
                text += f'{kind.cpp} {me}::read(const given& in) {{ return static_cast<{kind.cpp}>(in.word(words_of_{ident})); }}\n'
            if writes:
                text += f'void {me}::write(answer& out, const {kind.cpp}& v) {{ out.text(words_of_{ident}[static_cast<std::size_t>(v)]); }}\n'
            return text + '\n'
        if kind.kind == 'variant':
            names = [o.name.split('::')[-1] for o in kind.options]
            if reads:
                text += f'{kind.cpp} {me}::read(const given& in) {{\n'
                text += f'  static constexpr std::string_view ways[] = {{{", ".join(cpp(n) for n in names)}}};\n'
                text += '  switch (const std::size_t way = in.way(ways, -1, -1); way) {\n'
                for i, option in enumerate(kind.options):
                    label = f'case {i}' if i + 1 < len(kind.options) else 'default'
                    text += f'    {label}: return io<{option.cpp}>::read(in.along(ways, way));\n'
                text += '  }\n}\n'
            if writes:
                text += f'void {me}::write(answer& out, const {kind.cpp}& v) {{\n  out.begin();\n'
                for i, (option, name) in enumerate(zip(kind.options, names)):
                    text += f'  if (const auto* one = std::get_if<{i}>(&v)) {{\n    out.key({cpp(name)});\n    io<{option.cpp}>::write(out, *one);\n  }}\n'
                text += '  out.end();\n}\n'
            return text + '\n'
        if reads:
            text += f'{kind.cpp} {me}::read(const given& in) {{\n'
            text += (
                f'  if (std::optional<{kind.cpp}> by_formula; made(in, by_formula)) return *std::move(by_formula);\n'
            )
            presets = self.presets(kind)
            if presets:
                known = []
                for c in presets:
                    short = c.name.split('::')[-1]
                    if c.array:
                        if kind.kind == 'record' and any(n == 'name' for n, _, _, _ in kind.fields):
                            text += f'  for (const auto& one : ::tankwright::{c.name}) {{\n    if (in.is_named(one.name)) return one;\n  }}\n'
                    else:
                        known.append(short)
                        text += f'  if (in.is_named({cpp(short)})) return ::tankwright::{c.name};\n'
                if kind.kind == 'record' and known:
                    text += f'  static constexpr std::string_view known[] = {{{", ".join(cpp(k) for k in known)}}};\n'
                    text += '  if (in.is_text()) in.refuse_name(known);\n'
            text += self.read_ways(kind) if kind.kind == 'class' else '  return fields(in);\n'
            text += '}\n'
            if kind.kind == 'record':
                text += self.read_fields(kind)
        if writes:
            text += f'void {me}::write(answer& out, const {kind.cpp}& v) {{\n'
            if kind.kind == 'class':
                text += self.write_class(kind)
            else:
                text += '  out.begin();\n'
                text += ''.join(
                    f'  out.key({cpp(n)});\n  io<{k.cpp}>::write(out, v.{n});\n' for n, k, _, _ in kind.fields
                )
                text += '  out.end();\n'
            text += '}\n'
        if reads and kind.kind == 'record' and is_plain(kind):
            text += self.defaults(kind)
        return text + '\n'

    def read_ways(self, kind):
        if not kind.ways:
            return '  in.only({});\n  in.refuse_name({});\n'
        if len(kind.ways) == 1:
            way, maker, wanted = kind.ways[0]
            if len(wanted) > 1:  # a constructor of several: an object of fields
                names = ', '.join(cpp(f.name) for f, _ in wanted)
                text = f'  static constexpr std::string_view parts[] = {{{names}}};\n  in.only(parts);\n'
                for i, (f, k) in enumerate(wanted):
                    text += f'  const auto a{i} = must<{k.cpp}>(in, {cpp(f.name)});\n'
                return text + f'  return {kind.cpp}{{{", ".join(f"a{i}" for i in range(len(wanted)))}}};\n'
            return f'  return {self.made_from(kind, maker, wanted[0][1], "in")};\n'
        names = [w for w, _, _ in kind.ways]
        scalar = [i for i, (_, _, w) in enumerate(kind.ways) if w[0][1].kind != 'list']
        lists = [i for i, (_, _, w) in enumerate(kind.ways) if w[0][1].kind == 'list']
        plain = scalar[0] if len(scalar) == 1 else -1
        plain_list = lists[0] if len(lists) == 1 else -1
        text = f'  static constexpr std::string_view ways[] = {{{", ".join(cpp(n) for n in names)}}};\n'
        text += f'  const std::size_t way = in.way(ways, {plain}, {plain_list});\n  const given one = in.along(ways, way);\n  switch (way) {{\n'
        for i, (_, maker, wanted) in enumerate(kind.ways):
            label = f'case {i}' if i + 1 < len(kind.ways) else 'default'
            text += f'    {label}: return {self.made_from(kind, maker, wanted[0][1], "one")};\n'
        return text + '  }\n'

    @staticmethod
    def made_from(kind, maker, inner, source):
        value = f'io<{inner.cpp}>::read({source})'
        return f'{kind.cpp}::{maker}({value})' if maker else f'{kind.cpp}({value})'

    @staticmethod
    def silent(kind):
        """Cautions that a result carries and nobody gives."""
        return [f'.{n} = {{}}' for n, k, _, f in kind.fields if k.kind == 'caution' and f.default is None]

    def in_order(self, kind, parts):
        """Designated initialisers in the order of the struct."""
        order = [n for n, _, _, _ in kind.fields]
        return ', '.join(sorted(parts, key=lambda p: order.index(re.match(r'\.(\w+)', p).group(1))))

    def read_fields(self, kind):
        me = f'io<{kind.cpp}>'
        given = [(n, k, r, f) for n, k, r, f in kind.fields if k.kind != 'caution']
        text = f'{kind.cpp} {me}::fields(const given& in) {{\n'
        if given:
            # A caution is taken and left unread, so that a result can be given back as it came.
            known = [n for n, k, _, f in kind.fields]
            text += f'  static constexpr std::string_view known[] = {{{", ".join(cpp(n) for n in known)}}};\n  in.only(known);\n'
        else:
            text += '  in.only({});\n'
        first = []
        for n, k, required, f in given:
            if f.default is not None:
                continue
            if required:
                first.append(f'.{n} = must<{k.cpp}>(in, {cpp(n)})')
            else:
                first.append(f'.{n} = may_or<{k.cpp}>(in, {cpp(n)}, [] {{ return {k.cpp}{{}}; }})')
        later = [(n, k) for n, k, _, f in given if f.default is not None]
        text += f'  {"" if later else "const "}{kind.cpp} v{{{self.in_order(kind, first + self.silent(kind))}}};\n'
        text += ''.join(f'  if (in.has({cpp(n)})) v.{n} = must<{k.cpp}>(in, {cpp(n)});\n' for n, k in later)
        return text + '  return v;\n}\n'

    def defaults(self, kind):
        me = f'io<{kind.cpp}>'
        text = f'void {me}::defaults(double*& at) {{\n'
        usual = [n for n, k, _, f in kind.fields if f.default is not None and k.kind != 'caution']
        if usual:
            room = max(count_of(kind), 1)
            text += (
                f'  constexpr double zeros[{room}] = {{}};\n  const double* zero = zeros;\n  static_cast<void>(zero);\n'
            )
            first = [
                f'.{n} = io<{k.cpp}>::take(zero)'
                for n, k, _, f in kind.fields
                if f.default is None and k.kind != 'caution'
            ]
            first = self.in_order(kind, first + self.silent(kind))
            text += f'  const {kind.cpp} v{{{first}}};\n'
        for n, k, _, f in kind.fields:
            if k.kind == 'caution':
                continue
            if f.default is not None:
                text += f'  io<{k.cpp}>::put(v.{n}, at);\n'
            elif k.kind == 'record':
                text += f'  io<{k.cpp}>::defaults(at);\n'
            else:
                text += f'  not_given(at, {count_of(k)});\n'
        return text + '}\n'

    def write_class(self, kind):
        if len(kind.readers) == 1 and kind.readers[0][2].kind == 'quantity':
            name, reader, inner = kind.readers[0]
            return f'  out.quantity({cpp(self.quantity_label(kind))}, {cpp(self.unit_of(kind))}, tw::core::si_number({reader.format("v")}));\n'
        text = '  out.begin();\n'
        for name, reader, inner in kind.readers:
            text += f'  out.key({cpp(name)});\n  io<{inner.cpp}>::write(out, {reader.format("v")});\n'
        return text + '  out.end();\n' + ('  static_cast<void>(v);\n' if not kind.readers else '')

    # ---- the list ----

    @staticmethod
    def measured_as(quantity):
        """As in text/detail/read.hpp."""
        same = {'absolute_pressure': 'pressure', 'gauge_pressure': 'pressure', 'temperature_difference': 'temperature'}
        return {**same, 'porosity': 'proportion', 'relative_humidity': 'proportion'}.get(quantity, quantity)

    def si_unit(self, quantity):
        for name, symbol, factor in self.all_units:
            if name == self.measured_as(quantity) and factor == 1.0:
                return symbol
        return ''

    @staticmethod
    def quantity_label(kind):
        return kind.name.split('::')[-1]

    def unit_of(self, kind):
        """The unit of a class around one number: of its quantity, or as its comment or its way in says."""
        if not kind.readers:
            return ''
        inner = kind.readers[0][2]
        if inner.kind == 'quantity' and inner.name != 'number':
            return self.si_unit(inner.name)
        return declarations.unit_in(kind.source.comment) or ''

    def describe(self, kind, sentence=''):
        if kind.kind == 'quantity':
            unit = self.si_unit(kind.name)
            if kind.name == 'number':
                unit = declarations.unit_in(sentence) or '1'
                unit = '' if unit == '1' else unit
            return {'kind': 'quantity', 'quantity': kind.name, 'unit': unit}
        if kind.kind == 'integer':
            return {'kind': 'integer'}
        if kind.kind in ('flag', 'text', 'caution'):
            return {'kind': kind.kind}
        if kind.kind in ('estimate', 'optional', 'list', 'array'):
            return {'kind': 'list' if kind.kind == 'array' else kind.kind, 'of': self.describe(kind.of, sentence)}
        if kind.kind == 'variant':
            return {'kind': 'one_of', 'options': [self.describe(o) for o in kind.options]}
        return {'kind': {'record': 'fields', 'class': 'value', 'enum': 'word'}[kind.kind], 'type': kind.label}

    def types(self, values, field_data):
        found = {}
        for kind in sorted(self.used(), key=lambda k: k.label):
            if kind.kind == 'variant':
                continue
            comment = kind.source.comment
            if kind.kind == 'enum':
                found[kind.label] = {
                    'kind': 'word',
                    'sentence': comment,
                    'words': [{'word': w, **({'sentence': c} if c else {})} for w, c in kind.source.words],
                }
                continue
            data = {
                'kind': 'fields' if kind.kind == 'record' else 'value',
                'sentence': comment,
                'given': kind.cpp in self.readable,
                'returned': kind.cpp in self.writable,
            }
            if kind.kind == 'record':
                data['fields'] = []
                for n, k, r, f in kind.fields:
                    one = field_data(self, values, n, k, r, f, f.comment, kind.scope)
                    if data['given'] and (kind.name, n) in values.type_limits:
                        one['limits'] = values.type_limits[kind.name, n]
                    data['fields'].append(one)
            else:
                if len(kind.ways) == 1 and len(kind.ways[0][2]) > 1:
                    data['parts'] = [{'name': f.name, **self.describe(k)} for f, k in kind.ways[0][2]]
                elif len(kind.ways) == 1:
                    inner = self.describe(kind.ways[0][2][0][1], comment)
                    if inner.get('quantity') == 'number':
                        inner['unit'] = self.unit_of(kind)
                        if kind.ways[0][0]:
                            inner['measured_in'] = kind.ways[0][0]
                    data['as'] = inner
                else:
                    data['ways'] = [{'name': w, **self.describe(wanted[0][1], comment)} for w, _, wanted in kind.ways]
                data['shows'] = [{'name': n, **self.describe(k)} for n, _, k in kind.readers]
            presets = [c.name.split('::')[-1] for c in self.presets(kind) if not c.array]
            for c in self.presets(kind):
                if c.array:
                    presets += re.findall(r'[{]\s*"((?:\\.|[^"\\])*)"', c.value)
            if presets and data['given']:
                data['constants'] = presets
            found[kind.label] = data
        return found

    def units(self):
        """{quantity: its units}: SI = (number + below) * factor, `below` for the two scales whose zero is not that of K."""
        table = {}
        for quantity in sorted(self.quantities):
            for name, symbol, factor in self.all_units:
                if name == self.measured_as(quantity):
                    below = {'degC': 273.15, 'degF': 459.67}.get(symbol) if quantity == 'temperature' else None
                    table.setdefault(quantity, []).append(
                        {'unit': symbol, 'factor': factor, **({'below': below} if below else {})}
                    )
        return table
