# SPDX-License-Identifier: BSL-1.0
"""The places of a header that a mutant changes, and the header with a switch in each of them.

Clang's parser finds them, so nothing is changed in a comment, a macro or a template argument that it does not see as an
expression. One place has one or two mutants. Line breaks stay where they are: an error of the compiler leads back.
"""
import re
from dataclasses import dataclass, field

from clang.cindex import CursorKind as K
from clang.cindex import Index, TypeKind

FLOAT = re.compile(r"(\d[\d']*\.[\d']*(e[+-]?\d+)?|\.\d+(e[+-]?\d+)?|\d[\d']*e[+-]?\d+)[lLfF]?", re.I)
INTEGER = re.compile(r"\d[\d']*[uUlLzZ]*")
COMPARE = {'<': ('lt', '<=', '>'), '<=': ('le', '<', '>='), '>': ('gt', '>=', '<'), '>=': ('ge', '>', '<=')}
OTHER = {'==': ('eq', '!='), '!=': ('ne', '=='), '+': ('add', '-'), '-': ('sub', '+'), '*': ('mul', '/'), '/': ('div', '*')}
SYMMETRIC = {'min', 'max', 'fmin', 'fmax', 'smaller', 'larger', 'hypot', 'swap'}
SIMPLE = re.compile(r'[A-Za-z_][\w.:]*(?:->\w+)*(?:\(\))?$')
FUNCTIONS = (K.FUNCTION_DECL, K.CXX_METHOD, K.FUNCTION_TEMPLATE, K.CONSTRUCTOR, K.CONVERSION_FUNCTION, K.DESTRUCTOR)
TYPED = (K.VAR_DECL, K.FIELD_DECL, K.PARM_DECL, K.FUNCTION_DECL, K.CXX_METHOD)
RECORDS = (K.STRUCT_DECL, K.CLASS_DECL, K.CLASS_TEMPLATE, K.CLASS_TEMPLATE_PARTIAL_SPECIALIZATION)


@dataclass
class Place:
    start: int
    end: int
    kind: str
    changes: list  # in words, one for each mutant
    parts: list = field(default_factory=list)  # (start, end) of the operands
    mode: str = 'guarded'
    variable: int = None  # offset of the `constexpr` of the variable that it initialises
    first: int = 0  # number of its first mutant
    off: bool = False
    line: int = 0
    code: str = ''
    same: tuple = ()  # those changes that cannot change an answer, by what the text says


