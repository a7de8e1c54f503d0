# SPDX-License-Identifier: BSL-1.0
"""The C library: where it is, its functions, and their errors as exceptions."""
from __future__ import annotations

import ctypes
import json
import os
from functools import lru_cache
from pathlib import Path
from typing import Any

from .errors import OF_CODE, Internal

#: The version that this package belongs to; the library's major and minor must be the same.
VERSION = '0.2'

Progress = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_void_p, ctypes.c_size_t, ctypes.c_size_t)
NO_PROGRESS = ctypes.cast(ctypes.c_void_p(), Progress)

_text, _out, _plan = ctypes.c_char_p, ctypes.POINTER(ctypes.c_void_p), ctypes.c_void_p
_int, _size, _number = ctypes.c_int32, ctypes.c_size_t, ctypes.c_double
_numbers = ctypes.POINTER(ctypes.c_double)
# Arguments of each function but the last, which is the error's text.
_FUNCTIONS: dict[str, tuple[Any, ...]] = {
    'tw_plan_new': (_out,),
    'tw_plan_read': (_text, _size, _int, _out),
    'tw_plan_read_what_can_be': (_text, _size, _int, _out, _out),
    'tw_plan_starter': (_int, _out),
    'tw_plan_demo': (_out,),
    'tw_plan_copy': (_plan, _out),
    'tw_plan_write': (_plan, _int, _out),
    'tw_starter_text': (_int, _out),
    'tw_keys': (_out,),
    'tw_plan_set': (_plan, _text, _text),
    'tw_plan_set_si': (_plan, _text, _number),
    'tw_plan_get': (_plan, _text, _out),
    'tw_plan_get_si': (_plan, _text, _numbers),
    'tw_plan_clear': (_plan, _text),
    'tw_plan_add': (_plan, _text, _out),
    'tw_plan_values': (_plan, _out),
    'tw_plan_validate': (_plan, _out),
    'tw_plan_assess': (_plan, _text, ctypes.c_uint32, Progress, ctypes.c_void_p, _out),
    'tw_plan_findings': (_plan, _text, _out),
    'tw_plan_cures': (_plan, _text, _out),
    'tw_plan_text': (_plan, _int, ctypes.c_uint32, Progress, ctypes.c_void_p, _out),
    'tw_plan_page': (_plan, _int, ctypes.c_uint32, Progress, ctypes.c_void_p, _out),
    'tw_decisions': (_out,),
    'tw_formula_list': (_out,),
    'tw_formula_call': (_text, _text, _out),
    'tw_formula_find': (_text, ctypes.POINTER(_int), ctypes.POINTER(_size), ctypes.POINTER(_size)),
    'tw_formula_defaults': (_int, ctypes.c_void_p),
    'tw_formula_numbers': (_int, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_int),
}


def _places() -> list[str]:
    """Where the library may be: as TANKWRIGHT_LIBRARY says, beside this file, or where the system keeps libraries."""
    told = os.environ.get('TANKWRIGHT_LIBRARY')
    if told:
        return [told]
    here = Path(__file__).parent
    names = [f'libtankwright.so.{VERSION}', 'libtankwright.so', f'libtankwright.{VERSION}.dylib', 'libtankwright.dylib',
             'tankwright.dll']
    return [str(here / name) for name in names if (here / name).exists()] + names


@lru_cache(maxsize=None)
def library() -> ctypes.CDLL:
    """The C library, loaded once."""
    tried = []
    for place in _places():
        try:
            lib = ctypes.CDLL(place)
            break
        except OSError as e:
            tried.append(str(e))
    else:
        raise ImportError('libtankwright is not here: build it with examples/c_library/run.sh and set TANKWRIGHT_LIBRARY'
                          ' to the path that it prints (' + '; '.join(tried) + ')')
    try:
        lib.tw_version.restype = ctypes.c_char_p
        found = lib.tw_version().decode()
        lib.tw_free.argtypes, lib.tw_free.restype = (ctypes.c_void_p,), None
        lib.tw_plan_free.argtypes, lib.tw_plan_free.restype = (_plan,), _int
        for name, arguments in _FUNCTIONS.items():
            function = getattr(lib, name)
            function.argtypes, function.restype = (*arguments, _out), _int
    except AttributeError as e:
        raise ImportError(f'{place} is no tankwright of version {VERSION}: {e}') from None
    if found.rpartition('.')[0] != VERSION:
        raise ImportError(f'{place} is version {found}; this package belongs to version {VERSION}')
    return lib


def version() -> str:
    """The version of the library: "0.2.0"."""
    found: bytes = library().tw_version()
    return found.decode()


def taken(text: ctypes.c_void_p) -> str:
    """A text of the library's, which is freed."""
    lib = library()
    try:
        return ctypes.string_at(text.value).decode() if text.value else ''
    finally:
        lib.tw_free(text)


def refuse(code: int, error: ctypes.c_void_p) -> None:
    """Raise what a status means."""
    said = taken(error)
    data = json.loads(said) if said else {'code': code, 'message': 'there is not enough memory to say what is wrong'}
    raise OF_CODE.get(code, Internal)(data)


def call(name: str, *arguments: Any) -> None:
    """Call a function that gives nothing back."""
    error = ctypes.c_void_p()
    code = getattr(library(), name)(*arguments, ctypes.byref(error))
    if code != 0:
        refuse(code, error)


def text_of(name: str, *arguments: Any) -> str:
    """Call a function whose last result is a text."""
    out = ctypes.c_void_p()
    call(name, *arguments, ctypes.byref(out))
    return taken(out)


def utf8(text: object, what: str) -> bytes:
    """A text as C takes it; one with a zero byte would be cut short."""
    if not isinstance(text, str):
        raise TypeError(f'{what} must be a text, not {type(text).__name__}')
    if '\0' in text:
        raise OF_CODE[6]({'code': 6, 'name': 'bad_value', 'message': f'{what} has a zero byte in it'})
    return text.encode('utf-8', 'surrogatepass')  # what is no Unicode is refused by the library


@lru_cache(maxsize=None)
def key_list() -> dict[str, Any]:
    """Every key of a plan, their rules, and the units of every quantity."""
    keys: dict[str, Any] = json.loads(text_of('tw_keys'))
    return keys


@lru_cache(maxsize=None)
def units() -> dict[str, dict[str, tuple[float, float]]]:
    """Of each quantity its units by symbol and by name: (size, zero); SI = number * size + zero."""
    all_units: dict[str, dict[str, tuple[float, float]]] = {}
    for quantity in key_list()['quantities']:
        own = all_units[quantity['name']] = {}
        for unit in quantity['units']:
            own[unit['symbol']] = own[unit['name']] = (unit['size'], unit['zero'])
    return all_units
