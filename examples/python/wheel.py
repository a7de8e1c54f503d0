# SPDX-License-Identifier: BSL-1.0
"""Make a wheel with the C library inside: wheel.py LIBRARY FOLDER. Prints its path. Needs Python alone.

It fits machines like the one that built the library (`pip` checks the platform); `pip install` takes it as it is.
"""
import base64
import hashlib
import os
import re
import subprocess
import sys
import sysconfig
import tempfile
import zipfile
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
WHEN = (1980, 1, 1, 0, 0, 0)  # the same files make the same wheel


def version() -> str:
    text = (ROOT / 'include/tankwright/version.hpp').read_text()
    return re.search(r'TANKWRIGHT_VERSION "([0-9.]+)"', text).group(1)


def stripped(library: Path) -> bytes:
    """The library without what a debugger wants, where there is a tool for that."""
    with tempfile.TemporaryDirectory() as folder:
        smaller = Path(folder) / library.name
        try:
            subprocess.run(['strip', '-o', str(smaller), str(library)], check=True, capture_output=True)
            return smaller.read_bytes()
        except (OSError, subprocess.CalledProcessError):
            return library.read_bytes()


def make(library: Path, folder: Path) -> Path:
    release = version()
    tag = 'py3-none-' + re.sub(r'[.-]', '_', sysconfig.get_platform())
    info = f'tankwright-{release}.dist-info'
    content = {f'tankwright/{p.name}': p.read_bytes() for p in sorted((HERE / 'tankwright').iterdir())
               if p.suffix in ('.py', '.pyi') or p.name == 'py.typed'}
    own = re.sub(r'\.so[.0-9]*$', '.so', library.name)  # however long a version the file is named with
    content[f'tankwright/{own}'] = stripped(library)
    content[f'{info}/METADATA'] = (
        f'Metadata-Version: 2.1\nName: tankwright\nVersion: {release}\n'
        'Summary: Engineering calculations for people who build large saltwater displays by hand\n'
        'License: BSL-1.0\nRequires-Python: >=3.9\nProvides-Extra: figures\nRequires-Dist: matplotlib; extra == "figures"\n'
        'Description-Content-Type: text/markdown\n\n' + (HERE / 'README.md').read_text(encoding='utf-8')).encode()
    content[f'{info}/LICENSE'] = (ROOT / 'LICENSE').read_bytes()
    content[f'{info}/WHEEL'] = f'Wheel-Version: 1.0\nGenerator: wheel.py\nRoot-Is-Purelib: false\nTag: {tag}\n'.encode()
    record = ''
    for name, data in content.items():
        digest = base64.urlsafe_b64encode(hashlib.sha256(data).digest()).rstrip(b'=').decode()
        record += f'{name},sha256={digest},{len(data)}\n'
    content[f'{info}/RECORD'] = f'{record}{info}/RECORD,,\n'.encode()

    folder.mkdir(parents=True, exist_ok=True)
    wheel = folder / f'tankwright-{release}-{tag}.whl'
    beside = wheel.with_suffix('.part')
    with zipfile.ZipFile(beside, 'w', zipfile.ZIP_DEFLATED) as out:
        for name, data in content.items():
            entry = zipfile.ZipInfo(name, WHEN)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = (0o755 if name.endswith(library.suffix) else 0o644) << 16
            out.writestr(entry, data)
    os.replace(beside, wheel)
    return wheel


if __name__ == '__main__':
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    print(make(Path(sys.argv[1]), Path(sys.argv[2])))