class Header:
    def __init__(self, path, name):
        self.path, self.name = path, name  # name: water/density.hpp
        self.bytes = path.read_bytes()
        self.places = {}
        self.variables = {}  # offset of `constexpr` -> kept as it is
        self.local_static = {}  # of a constexpr function: offset of `constexpr` -> offset of its `static`
        self.in_class = set()  # those of them that are members

    def text(self, start, end):
        return self.bytes[start:end].decode()

    def name_of(self, offset):
        """Of the variable that is `constexpr` at an offset."""
        found = re.match(r'constexpr\s[^=;{]*?(\w+)\s*(?:\[[^\]]*\]\s*)*[={]', self.bytes[offset : offset + 400].decode(errors='ignore'))
        return found.group(1) if found else None

    def line_of(self, offset):
        return self.bytes.count(b'\n', 0, offset) + 1

    def add(self, start, end, kind, changes, context, parts=(), same=()):
        if end <= start or (start, end, kind) in self.places:
            return
        if kind in ('both', 'either') and b'//' in self.bytes[parts[1][0] : parts[1][1]]:
            return
        if self.makes_room(start, end):
            same = changes
        place = Place(start, end, kind, changes, list(parts), context.mode, context.variable, same=tuple(same))
        place.line = self.line_of(start)
        lines = self.bytes.split(b'\n')
        place.code = lines[place.line - 1].decode().strip()
        self.places[start, end, kind] = place

    def makes_room(self, start, end):
        """Inside `x.reserve(...)`: how much room is made in advance changes no answer."""
        line = self.bytes[self.bytes.rfind(b'\n', 0, start) + 1 : end].decode()
        open_at = line.rfind('.reserve(')
        inside = line[open_at + len('.reserve') :] if open_at >= 0 else ''
        return inside.count('(') > inside.count(')')

    # ---- the rewritten text

    def rewritten(self):
        """The header with its switches."""
        order = sorted((p for p in self.places.values() if not p.off), key=lambda p: (p.start, -p.end, p.kind != 'drop'))
        root = []
        stack = [(0, len(self.bytes), root)]
        for place in order:
            while place.start >= stack[-1][1]:
                stack.pop()
            if place.end > stack[-1][1]:  # not nested: left out
                place.off = True
                continue
            inside = []
            stack[-1][2].append((place, inside))
            stack.append((place.start, place.end, inside))
        edits = {}
        for offset, kept in self.variables.items():
            if not kept:
                edits[offset] = b'inline const' if offset in self.in_class else b'const'
                if offset in self.local_static:  # initialised in each call, not before all of them
                    edits[self.local_static[offset]] = b''

        def plain(start, end):
            out, at = b'', start
            for offset in sorted(o for o in edits if start <= o < end):
                out += self.bytes[at:offset] + edits[offset]
                at = offset + len(b'constexpr' if edits[offset] else b'static')
            return out + self.bytes[at:end]

        def span(start, end, inside):
            out, at = b'', start
            for place, deeper in inside:
                if place.start < start or place.end > end:
                    continue
                out += plain(at, place.start) + self.switch(place, deeper, span)
                at = place.end
            return out + plain(at, end)

        return span(0, len(self.bytes), root).decode()

    def switch(self, place, inside, span):
        mode = place.mode
        if place.variable is not None:
            mode = 'fixed' if self.variables[place.variable] else ('now' if mode != 'guarded' else 'guarded')
        head = f'<::mut::{mode}>({place.first}, '.encode()
        whole = lambda: span(place.start, place.end, inside)
        parts = [span(a, b, inside) for a, b in place.parts]
        kind = place.kind
        on = lambda: f'::mut::on<::mut::{mode}>({place.first})'.encode()
        if kind in ('number', 'flag', 'text', 'cleared'):
            return b'::mut::' + kind.encode() + head + whole() + b')'
        if kind == 'negate':
            return b'::mut::negate' + head + parts[0] + b')'
        if kind in ('both', 'either'):
            # The second operand stands twice: its line breaks once.
            a, b = parts
            breaks = b'\n' * self.bytes[place.parts[0][1] : place.parts[1][0]].count(b'\n')
            again = b.replace(b'\n', b' ')
            never = b'' if kind == 'both' else b'!'
            return (b'((' + a + b') ? (' + never + on() + b' || ' + breaks + b'(' + b + b')) : (' + never + on() +
                    b' && (' + again + b')))')
        if kind == 'drop':
            return b'(' + on() + b' ? void() : void(' + whole() + b'))'
        if kind == 'swap':
            between = self.bytes[place.parts[0][1] : place.parts[1][0]]
            a, b = parts
            return b'(' + on() + b' ? ' + b + b' : ' + a + b')' + between + b'(' + on() + b' ? ' + a + b' : ' + b + b')'
        # The breaks between the operands are kept.
        between = self.bytes[place.parts[0][1] : place.parts[1][0]]
        breaks = b'\n' * between.count(b'\n')
        return b'::mut::' + kind.encode() + head + parts[0] + b', ' + breaks + parts[1] + b')'


@dataclass
class Context:
    mode: str  # guarded or now
    variable: int = None
    at_namespace: bool = True


