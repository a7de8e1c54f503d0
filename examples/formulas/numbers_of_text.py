# SPDX-License-Identifier: BSL-1.0
"""Numbers out of the text of the headers: defaults, constants and limits, as far as they are written with the makers of
units.hpp, numbers and each other. What is worked out in any other way is left out of the list."""
import ast
import operator
import re

import declarations

OPERATORS = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
    ast.USub: operator.neg,
    ast.UAdd: operator.pos,
}
VAST, TINY = 1e15, 1e-30  # core::vast, core::tiny


class Unknown(Exception):
    pass


class Evaluator:
    def __init__(self, world, model):
        self.world, self.model = world, model
        self.makers = {maker: model.factor(factor) for _, maker, _, factor in model.rows}

    # ---- numbers ----

    def number(self, text, scope, depth=0):
        """The number in SI of an expression."""
        if depth > 8:
            raise Unknown(text)
        text = text.strip()
        text = re.sub(r'(?<=[\d.])(e[+-]?\d+)?f?L?\b(?=[^\w.]|$)', lambda m: m.group(1) or '', text)
        text = text.replace('::', '__').replace('<double>', '').replace('{}', '(0.0)')
        while True:
            braced = re.sub(r'\b(\w+)\{([^{}]*)\}', r'\1(\2)', text)
            if braced == text:
                break
            text = braced
        try:
            tree = ast.parse(re.sub(r'^\{([^{},]*)\}$', r'(\1)', text), mode='eval').body
        except SyntaxError:
            raise Unknown(text)
        return self.value(tree, scope, depth)

    def value(self, node, scope, depth):
        if isinstance(node, ast.Constant) and isinstance(node.value, (int, float)) and not isinstance(node.value, bool):
            return float(node.value)
        if isinstance(node, ast.BinOp) and type(node.op) in OPERATORS:
            return OPERATORS[type(node.op)](self.value(node.left, scope, depth), self.value(node.right, scope, depth))
        if isinstance(node, ast.UnaryOp) and type(node.op) in OPERATORS:
            return OPERATORS[type(node.op)](self.value(node.operand, scope, depth))
        if isinstance(node, ast.Name):
            name = node.id.replace('__', '::')
            full = self.model.find(name, scope, self.world.constants)
            if full:
                constant = self.world.constants[full]
                return self.number(constant.value, full.rsplit('::', 1)[0] if '::' in full else '', depth + 1)
            raise Unknown(name)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and len(node.args) == 1:
            name = node.func.id.replace('__', '::').split('::')[-1]
            inside = self.value(node.args[0], scope, depth)
            if name in self.makers:
                return inside * self.makers[name]
            if name == 'celsius':
                return inside + 273.15
            if name == 'fahrenheit':
                return (inside - 32.0) * 5.0 / 9.0 + 273.15
            if name == 'celsius_steps':
                return inside
            if name == 'percent' or name == 'from_percent':
                return inside / 100.0
            if (
                name
                in (
                    'fraction',
                    'kelvins',
                    'kelvin_difference',
                    'from_fraction',
                    'from_grams_per_kilogram',
                    'number',
                    'kelvins_difference',
                    'static_cast',
                    'int',
                    'double',
                    'from_value',
                )
                or name in self.model.quantities
            ):
                return inside
            full = self.model.find(node.func.id.replace('__', '::'), scope, self.world.records)
            if full:
                return inside
        raise Unknown(ast.dump(node)[:80])

    def default_of(self, text, kind, scope):
        """A default as a front end would give it; None for none, and where the text does not say."""
        text = text.strip()
        try:
            if kind.kind == 'flag' and text in ('true', 'false'):
                return text == 'true'
            if kind.kind == 'integer':
                value = self.number(text, scope)
                return int(value)
            if kind.kind == 'quantity':
                return self.number(text, scope)
            if kind.kind == 'enum':
                word = text.split('::')[-1]
                return word if word in [w for w, _ in kind.source.words] else None
            if kind.kind == 'text':
                return '' if text == '{}' else json_text(text)
            if kind.kind == 'list' and text == '{}':
                return []
            if kind.kind == 'optional' and text == '{}':
                return None
            if kind.kind == 'record' and text == '{}':
                return {}
            if kind.kind == 'record' and re.match(r'\{\s*\.', text):
                fields = {n: (k, f) for n, k, _, f in kind.fields}
                parts = [re.match(r'\.(\w+)\s*=\s*(.*)$', p, flags=re.S) for p in declarations.split(text[1:-1])]
                return {p.group(1): self.default_of(p.group(2), fields[p.group(1)][0], scope) for p in parts}
            way = re.fullmatch(r'(?:[\w:]+::)?from_(\w+)\((.*)\)', text)
            if kind.kind == 'class' and way:
                value = 0.0 if way.group(2) == '{}' else self.number(way.group(2), scope)
                return value if len(kind.ways) == 1 else {way.group(1): value}
            if kind.kind == 'class' and len(kind.ways) == 1 and len(kind.ways[0][2]) == 1:
                return self.number(text, scope)
            if kind.kind in ('class', 'record', 'estimate') and re.fullmatch(r'[\w:]+', text):
                full = self.model.find(text, scope, self.world.constants)
                if kind.kind == 'estimate':
                    return self.band(self.world.constants[full].value, full.rsplit('::', 1)[0]) if full else None
                return text.split('::')[-1] if full else None
            if kind.kind == 'estimate':
                known = re.fullmatch(r'(?:[\w:]*)(known_loss|exactly)\((.*)\)', text)
                if known:
                    return self.number(known.group(2), scope)
                return self.band(text, scope)
        except Unknown:
            pass
        return None

    def band(self, text, scope):
        inside = re.fullmatch(r'(?:[\w:<>]+)?\{(.*)\}', text.strip(), flags=re.S)
        parts = declarations.split(inside.group(1)) if inside else []
        if len(parts) < 3:
            return None
        try:
            low, central, high = (self.number(p, scope) for p in parts[:3])
        except Unknown:
            return None
        return {
            'low': low,
            'central': central,
            'high': high,
            **({'reason': json_text(parts[3])} if len(parts) > 3 else {}),
        }

    # ---- constants that stand for a number ----

    def numbers_in(self, folder):
        found = []
        for c in self.world.constants.values():
            if c.name.split('::')[0] != folder or c.array or re.search(r'\b(detail|kernel)::', c.name):
                continue
            scope = c.name.rsplit('::', 1)[0]
            if not self.model.can_resolve(c.type, scope):
                continue
            kind = self.model.resolve(c.type, scope)
            inner = kind.of if kind.kind == 'estimate' else kind
            if inner.kind == 'quantity' and inner.name != 'number':
                found.append(c)
        return found

    def named_numbers(self):
        found = []
        for folder in declarations.FOLDERS:
            for c in self.numbers_in(folder):
                kind = self.model.resolve(c.type, c.name.rsplit('::', 1)[0])
                inner = kind.of if kind.kind == 'estimate' else kind
                data = {'name': c.name.split('::')[-1], 'quantity': inner.name, 'unit': self.model.si_unit(inner.name)}
                scope = c.name.rsplit('::', 1)[0]
                try:
                    value = self.band(c.value, scope) if kind.kind == 'estimate' else self.number(c.value, scope)
                    if value is not None:
                        data['value'] = value
                except Unknown:
                    pass
                if c.comment:
                    data['sentence'] = c.comment
                found.append(data)
        return found

    # ---- cautions ----

    def cautions_of(self, formula):
        """The cautions that the result always carries."""
        result = formula.result.of if formula.result.kind in ('optional', 'list') else formula.result
        found = []
        for name, kind, _, field in result.fields if result.kind == 'record' else ():
            full = (
                field.default
                and kind.kind == 'caution'
                and self.model.find(field.default, result.scope, self.world.constants)
            )
            if full:
                text = ''.join(re.findall(r'"((?:\\.|[^"\\])*)"', self.world.constants[full].value))
                found.append(text.replace('\\"', '"'))
        return found

    # ---- limits ----

    def limits_of_types(self, formulas):
        """{(type, field): limits} as far as all functions that take the type hold the field against the same."""
        found = {}
        for f in formulas:
            kinds = {p.name: kind for p, kind in f.arguments}
            for subject, limit in self.checks_of(f.function, '', 0):
                base, _, rest = subject.partition('.')
                kind, owner, part = kinds.get(base), None, ''
                while kind is not None and kind.kind in ('list', 'optional') and kind.of:
                    kind = kind.of
                for part in rest.split('.') if rest else ():
                    if kind is None or kind.kind != 'record':
                        break
                    owner = kind
                    kind = next((k for n, k, _, _ in kind.fields if n == part), None)
                    while kind is not None and kind.kind in ('list', 'optional') and kind.of:
                        kind = kind.of
                else:
                    if owner is not None and kind is not None and kind.kind != 'record':
                        found.setdefault((owner.name, part), []).append(limit)
        self.type_limits = {key: all_of[0] for key, all_of in found.items() if all(x == all_of[0] for x in all_of)}

    def limits_for(self, formula, field):
        """The limits that the function holds a field against, followed through the helpers that it passes it to."""
        checked = self.checks_of(formula.function, formula.function.name.rsplit('::', 1)[0], 0)
        names = [p.name for p, _ in formula.arguments]
        wanted = f'{names[0]}.{field}' if formula.flat else field
        found = [limit for name, limit in checked if name == wanted and (formula.flat or '.' not in name)]
        return found[0] if found else None

    def checks_of(self, function, scope, depth):
        """[(argument or argument.field, limits)] of the calls of `check` in a body."""
        key = (function.name, function.line)
        cache = self.__dict__.setdefault('cache', {})
        if key in cache:
            return cache[key]
        cache[key] = []
        found = []
        inside = function.name.rsplit('::', 1)[0]
        local = dict(re.findall(r'\b(?:constexpr|const)\s+(?:[\w:]+)(?:\s*&|\s)\s*(\w+)\s*=\s*([^;]+);', function.body))
        for several in re.findall(r'\bconst double (\w+ = [^;]+, \w+ = [^;]+);', function.body):
            local.update(dict(re.findall(r'(\w+) = ([^,;]+)', several)))
        # An element of a list stands for the list.
        local.update(dict(re.findall(r'for \(const [\w:]+& (\w+) : ([\w.]+)\)', function.body)))
        for name, first, arguments in calls(function.body):
            short = name.split('::')[-1]
            if short in ('check', 'check_element', 'check_at') and len(arguments) >= 3:
                at = next((i for i, a in enumerate(arguments[:-1]) if i > 0 and self.is_limits(a, inside)), None)
                if at is None:
                    continue
                subject = subject_of(arguments[at + 1], function, local)
                limit = self.limit(arguments[at], inside)
                if subject and limit:
                    found.append((subject, limit))
            elif depth < 4:
                helper = self.helper(name, inside)
                if helper and len(arguments) <= len(helper.parameters) and helper is not function:
                    for subject, limit in self.checks_of(helper, inside, depth + 1):
                        base, _, rest = subject.partition('.')
                        names = [p.name for p in helper.parameters]
                        if base in names and names.index(base) < len(arguments):
                            outer = subject_of(arguments[names.index(base)], function, local)
                            if outer:
                                found.append((f'{outer}.{rest}' if rest else outer, limit))
        cache[key] = found
        return found

    def helper(self, name, scope):
        full = self.model.find(name, scope, self.world.helpers)
        if not full and not name.startswith('detail'):
            full = self.model.find('detail::' + name, scope, self.world.helpers)
        if full:
            return self.world.helpers[full]
        public = [f for f in self.world.functions if f.name == f'{scope}::{name}']
        return public[0] if len(public) == 1 else None

    def is_limits(self, text, scope):
        return text.startswith('{"') or bool(self.constant(text, scope))

    def constant(self, text, scope):
        other_name = re.fullmatch(r'(?:[\w:]*)renamed\(([\w:]+), "[^"]*"\)', text)  # the same limits
        text = other_name.group(1) if other_name else text
        if not re.fullmatch(r'[\w:]+', text):
            return None
        full = self.model.find(text, scope, self.world.constants) or self.model.find(
            'detail::' + text, scope, self.world.constants
        )
        return self.world.constants[full] if full and self.world.constants[full].type == 'limits' else None

    def limit(self, text, scope):
        constant = self.constant(text, scope)
        if constant:
            text = constant.value
            scope = constant.name.rsplit('::', 1)[0]
        inside = re.fullmatch(r'\{(.*)\}', text.strip(), flags=re.S)
        if not inside:
            return None
        parts = declarations.split(inside.group(1))
        if len(parts) < 3:
            return None
        possible = self.interval(parts[2], scope)
        published = self.interval(parts[3], scope) if len(parts) > 3 else None
        data = {'unit': json_text(parts[1]) or ''}
        if possible:
            data['possible'] = possible
        if published:
            data['published'] = published
        if len(parts) > 4 and json_text(parts[4]):
            data['source'] = json_text(parts[4])
        return data if possible or published else None

    def interval(self, text, scope):
        text = text.strip()
        if text == '{}':
            return None
        of_others = re.fullmatch(r'([\w:]+)\.(possible|published)', text)
        if of_others:
            return (self.limit(of_others.group(1), scope) or {}).get(of_others.group(2))
        if re.fullmatch(r'[\w:]+', text):
            full = self.model.find(text, scope, self.world.constants)
            if not full:
                return None
            return self.interval(self.world.constants[full].value, full.rsplit('::', 1)[0] if '::' in full else '')
        celsius = re.fullmatch(r'(?:core::)?celsius_range\((.*)\)', text, flags=re.S)
        inside = celsius or re.fullmatch(r'(?:interval)?\{(.*)\}', text, flags=re.S)
        if not inside:
            return None
        parts = declarations.split(inside.group(1))
        try:
            low, high = (self.number(p, scope) for p in parts[:2])
        except (Unknown, ValueError):
            return None
        edges = [p.split('::')[-1] for p in parts[2:4]]
        data = {}
        # The ends that everything has (core/validity.hpp) say nothing to a person.
        if low == TINY:
            low, edges = 0.0, ['open'] + edges[1:]
        if low > -VAST:
            data['low'] = low
        if high < VAST:
            data['high'] = high
        if edges[:1] == ['open']:
            data['low_open'] = True
        if edges[1:2] == ['open']:
            data['high_open'] = True
        return data or None


