# SPDX-License-Identifier: BSL-1.0
"""Every link of the built site leads to a file, and to a place in it; nothing is fetched from elsewhere. Usage: links.py SITE"""
import re
import sys
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote

site = Path(sys.argv[1]).resolve()


class Reader(HTMLParser):
    def __init__(self):
        super().__init__()
        self.links, self.places, self.fetched = [], set(), []

    def handle_starttag(self, tag, attributes):
        given = dict(attributes)
        self.places |= {given[k] for k in ('id', 'name') if given.get(k)}
        if tag == 'a' and given.get('href'):
            self.links.append(given['href'])
        for key in ('src', 'href'):
            value = given.get(key) or ''
            if tag in ('script', 'img', 'link', 'iframe') and value:
                (self.fetched if re.match(r'(https?:)?//', value) and given.get('rel') != 'canonical' else self.links).append(value)


pages = {}
for path in site.rglob('*.html'):
    if 'reference' in path.relative_to(site).parts or path.name == 'form.html':
        continue
    reader = Reader()
    reader.feed(path.read_text())
    pages[path] = reader
bad = links = 0
for path, reader in pages.items():
    for url in reader.fetched:
        bad += 1
        print(f'{path.relative_to(site)}: fetches {url}')
    for link in reader.links:
        if re.match(r'[a-z]+:|//', link) or link == '/':
            continue
        links += 1
        name, _, place = unquote(link).partition('#')
        target = (path.parent / name.split('?')[0]).resolve() if name else path
        if target.is_dir():
            target = target / 'index.html'
        if path.name == '404.html':
            continue
        if not target.exists():
            bad += 1
            print(f'{path.relative_to(site)}: {link} leads nowhere')
        elif place and target in pages and place not in pages[target].places:
            bad += 1
            print(f'{path.relative_to(site)}: {link}: no such place')
print(f'{len(pages)} pages, {links} links, {bad} problems')
sys.exit(1 if bad else 0)
