# SPDX-License-Identifier: BSL-1.0
"""What the headers declare: structs with their fields, classes with their ways in and out, enums, constants, aliases and
functions with the types of their parameters, each with its comment.

The headers are written in one style (clang-format, one declaration a line), so a scanner over braces is enough and no
compiler is needed. What it cannot read it leaves out, and `examples/formulas/make.py` says so.
"""
import re
from dataclasses import dataclass, field
from pathlib import Path

FOLDERS = ('water', 'vessel', 'plumbing', 'room', 'life')


@dataclass
class Field:
    type: str
    name: str
    default: str = None  # text of the initialiser
    comment: str = ''
    line: int = 0


@dataclass
class Record:  # struct, class or class template
    name: str  # water::salt_batch, without tankwright::
    header: Path
    line: int
    comment: str
    is_class: bool
    template: str = ''  # name of its only template parameter
    base: str = ''
    fields: list = field(default_factory=list)
    ways_in: list = field(default_factory=list)  # (way, [Field]): constructors '' and from_... functions
    ways_out: list = field(default_factory=list)  # (type, name) of readers without arguments
    others: list = field(default_factory=list)  # names of what else it declares


@dataclass
class Function:
    name: str
    header: Path
    line: int
    result: str
    parameters: list  # Field
    doc: list
    body: str
    template: bool
    is_noexcept: bool


@dataclass
class Constant:
    name: str
    type: str
    value: str
    header: Path
    comment: str
    array: bool


@dataclass
class Enum:
    name: str
    header: Path
    comment: str
    words: list  # (word, comment)


@dataclass
class World:
    records: dict = field(default_factory=dict)
    functions: list = field(default_factory=list)
    constants: dict = field(default_factory=dict)
    enums: dict = field(default_factory=dict)
    aliases: dict = field(default_factory=dict)
    helpers: dict = field(default_factory=dict)  # functions of detail and kernel, by name
    names: set = field(default_factory=set)


def split(text, separator=','):
    """Split at the separators outside all brackets."""
    parts, depth, current = [], 0, ''
    in_text = False
    for i, c in enumerate(text):
        if c == '"' and (i == 0 or text[i - 1] != '\\'):
            in_text = not in_text
        if not in_text:
            if c in '(<{[' and not (c == '<' and text[i : i + 2] in ('<<', '<=', '< ')):
                depth += 1
            elif c in ')>}]' and not (
                c == '>' and (text[i - 1 : i + 1] in ('->', ' >', '>=') or text[i : i + 2] == '>=')
            ):
                depth -= 1
            if c == separator and depth == 0:
                parts.append(current.strip())
                current = ''
                continue
        current += c
    if current.strip():
        parts.append(current.strip())
    return parts


def spaced(text):
    return ' '.join(text.split())