def json_text(text):
    """A C++ string literal, or several beside each other."""
    parts = re.findall(r'"((?:\\.|[^"\\])*)"', text)
    return ''.join(parts).replace('\\"', '"') if parts else None


def calls(body):
    """(name, offset, arguments) of the calls in a body."""
    for match in re.finditer(r'([A-Za-z_][\w:]*)(?:<[\w:]*>)?\(', body):
        depth, i = 1, match.end()
        in_text = False
        while i < len(body) and depth:
            c = body[i]
            if c == '"' and body[i - 1] != '\\':
                in_text = not in_text
            if not in_text:
                depth += (c == '(') - (c == ')')
            i += 1
        yield match.group(1), match.start(), declarations.split(' '.join(body[match.end() : i - 1].split()))


def subject_of(text, function, local, depth=0):
    """`argument` or `argument.field` when an expression is one argument's number in some unit; None for arithmetic."""
    text = text.strip()
    if text in local and depth < 3:
        return subject_of(local[text], function, local, depth + 1)
    text = re.sub(r'^(?:in_\w+|core::si_number|static_cast<double>)\((.*)\)$', r'\1', text)
    text = re.sub(r'(?:->|\.)(?:value|get|diameter|as_nitrogen)\(\)', '', text)
    text = re.sub(r'\.(?:value)\(\)', '', text)
    text = text.replace('->', '.')
    match = re.fullmatch(r'(\w+)((?:\.\w+)*)', text)
    if match and match.group(1) in [p.name for p in function.parameters]:
        return match.group(1) + match.group(2)
    if match and match.group(1) in local and depth < 4:
        base = subject_of(local[match.group(1)], function, local, depth + 1)
        return base + match.group(2) if base else None
    return None
