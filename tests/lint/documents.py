# SPDX-License-Identifier: BSL-1.0
"""Holds the Markdown pages against the repository. Usage: documents.py ROOT [--write]

* A relative link must lead to a file.
* A code block after `<!-- code: examples/x.cpp#region -->` must equal the lines of that file between `// [region]` and
  `// [/region]`, less their common indentation; `<!-- file: path -->` quotes a whole file. --write puts them right.
* A function named in backticks as `folder::name` must exist in the headers; in changes.md those of the last column, which
  says what is there now.
"""
import re
import sys
import textwrap
from pathlib import Path

QUOTE = re.compile(r'(<!-- (code|file): (\S+?)(?:#(\w+))? -->\n```\w*\n)(.*?)(```)', re.S)
FOLDERS = ('text', 'numerics', 'water', 'vessel', 'plumbing', 'room', 'life', 'plan', 'decisions', 'exchange')


def region(root, path, name):
    text = (root / path).read_text()
    if name is None:
        return text
    found = re.search(rf'^[ \t]*(?://|#) \[{name}\]\n(.*?)^[ \t]*(?://|#) \[/{name}\]', text, re.S | re.M)
    if not found:
        raise ValueError(f'{path} has no region [{name}]')
    return textwrap.dedent(found.group(1))


def main(root, write):
    root = Path(root).resolve()
    headers = '\n'.join(p.read_text() for p in (root / 'include').rglob('*.hpp'))
    pages = sorted([root / 'README.md', root / 'DEVELOPERS.md', *(root / 'docs').rglob('*.md')])
    bad = links = quotes = names = 0
    for page in pages:
        text = page.read_text()
        where = page.relative_to(root)

        def put_right(match):
            nonlocal bad, quotes
            quotes += 1
            try:
                wanted = region(root, match.group(3), match.group(4))
            except (OSError, ValueError) as error:
                bad += 1
                print(f'{where}: {error}')
                return match.group(0)
            if match.group(5) != wanted and not write:
                bad += 1
                print(f'{where}: the code from {match.group(3)} is not what that file says; documents.py --write')
            return match.group(1) + wanted + match.group(6)

        renewed = QUOTE.sub(put_right, text)
        if write and renewed != text:
            page.write_text(renewed)
        prose = re.sub(r'```.*?```', '', renewed, flags=re.S)
        for target in re.findall(r'\]\(([^)#\s]+)(?:#[^)]*)?\)', prose):
            if re.match(r'[a-z]+:', target):
                continue
            links += 1
            if not (page.parent / target).exists():
                bad += 1
                print(f'{where}: the link {target} leads nowhere')
        current = prose
        if page.name == 'changes.md':
            current = '\n'.join(line.rsplit('|', 2)[-2] for line in prose.split('\n') if line.startswith('| '))
        for folder, name in re.findall(r'`(?:tw::|tankwright::)?(\w+)::(\w+)', current):
            if folder in FOLDERS:
                names += 1
                if not re.search(rf'\b{name}\b', headers):
                    bad += 1
                    print(f'{where}: {folder}::{name} is not in the headers')
    print(f'{len(pages)} pages, {links} links, {quotes} quotes, {names} names, {bad} problems')
    return 1 if bad else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1], '--write' in sys.argv[2:]))
