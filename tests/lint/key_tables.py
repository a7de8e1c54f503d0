# SPDX-License-Identifier: BSL-1.0
"""Holds the tables of keys in the guides against the descriptions. Usage: key_tables.py KEY_TABLES ROOT [--write]

KEY_TABLES (tests/plan/key_tables.cpp) prints, for each section of a plan, `<!-- keys: NAME -->` and its tables. The page
docs/guides/plan-file/NAME.md must have the same between that line and `<!-- /keys -->`; --write puts it there.
"""
import re
import subprocess
import sys
from pathlib import Path


def main(program, root, write):
    printed = subprocess.run([program], stdout=subprocess.PIPE, check=True).stdout.decode()
    _, *parts = re.split(r'<!-- keys: (\w+) -->\n', printed)
    sections = dict(zip(parts[::2], parts[1::2]))
    bad = 0
    for name, tables in sections.items():
        page = Path(root) / 'docs/guides/plan-file' / f'{name}.md'
        text = page.read_text()
        found = re.search(rf'(<!-- keys: {name} -->\n)(.*?)(<!-- /keys -->)', text, re.S)
        if not found:
            bad += 1
            print(f'{page} has no place for the keys of [{name}]: <!-- keys: {name} --> and <!-- /keys -->')
        elif found.group(2) != tables + '\n':
            if write:
                page.write_text(text[:found.start(2)] + tables + '\n' + text[found.end(2):])
            else:
                bad += 1
                print(f'{page} is not what the descriptions say; key_tables.py --write, or the target guides')
    print(f'{len(sections)} sections, {printed.count(chr(10) + "| `")} keys, {bad} problems')
    return 1 if bad or len(sections) < 6 else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1], sys.argv[2], '--write' in sys.argv[3:]))
