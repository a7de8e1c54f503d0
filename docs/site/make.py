# SPDX-License-Identifier: BSL-1.0
"""Gathers the pages of docs/ for the site and writes its configuration. Usage: make.py ROOT FOLDER [FORM.html [REFERENCE]]

FOLDER gets pages/ and mkdocs.yml; the site itself is made of them by mkdocs. What a page links to outside docs/ (headers,
examples) comes along as a page of its own, so that every link leads somewhere without a network. FORM is the page of
examples/web, REFERENCE the folder of the reference pages, where they have been built.
"""
import json
import os
import re
import shutil
import sys
from pathlib import Path

root, folder = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
calculators = Path(sys.argv[3]).with_name('calculators.js') if len(sys.argv) > 3 else None  # made beside the form
pages = folder / 'pages'
shutil.rmtree(pages, ignore_errors=True)
docs = root / 'docs'
COPIED = ('.png', '.svg', '.csv', '.json')
LINK = re.compile(r'(!?\[[^\]]*\]\()([^)#\s]+)((?:#[^)]*)?\))')


def title_of(path):
    found = re.search(r'^# (.+)$', path.read_text(), re.M)
    return found.group(1).replace('`', '') if found else path.stem


sources = {}  # files outside docs that pages lead to -> their page
readmes = {}  # the same for README.md of the front ends


def page_of_source(target):
    """A header or an example as a page: its text in a listing."""
    if target not in sources:
        name = Path('sources') / target.relative_to(root)
        sources[target] = name.with_name(name.name + '.md')
        language = {'.hpp': 'cpp', '.cpp': 'cpp', '.ipp': 'cpp', '.h': 'c', '.py': 'python', '.toml': 'toml'}.get(target.suffix, 'text')
        text = f'# {target.relative_to(root)}\n\n```{language}\n{target.read_text()}\n```\n'
        (pages / sources[target]).parent.mkdir(parents=True, exist_ok=True)
        (pages / sources[target]).write_text(text)
    return sources[target]


def gathered(page, to):
    """The text of a page with its links as they are in the site."""
    def lead(match):
        target = match.group(2)
        if re.match(r'[a-z]+:', target):
            return match.group(0)
        path = (page.parent / target).resolve()
        if path.is_dir():
            path = path / 'README.md'
        if path == root / 'README.md':
            new = pages / 'index.md'
        elif path.is_relative_to(docs) and path.suffix in COPIED + ('.md',):
            new = pages / path.relative_to(docs)
            if path == docs / 'README.md':
                new = pages / 'contents.md'
        elif path == root / 'DEVELOPERS.md':
            new = pages / path.name
        elif path.suffix == '.md':
            new = pages / page_of_readme(path)
        elif path.suffix in ('.png', '.svg'):
            new = pages / path.name
        elif path.is_file():
            new = pages / page_of_source(path)
        else:
            raise SystemExit(f'{page}: the link {target} leads nowhere')
        return match.group(1) + os.path.relpath(new, to.parent) + match.group(3)

    parts = re.split(r'(```.*?```)', page.read_text(), flags=re.S)
    return ''.join(part if part.startswith('```') else LINK.sub(lead, part) for part in parts)


FORMULAS = json.loads((root / 'examples/formulas/formulas.json').read_text())['formulas']
with_calculators = {}  # theory page -> the formulas of its calculator


def formulas_of(paragraph):
    """The formulas that a paragraph names, in its order: `water::density`, and `drain_number` of the folder named before."""
    folder, found = '', []
    for name in re.findall(r'`([a-z_:0-9]+)`', paragraph):
        if '::' in name:
            folder = name.split('::')[0]
        own = f'tankwright::{folder}::{name.split("::")[-1]}'
        # Functions of one name are a formula each: density_with_practical_salinity, density_with_absolute_salinity.
        found += [f['name'] for f in FORMULAS if f['function'] == own and f['name'] not in found]
    return found


def with_calculator(text, name):
    """A theory page with the button of its calculators behind the functions that it names."""
    paragraph = re.search(r'^\*\*Functions?\.\*\*.*?(?:\n\n|\Z)', text, re.M | re.S)
    names = formulas_of(paragraph.group(0)) if paragraph else []
    if not names:
        return text
    with_calculators[name] = names
    count = 'this formula' if len(names) == 1 else f'these {len(names)} formulas'
    box = f'<div class="calculators" data-formulas="{" ".join(names)}"><button type="button" class="md-button" hidden>Calculate with {count}</button></div>\n\n'
    return text[:paragraph.end()] + box + text[paragraph.end():]