class Finder:
    def __init__(self, headers, arguments):
        self.headers = {str(h.path): h for h in headers}
        self.arguments = arguments

    def find(self, main):
        unit = Index.create().parse(str(main), args=self.arguments)
        bad = [d for d in unit.diagnostics if d.severity >= 3]
        if bad:
            raise SystemExit(f'{main}: {bad[0]}')
        for cursor in unit.cursor.get_children():
            if cursor.location.file and cursor.location.file.name in self.headers:
                self.walk(cursor, self.headers[cursor.location.file.name], Context('now'), None)

    def walk(self, cursor, header, context, parent):
        kind = cursor.kind
        if kind in (K.STATIC_ASSERT, K.ENUM_DECL, K.TEMPLATE_NON_TYPE_PARAMETER, K.USING_DECLARATION, K.TYPE_ALIAS_DECL):
            return
        start, end = cursor.extent.start.offset, cursor.extent.end.offset
        if kind in FUNCTIONS:
            text = header.text(start, end)
            brace = text.find('{')
            constant = re.search(r'\bconstexpr\b', text[: brace if brace >= 0 else len(text)])
            context = Context('guarded' if constant else 'now', None, False)
            if re.search(r'=\s*(default|delete)\s*;?\s*$', text):
                return
        elif kind in RECORDS:
            context = Context('guarded', None, False)
        elif kind == K.VAR_DECL or (kind == K.UNEXPOSED_DECL and 'constexpr' in header.text(start, end).split('{')[0]):
            name = cursor.location.offset if kind == K.VAR_DECL else None
            found = re.search(r'\bconstexpr\b', header.text(start, name if name else end))
            if found:
                at = start + len(header.text(start, end)[: found.start()].encode())
                # Templates of variables are initialised in no order, so they stay constants.
                before_value = header.text(at, end).split('=')[0]
                of_template = parent is not None and parent.kind == K.CLASS_TEMPLATE and '[' not in before_value
                of_template = of_template or 'template' in header.text(start, at)
                template = of_template or header.bytes[:start].rstrip().endswith(b'>')
                header.variables.setdefault(at, template)
                before = re.search(rb'\bstatic\s+$', header.bytes[:at])
                if before and context.mode == 'guarded' and not (parent is not None and parent.kind in RECORDS):
                    header.local_static[at] = before.start()
                if parent is not None and parent.kind in RECORDS:
                    header.in_class.add(at)
                member = parent is not None and parent.kind in RECORDS
                context = Context('now' if context.at_namespace or member else context.mode, at, context.at_namespace)
        self.place(cursor, kind, start, end, header, context, parent)
        for child in cursor.get_children():
            # What stands before the name is the type.
            if kind in TYPED and child.extent.start.offset < cursor.location.offset and child.kind != K.VAR_DECL:
                continue
            # So is the size of an array.
            if kind in (K.VAR_DECL, K.FIELD_DECL) and header.bytes[: child.extent.start.offset].rstrip().endswith(b'['):
                continue
            self.walk(child, header, context, cursor)

    def place(self, cursor, kind, start, end, header, context, parent):
        text = header.text(start, end)
        if kind == K.FLOATING_LITERAL and FLOAT.fullmatch(text):
            zero = float(text.rstrip('lLfF').replace("'", '')) == 0
            header.add(start, end, 'number', [f'{text} 0.001 more', f'{text} 0.001 less'] if zero else
                       [f'{text} times 1.001', f'{text} with the other sign'], context)
        elif kind == K.INTEGER_LITERAL and INTEGER.fullmatch(text):
            header.add(start, end, 'number', [f'{text} one more', f'{text} one less'], context)
        elif kind == K.CXX_BOOL_LITERAL_EXPR and text in ('true', 'false'):
            header.add(start, end, 'flag', [f'not {text}'], context)
        elif kind == K.STRING_LITERAL and text.startswith('"') and context.variable is not None and context.at_namespace:
            header.add(start, end, 'text', ['text dropped: ' + ' '.join(text.split())[:60]], context)
        elif kind == K.UNARY_OPERATOR and text.startswith('!') and not text.startswith('!='):  # Clang's `!(a == b)`
            child = next(cursor.get_children()).extent
            header.add(start, end, 'negate', ['! dropped'], context, [(child.start.offset, child.end.offset)])
        elif kind in (K.BINARY_OPERATOR, K.CALL_EXPR):
            children = list(cursor.get_children()) if kind == K.BINARY_OPERATOR else list(cursor.get_arguments())
            if len(children) == 2 and all(c is not None for c in children):
                a, b = children[0].extent, children[1].extent
                operator = header.text(a.end.offset, b.start.offset).strip() if a.end.offset <= b.start.offset else ''
                parts = [(a.start.offset, a.end.offset), (b.start.offset, b.end.offset)]
                if a.start.offset != start or b.end.offset != end:
                    operator = ''
                if operator in COMPARE:
                    name, near, other = COMPARE[operator]
                    same = [f'{operator} as {near}'] if self.chooses_one(parent, parts, header) else []
                    header.add(start, end, name, [f'{operator} as {near}', f'{operator} as {other}'], context, parts, same)
                elif operator in OTHER:
                    name, other = OTHER[operator]
                    header.add(start, end, name, [f'{operator} as {other}'], context, parts)
                elif operator in ('&&', '||'):
                    header.add(start, end, 'both' if operator == '&&' else 'either',
                               ['&& as ||' if operator == '&&' else '|| as &&'], context, parts)
            if kind == K.CALL_EXPR:
                if parent is not None and parent.kind == K.COMPOUND_STMT and re.match(r'[\w:.<>]+\(', text):
                    change = f'dropped: {" ".join(text.split())[:70]}'
                    header.add(start, end, 'drop', [change], context, same=[change] if '.reserve(' in change else [])
                if cursor.spelling not in SYMMETRIC and not cursor.spelling.startswith('operator'):
                    # The ends of a bracket: the root between them is the same.
                    ends = 3 if re.match(r'(numerics::)?bracketed_root\b', text) else None
                    self.swaps(list(cursor.get_arguments()), header, context, ends)
        elif kind == K.INIT_LIST_EXPR and not header.bytes[:start].endswith((b'std::min(', b'std::max(')):
            self.swaps(list(cursor.get_children()), header, context)
        elif kind in (K.DECL_REF_EXPR, K.MEMBER_REF_EXPR) and (parent is None or parent.kind != K.MEMBER_REF_EXPR):
            spelled = cursor.type.get_canonical().spelling.replace('const ', '')
            dropped = spelled in ('tankwright::caution', 'tankwright::citation') or (
                spelled.startswith('std::basic_string_view') and cursor.referenced is not None
                and cursor.referenced.kind == K.VAR_DECL
                and cursor.referenced.semantic_parent is not None
                and cursor.referenced.semantic_parent.kind == K.NAMESPACE)
            assigned = re.match(rb'\s*=[^=]', header.bytes[end : end + 80])
            if dropped and SIMPLE.match(text) and not assigned:
                header.add(start, end, 'cleared', [f'{text} dropped'], context)

    @staticmethod
    def chooses_one(parent, parts, header):
        """`a < b ? a : b`: of two equal ones either."""
        if parent is None or parent.kind != K.CONDITIONAL_OPERATOR:
            return False
        extents = [(c.extent.start.offset, c.extent.end.offset) for c in parent.get_children()]
        texts = [header.text(*p) for p in extents]
        return len(texts) == 3 and sorted(texts[1:]) == sorted(header.text(*p) for p in parts)

    def swaps(self, arguments, header, context, symmetric=None):
        for i, (one, two) in enumerate(zip(arguments, arguments[1:])):
            if one is None or two is None:
                continue
            a, b = one.extent, two.extent
            parts = [(a.start.offset, a.end.offset), (b.start.offset, b.end.offset)]
            texts = [header.text(*p) for p in parts]
            if not all(SIMPLE.match(t) for t in texts) or texts[0] == texts[1] or parts[0][1] > parts[1][0]:
                continue
            if header.text(parts[0][1], parts[1][0]).strip() != ',':
                continue
            types = [c.type.get_canonical() for c in (one, two)]
            if types[0].spelling.replace('const ', '') != types[1].spelling.replace('const ', ''):
                continue
            if types[0].kind == TypeKind.INVALID:
                continue
            change = f'{texts[0]} and {texts[1]} swapped'
            header.add(parts[0][0], parts[1][1], 'swap', [change], context, parts, [change] if i == symmetric else [])
