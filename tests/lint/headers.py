# SPDX-License-Identifier: BSL-1.0
"""Finds the public functions of the headers: free functions at namespace scope, outside the machinery: `detail`, what
floors share in `tankwright::core`, and the arithmetic in `kernel`.

The headers are written in one style, so a scanner over braces is enough; what it cannot read it reports.
"""
import re
from dataclasses import dataclass, field
from pathlib import Path


MACHINERY = ('detail', 'kernel', 'rules')
DESCRIPTION = re.compile(r'tankwright::plan::describe(_\w+)?')  # documented key by key, beside the struct


@dataclass
class Function:
    name: str            # tankwright::water::density
    header: Path
    line: int
    parameters: list     # names
    returns_void: bool
    is_noexcept: bool
    doc: list = field(default_factory=list)  # lines of the /// comment, without the slashes


def _blank(match):
    return re.sub(r'[^\n]', ' ', match.group(0))


def _split_parameters(text):
    parts, depth, current = [], 0, ''
    for c in text:
        if c in '(<{[':
            depth += 1
        elif c in ')>}]':
            depth -= 1
        if c == ',' and depth == 0:
            parts.append(current)
            current = ''
        else:
            current += c
    parts.append(current)
    names = []
    for part in parts:
        part = part.split('=')[0].strip()
        words = re.findall(r'[A-Za-z_]\w*', part)
        if part.endswith(('>', '&', '*')) or len(words) < 2:
            continue  # unnamed
        names.append(words[-1])
    return names


def public_functions(header):
    source = header.read_text()
    lines = source.split('\n')
    # Strings, comments and preprocessor lines become spaces, so that offsets stay.
    code = re.sub(r'"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'', _blank, source)
    code = re.sub(r'//[^\n]*|/\*.*?\*/', _blank, code, flags=re.S)
    code = re.sub(r'^[ \t]*#(?:[^\n\\]|\\\n|\\.)*', _blank, code, flags=re.M)
    found, scopes, start = [], [], 0
    parens = 0
    for i, c in enumerate(code):
        if c == '(':
            parens += 1
        elif c == ')':
            parens -= 1
        elif c in '{};' and parens == 0:
            chunk = code[start:i]
            at_namespace = all(kind == 'namespace' for kind, _ in scopes)
            path = [name for kind, name in scopes if kind == 'namespace']
            text = chunk.strip()
            names = '::'.join(path).split('::')
            public = names[:2] != ['tankwright', 'core'] and not set(names) & set(MACHINERY)
            if c in '{;' and at_namespace and public:
                function = _as_function(text)
                if function:
                    first = start + (len(chunk) - len(chunk.lstrip()))
                    line = source.count('\n', 0, first)  # zero-based index of the first line of the declaration
                    doc = []
                    for above in range(line - 1, -1, -1):
                        if not lines[above].startswith('///'):
                            break
                        doc.insert(0, lines[above][3:].strip())
                    name, parameters, void, noexcept = function
                    if not DESCRIPTION.fullmatch('::'.join(path + [name])):
                        found.append(Function('::'.join(path + [name]), header, line + 1, parameters, void, noexcept, doc))
            if c == '{':
                match = re.match(r'(?:inline\s+)?namespace\s*([\w:]*)$', text)
                scopes.append(('namespace', match.group(1)) if match else ('other', ''))
            elif c == '}':
                if not scopes:
                    raise ValueError(f'{header}: unbalanced braces')
                scopes.pop()
            start = i + 1
    if scopes:
        raise ValueError(f'{header}: unbalanced braces')
    return found


def _as_function(text):
    text = re.sub(r'\[\[.*?\]\]', ' ', text, flags=re.S)
    while text.lstrip().startswith('template'):
        text = text.lstrip()[len('template'):].lstrip()
        depth = 0
        for i, c in enumerate(text):
            depth += (c == '<') - (c == '>')
            if depth == 0:
                text = text[i + 1:]
                break
    text = re.sub(r'^\s*requires\b[^\n]*\n', ' ', text)
    text = text.strip()
    if '(' not in text or re.match(r'(using|static_assert|namespace|class|struct|enum|union|friend|extern)\b', text):
        return None
    head, rest = text.split('(', 1)
    if '=' in head or 'operator' in head:
        return None
    name = re.search(r'([A-Za-z_]\w*)\s*$', head)
    if not name or not re.match(r'(inline|constexpr|auto|void|\w)', head) or len(head.split()) < 2:
        return None
    depth, i = 1, 0
    while i < len(rest) and depth:
        depth += (rest[i] == '(') - (rest[i] == ')')
        i += 1
    words = head.split()
    return name.group(1), _split_parameters(rest[:i - 1]), 'void' in words, 'noexcept' in rest[i - 1:]


def all_headers(root):
    return sorted(p for p in (Path(root) / 'include').rglob('*.hpp') if 'detail' not in p.parts)


def unit_makers(root):
    """(maker, reader) of every row of the unit table: macros the scanner does not see."""
    table = (Path(root) / 'include/tankwright/core/unit_table.hpp').read_text()
    return [(f'tankwright::{m}', f'tankwright::in_{m}') for m in re.findall(r'ROW\(\w+,\s*(\w+),', table)]