def put(page, name):
    to = pages / name
    to.parent.mkdir(parents=True, exist_ok=True)
    text = gathered(page, to)
    to.write_text(with_calculator(text, name) if calculators and name.startswith('theory/') else text)
    return name


def page_of_readme(page):
    """What a folder outside docs says of itself: examples/web/README.md is the page front-ends/web.md."""
    if page not in readmes:
        readmes[page] = str(Path('front-ends') / f'{page.parent.name}.md')
        put(page, readmes[page])
    return readmes[page]


pages.mkdir(parents=True)
for page in sorted(docs.rglob('*')):
    own = page.relative_to(docs)
    if own.parts[0] == 'site' or page.is_dir():
        continue
    if page.suffix == '.md':
        put(page, 'contents.md' if own == Path('README.md') else str(own))
    elif page.suffix in COPIED:
        (pages / own).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(page, pages / own)
put(root / 'README.md', 'index.md')
put(root / 'DEVELOPERS.md', 'DEVELOPERS.md')
shutil.copy(root / 'LICENSE', pages / 'LICENSE.txt')
(pages / 'index.md').write_text((pages / 'index.md').read_text().replace('sources/LICENSE.md', 'LICENSE.txt'))


def linked(name):
    """[title, page] of the pages that a page links to, in its order."""
    found, seen = [], set()
    for _, target, _ in LINK.findall((pages / name).read_text()):
        own = os.path.normpath(Path(name).parent / target)
        if own.endswith('.md') and not own.startswith('sources') and own not in seen and (pages / own).exists():
            seen.add(own)
            found.append(own)
    return found


contents = linked('contents.md')
nav = [{'Start': 'index.md'}, {'Contents': 'contents.md'}]
taken = set()
for heading, under in (('Guides', 'guides/'), ('Tables', 'tables/'), ('Theory', 'theory/')):
    own = [p for p in contents if p.startswith(under)]
    own += sorted(str(p.relative_to(pages)) for p in (pages / under).rglob('*.md') if str(p.relative_to(pages)) not in own)
    nav.append({heading: [{title_of(pages / p): p} for p in own]})
    taken |= set(own)
rest = sorted(p.name for p in pages.glob('*.md') if p.name not in ('index.md', 'contents.md'))
extra = [{title_of(pages / p): p} for p in [*sorted(readmes.values()), *rest]]
if len(sys.argv) > 4:
    shutil.copytree(sys.argv[4], pages / 'reference')
    extra.insert(0, {'Reference of the headers': 'reference/index.html'})
if len(sys.argv) > 3 and Path(sys.argv[3]).is_file():
    shutil.copy(sys.argv[3], pages / 'form.html')
    nav.insert(1, {'Your plan, in the browser': 'form.html'})
    for script in (calculators, docs / 'site' / 'calculator.js'):
        shutil.copy(script, pages / script.name)
nav.append({'More': extra})
nav.append({'Sources': [{str(Path(str(p)).with_suffix('').relative_to('sources')): str(p)} for p in sorted(sources.values())]})

(folder / 'mkdocs.yml').write_text('# Written by docs/site/make.py\n' + json.dumps({
    'site_name': 'tankwright', 'site_description': 'Engineering calculations for large saltwater displays built by hand',
    'docs_dir': 'pages', 'site_dir': 'site', 'use_directory_urls': False, 'strict': True, 'nav': nav,
    'extra_css': ['site.css'], 'extra_javascript': ['calculator.js'] if calculators else [], 'plugins': ['search'],
    'markdown_extensions': ['tables', 'fenced_code', {'toc': {'permalink': True}}, 'pymdownx.highlight', 'pymdownx.superfences'],
    'theme': {'name': 'material', 'font': False, 'features': ['navigation.top', 'toc.follow', 'search.highlight', 'content.code.copy'],
              'palette': [{'media': '(prefers-color-scheme: light)', 'scheme': 'default', 'primary': 'teal',
                           'toggle': {'icon': 'material/weather-night', 'name': 'Dark'}},
                          {'media': '(prefers-color-scheme: dark)', 'scheme': 'slate', 'primary': 'teal',
                           'toggle': {'icon': 'material/weather-sunny', 'name': 'Light'}}]}}, indent=1, ensure_ascii=False))
shutil.copy(docs / 'site' / 'site.css', pages / 'site.css')
(folder / 'calculators.json').write_text(json.dumps(with_calculators, indent=1))
print(f'{len(list(pages.rglob("*.md")))} pages in {pages}, {len(with_calculators)} with calculators')