class Scanner:
    def __init__(self, header, world):
        self.header, self.world = header, world
        self.source = header.read_text()
        self.lines = self.source.split('\n')

        def blank(match):
            return re.sub(r'[^\n]', ' ', match.group(0))

        # `code` keeps texts, `bare` blanks them: both keep every offset.
        code = re.sub(
            r'("(?:\\.|[^"\\\n])*")|//[^\n]*|/\*.*?\*/', lambda m: m.group(1) or blank(m), self.source, flags=re.S
        )
        self.code = re.sub(r'^[ \t]*#(?:[^\n\\]|\\\n|\\.)*', blank, code, flags=re.M)
        self.bare = re.sub(r'"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'', blank, self.code)
        self.match = self._braces()

    def _braces(self):
        open_at, match = [], {}
        for i, c in enumerate(self.bare):
            if c == '{':
                open_at.append(i)
            elif c == '}':
                match[open_at.pop()] = i
        if open_at:
            raise ValueError(f'{self.header}: unbalanced braces')
        return match

    def line_of(self, offset):
        return self.source.count('\n', 0, offset)

    def above(self, line):
        """The /// comment over a line."""
        found = []
        for at in range(line - 1, -1, -1):
            text = self.lines[at].strip()
            if not text.startswith('///') or text.startswith('///<'):
                break
            found.insert(0, text[3:].strip() if text[3:4] == ' ' and text[3:6] != '   ' else text[3:])
        return found

    def comment_of(self, first, last):
        """The comment of a member: over it, or ///< behind it."""
        after = []
        at = last
        match = re.search(r'///<(.*)', self.lines[at])
        if match:
            after.append(match.group(1).strip())
            for below in self.lines[at + 1 :]:
                if not below.strip().startswith('///<'):
                    break
                after.append(below.strip()[4:].strip())
        return spaced(' '.join(self.above(first) + after))

    def pieces(self, start, end):
        """(text, offset, braced) of each declaration from start to end; braced: (open, close) of its body."""
        at, parens, first = start, 0, start
        while at < end:
            c = self.bare[at]
            if c in '([':
                parens += 1
            elif c in ')]':
                parens -= 1
            elif c == ';' and parens == 0:
                yield self.code[first:at], first, None
                first = at + 1
            elif c == '{':
                close = self.match[at]
                head = self.bare[first:at]
                if parens == 0 and self._has_body(head):
                    yield self.code[first:at], first, (at, close)
                    first = close + 1
                    at = close
                else:  # an initialiser: part of the declaration
                    at = close
            at += 1

    @staticmethod
    def _has_body(head):
        text = head.strip()
        text = re.sub(r'\[\[.*?\]\]', ' ', text)
        if re.match(r'(inline\s+)?namespace\b|(template.*?>\s*)?(struct|class|enum)\b', text, flags=re.S):
            return True
        if re.match(r'template', text):
            return True
        before = re.split(r'(?<![=!<>])=(?!=)', text)[0]
        if '(' not in before:
            return False
        # `name(...) : member_{value} {`: the initialisers are not the body.
        tail = text[text.rindex(')') + 1 :]
        after = re.search(r'\)\s*(?:const|noexcept|\s)*:\s*(.*)$', text, flags=re.S)
        if after and not re.search(r'[})]\s*$', after.group(1)):
            return False
        return '=' not in before or 'operator' in before or not tail.strip().startswith('=')

    def scan(self):
        self.namespace(0, len(self.code), [])

    def namespace(self, start, end, path):
        for text, offset, body in self.pieces(start, end):
            first = offset + len(text) - len(text.lstrip())
            bare = re.sub(r'\[\[.*?\]\]', ' ', text).strip()
            if not bare:
                continue
            space = re.match(r'(?:inline\s+)?namespace\s*([\w:]*)$', bare)
            if space and body:
                self.namespace(body[0] + 1, body[1], path + [p for p in space.group(1).split('::') if p])
                continue
            if path[:1] != ['tankwright']:
                continue
            inside = '::'.join(path[1:])
            prefix = inside + '::' if inside else ''
            line = self.line_of(first)
            record = re.match(
                r'(?:template\s*<\s*(?:class|typename)\s+(\w+)\s*>\s*)?(struct|class)\s+(\w+)\s*(?:final\s*)?(?::(.*))?$',
                bare,
                flags=re.S,
            )
            if record and body:
                found = Record(
                    prefix + record.group(3),
                    self.header,
                    line + 1,
                    spaced(' '.join(self.above(line))),
                    record.group(2) == 'class',
                    record.group(1) or '',
                    spaced(record.group(4) or ''),
                )
                self.members(found, body[0] + 1, body[1])
                self.world.records[found.name] = found
                continue
            enum = re.match(r'enum\s+class\s+(\w+)', bare)
            if enum and body:
                self.enum(prefix + enum.group(1), line, body)
                continue
            alias = re.match(r'using\s+(\w+)\s*=\s*(.*)$', bare, flags=re.S)
            if alias:
                self.world.aliases[prefix + alias.group(1)] = spaced(alias.group(2))
                continue
            alias = re.match(r'using\s+([\w:]+)$', bare)
            if alias:
                self.world.aliases[prefix + alias.group(1).split('::')[-1]] = alias.group(1)
                continue
            function = self.function(text, first, body, prefix)
            if function:
                if {'detail', 'kernel', 'rules'} & set(path) or path[1:2] == ['core']:
                    self.world.helpers.setdefault(function.name, function)
                elif self.header.parent.name in FOLDERS and 'detail' not in self.header.parts:
                    self.world.functions.append(function)
                continue
            self.constant(bare, prefix, line)

    def constant(self, bare, prefix, line):
        match = re.match(r'(?:inline\s+)?constexpr\s+(.*)$', bare, flags=re.S)
        if not match or bare.startswith('template'):
            return
        text = match.group(1)
        found = re.match(
            r'((?:const\s+)?[\w:]+(?:\s*<.*?>+)?)\s+(\w+)\s*(\[\w*\])?\s*(?:=\s*(.*)|(\{.*))$', text, flags=re.S
        )
        if found:
            value = found.group(4) or found.group(5)
            self.world.constants[prefix + found.group(2)] = Constant(
                prefix + found.group(2),
                found.group(1),
                value.strip(),
                self.header,
                spaced(' '.join(self.above(line))),
                bool(found.group(3)),
            )

    def enum(self, name, line, body):
        words = []
        at = body[0] + 1
        text = self.bare[body[0] + 1 : body[1]]
        for found in re.finditer(r'([A-Za-z_]\w*)\s*(?:=[^,]*)?(?:,|\s*$)', text):
            line_at = self.line_of(at + found.start(1))
            several = text.count('\n') == 0
            words.append((found.group(1), '' if several else self.comment_of(line_at, line_at)))
        self.world.enums[name] = Enum(name, self.header, spaced(' '.join(self.above(line))), words)

    def members(self, record, start, end):
        access = 'private' if record.is_class else 'public'
        short = record.name.split('::')[-1]
        for text, offset, body in self.pieces(start, end):
            while True:
                label = re.match(r'\s*(public|private|protected)\s*:', text)
                if not label:
                    break
                access = label.group(1)
                offset += label.end()
                text = text[label.end() :]
            first = offset + len(text) - len(text.lstrip())
            bare = spaced(re.sub(r'\[\[.*?\]\]', ' ', text))
            if not bare or access != 'public' and not (record.template and access == 'protected'):
                continue
            if re.match(r'(template|friend|using|static_assert|struct|class)\b', bare):
                continue
            enum = re.match(r'enum\s+class\s+(\w+)', bare)
            if enum:
                if body:
                    self.enum(f'{record.name}::{enum.group(1)}', self.line_of(first), body)
                continue
            head = re.sub(r'<[^<>]*>', '', re.sub(r'<[^<>]*>', '', bare)).split('=')[0].split('{')[0]
            if '(' in head:
                self.member_function(record, short, bare, access)
                continue
            if access != 'public' or re.match(r'(static|constexpr)\b', bare):
                continue
            declared = re.match(r'((?:const\s+)?[\w:]+(?:\s*<.*?>+)?)\s+(\w+)\s*(?:=\s*(.*)|(\{.*\}))?$', bare)
            if not declared:
                many = re.match(r'([\w:]+)\s+(\w+(?:\s*=\s*[^,]+)?(?:,\s*\w+(?:\s*=\s*[^,]+)?)+)$', bare)
                if many:
                    for one in split(many.group(2)):
                        name, _, value = one.partition('=')
                        record.fields.append(
                            Field(
                                many.group(1),
                                name.strip(),
                                value.strip() or None,
                                self.comment_of(self.line_of(first), self.line_of(offset + len(text))),
                                self.line_of(first) + 1,
                            )
                        )
                else:
                    record.others.append(bare)
                continue
            default = declared.group(3) if declared.group(3) is not None else declared.group(4)
            record.fields.append(
                Field(
                    declared.group(1),
                    declared.group(2),
                    default,
                    self.comment_of(self.line_of(first), self.line_of(offset + len(text))),
                    self.line_of(first) + 1,
                )
            )

    def member_function(self, record, short, bare, access):
        constructor = re.match(rf'(?:constexpr\s+|explicit\s+|inline\s+)*{short}\s*\(', bare)
        maker = re.match(r'static\s+constexpr\s+(\w+)\s+from_(\w+)\s*\(', bare)
        reader = re.match(r'(?:constexpr\s+)?((?:const\s+)?[\w:]+(?:<.*?>)?\s*&?)\s*(?<![\w])(\w+)\(\)\s*const', bare)
        if access == 'public' and (constructor or maker) and '= delete' not in bare:
            found = constructor or maker
            inside = bare[found.end() :]
            depth, i = 1, 0
            while depth:
                depth += (inside[i] == '(') - (inside[i] == ')')
                i += 1
            fields = parameters(inside[: i - 1])
            if (
                fields is not None
                and fields
                and not any('initializer_list' in f.type or 'detail::' in f.type for f in fields)
            ):
                record.ways_in.append((maker.group(2) if maker else '', fields))
        elif access == 'public' and reader and not re.match(r'(static|auto|bool operator)', bare):
            record.ways_out.append((reader.group(1).strip(), reader.group(2)))

    def function(self, text, first, body, prefix):
        bare = spaced(re.sub(r'\[\[.*?\]\]', ' ', text))
        template = bare.startswith('template')
        if template:
            depth = 0
            rest = bare[len('template') :].lstrip()
            for i, c in enumerate(rest):
                depth += (c == '<') - (c == '>')
                if depth == 0:
                    rest = rest[i + 1 :].strip()
                    break
            bare = re.sub(r'^requires\s*(\(.*?\)|[\w:]+<.*?>(?=\s))\s*', '', rest)
        if '(' not in bare or re.match(r'(using|static_assert|class|struct|enum|union|friend|extern)\b', bare):
            return None
        head, rest = bare.split('(', 1)
        if '=' in head or 'operator' in head or '{' in head or not body:
            return None
        match = re.match(r'(?:(?:inline|constexpr|consteval|static|explicit)\s+)*(.*?)\s*\b([A-Za-z_]\w*)\s*$', head)
        if not match or not match.group(1):
            return None
        depth, i = 1, 0
        while i < len(rest) and depth:
            depth += (rest[i] == '(') - (rest[i] == ')')
            i += 1
        line = self.line_of(first)
        fields = parameters(rest[: i - 1])
        return Function(
            prefix + match.group(2),
            self.header,
            line + 1,
            match.group(1),
            fields if fields is not None else [],
            self.above(line),
            self.code[body[0] + 1 : body[1]],
            template,
            'noexcept' in rest[i - 1 :],
        )


def parameters(text):
    """[Field] of a parameter list; None for one that this scanner cannot read."""
    found = []
    for part in split(spaced(text)):
        declared, _, default = part.partition(' = ')
        match = re.match(r'(.*?[\s&>])(\w+)$', declared.strip())
        if not match:
            return None
        found.append(Field(match.group(1).strip(), match.group(2), default.strip() or None))
    return found


def read(root):
    """All that the floors from core to life declare."""
    world = World()
    include = Path(root) / 'include' / 'tankwright'
    for folder in ('core', 'numerics') + FOLDERS:
        for header in sorted((include / folder).rglob('*.hpp')):
            if 'charconv' in header.name or header.name in ('estimate.hpp', 'required.hpp', 'unit_table.hpp'):
                continue
            Scanner(header, world).scan()
    return world


def tags(doc):
    """{'': first sentence(s), 'formula': ..., 'param': {name: text}, 'return': ..., ...} of a docstring."""
    found = {'': '', 'formula': '', 'notes': '', 'param': {}}
    current, name, blank = '', None, 0
    for line in doc:
        tag = re.match(r'\s*@(\w+)\s*(.*)$', line)
        if tag:
            current, rest = tag.group(1), tag.group(2)
            if current == 'param':
                parts = rest.split(None, 1)
                name, rest = parts[0], parts[1] if len(parts) > 1 else ''
                found['param'][name] = rest.strip()
            else:
                name = None
                found[current] = rest.strip()
            continue
        if not line.strip():
            blank += 1
            continue
        if not current:
            key = '' if blank == 0 else 'formula' if line.startswith('  ') else 'notes'
            found[key] = (
                found[key] + ('\n' if key == 'formula' else ' ') + (line.rstrip() if key == 'formula' else line.strip())
            ).strip('\n ')
        elif current == 'param':
            found['param'][name] = spaced(found['param'][name] + ' ' + line)
        else:
            found[current] = spaced(found[current] + ' ' + line)
    return found


def is_plain_number(declared):
    """Whether a type says nothing about its unit: a double or an integer, alone, wanted, or in a list."""
    wrapped = r'(?:const\s+)?(?:tankwright::)?(?:required<|std::optional<|estimate<|std::vector<|std::span<const\s+)*'
    return re.fullmatch(wrapped + r'(?:double|int|std::size_t)>*\s*&?', declared) is not None


def unit_in(comment):
    """The unit that a comment gives in square brackets: 'kg/m^3', '1'; None where it gives none."""
    found = re.search(r'\[([^\]]+)\]', comment)
    return found.group(1) if found else None
