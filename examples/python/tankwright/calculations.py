# SPDX-License-Identifier: BSL-1.0
"""Every formula of the library as a function, from the list that the library brings along."""
from __future__ import annotations

import ctypes
import difflib
import json
import keyword
import math
from functools import lru_cache
from types import SimpleNamespace
from typing import TYPE_CHECKING, Any

from .errors import BadValue
from .library import call, library, refuse, text_of, units, utf8
from .quantity import Quantity, from_data


class Result:
    """What a formula gives: its parts as attributes, and what must be said beside it.

    `cautions` and `source` stand beside every number of it. It can be an argument of another formula.
    """

    def __init__(self, value: Any, formula: str, arguments: dict[str, Any], cautions: tuple[str, ...], source: str) -> None:
        self.value = value  #: the parts by name; of a formula that gives one thing, that thing
        self.formula = formula
        self.arguments = arguments
        self.cautions = cautions
        self.source = source

    if not TYPE_CHECKING:  # the stubs know the parts of each result, and this would let every name pass
        def __getattr__(self, name: str) -> Any:
            value = self.__dict__.get('value')
            if isinstance(value, dict) and name in value:
                return value[name]
            known = list(value) if isinstance(value, dict) else []
            near = difflib.get_close_matches(name, known, 1)
            more = f'; did you mean {near[0]}?' if near else f'; it gives {", ".join(known)}' if known else ''
            raise AttributeError(f'{self.__dict__.get("formula", "a result")} gives no {name}{more}')

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *(self.value if isinstance(self.value, dict) else ())]

    def __repr__(self) -> str:
        parts = self.value.items() if isinstance(self.value, dict) else [('value', self.value)]
        lines = [f'{self.formula}:', *(f'  {k} = {v}' for k, v in parts if k != 'caution'),
                 *(f'  Caution: {c}' for c in self.cautions)]
        return '\n'.join(lines)

    def _repr_html_(self) -> str:
        from .report import escaped
        parts = self.value.items() if isinstance(self.value, dict) else [(self.formula, self.value)]
        rows = ''.join(f'<tr><td>{escaped(k)}</td><td>{escaped(v)}</td></tr>' for k, v in parts if k != 'caution')
        return f'<table>{rows}</table>' + ''.join(f'<p><b>Caution:</b> {escaped(c)}</p>' for c in self.cautions)


def _read(data: Any) -> Any:
    """A formula's result: numbers become quantities, tables stay tables."""
    if isinstance(data, dict):
        if 'quantity' in data and ('value' in data or 'central' in data):
            return from_data(data)
        return {key: _read(value) for key, value in data.items()}
    return [_read(value) for value in data] if isinstance(data, list) else data


def _given(value: Any) -> Any:
    """An argument as the library takes it."""
    if isinstance(value, Quantity):
        if value.is_sharp:
            return {'value': value.central, 'unit': value.unit} if value.unit else value.central
        band = {'low': value.low, 'central': value.central, 'high': value.high}
        return {**band, 'unit': value.unit} if value.unit else band
    if isinstance(value, Result):
        # What one formula makes is given to another by its name and its arguments.
        return {value.formula.rpartition('.')[2]: value.arguments}
    if isinstance(value, dict):
        return {key: _given(v) for key, v in value.items()}
    if isinstance(value, (list, tuple)):
        return [_given(v) for v in value]
    if isinstance(value, float) and not math.isfinite(value):
        raise BadValue({'code': 6, 'name': 'bad_value', 'message': f'{value} is no finite number'})
    return value


def argument_of(field: str) -> str:
    """A field as an argument: what is a word of Python has a line behind it, from_=30."""
    return field + '_' if keyword.iskeyword(field) else field


class Formula:
    """A formula: call it with keyword arguments.

    A text has its unit in it (`volume="2150 L"`), a number has it in the name (`volume_litres=2150`); a bare number is in
    SI. Several parts are a dict, or what another formula gave. `extrapolate=True` goes past the published ranges.
    """

    def __init__(self, name: str, rows: list[dict[str, Any]]) -> None:
        self.rows = rows  #: what the list says of it; several where the arguments decide
        self.name = name  #: "water.salt_for_new_water"
        self.short_name = name.rpartition('.')[2]
        self.folder: str = rows[0]['folder']
        self.source: str = rows[0].get('source', '')
        self.__name__ = self.short_name
        self.__doc__ = _docstring(rows)
        self._names: dict[str, tuple[str, str | None]] = {}
        for row in rows:
            for field in row['fields']:
                self._names[field['name']] = (field['name'], None)
                self._names[argument_of(field['name'])] = (field['name'], None)
        for row in rows:
            for field in row['fields']:
                if field['kind'] == 'quantity':
                    self._name_units(field)
        self._library_name = name.encode()
        self._numbers = _ByNumbers(rows[0]) if len(rows) == 1 and _ByNumbers.can(rows[0]) else None

    def _name_units(self, field: dict[str, Any]) -> None:
        """volume_litres, volume_L: the units of a field, where no field has such a name."""
        for unit in units().get(field['quantity'], {}):
            self._names.setdefault(f'{field["name"]}_{unit}', (field['name'], unit))

    def __call__(self, *, extrapolate: bool = False, **arguments: Any) -> Any:
        if self._numbers is not None:
            quick = self._numbers.answer(arguments, extrapolate)
            if quick is not None:
                return quick
        fields: dict[str, Any] = {}
        for name, value in arguments.items():
            if name not in self._names:
                self._refuse(name)
            field, unit = self._names[name]
            if field in fields:
                raise TypeError(f'{self.short_name}() is given {field} twice')
            if unit is not None and (isinstance(value, bool) or not isinstance(value, (int, float))):
                raise TypeError(f'{self.short_name}(): {name} has its unit in its name and must be a number, not {value!r}')
            fields[field] = _given(value)
            if unit is not None:
                size, zero = self._unit(field, unit)
                fields[field] = fields[field] * size + zero
        if extrapolate:
            fields['extrapolate'] = True
        said = json.loads(text_of('tw_formula_call', self._library_name, json.dumps(fields).encode()))
        value, cautions = _read(said['result']), tuple(said['cautions'])
        if isinstance(value, Quantity) and not cautions:
            return value
        return Result(value, said['formula'], fields, cautions, said['source'])

    def _unit(self, field: str, unit: str) -> tuple[float, float]:
        for row in self.rows:
            for f in row['fields']:
                if f['name'] == field and unit in units().get(f.get('quantity', ''), {}):
                    return units()[f['quantity']][unit]
        raise AssertionError(unit)

    def _refuse(self, name: str) -> None:
        near = difflib.get_close_matches(name, self._names, 1)
        fields = ', '.join(dict.fromkeys(field for field, unit in self._names.values() if unit is None))
        raise TypeError(f'{self.short_name}() has no argument {name}' + (f'; did you mean {near[0]}?' if near else '')
                        + f' It takes {fields}, each also with its unit behind it')

    def __repr__(self) -> str:
        return f'<formula {self.name}({", ".join(f["name"] for f in self.rows[0]["fields"])})>'


class _ByNumbers:
    """A formula that takes quantities and gives one, when it is given plain numbers: without any text between."""

    @staticmethod
    def can(row: dict[str, Any]) -> bool:
        return ('numbers' in row and row['result']['kind'] == 'quantity' and not row.get('cautions')
                and all(f['kind'] == 'quantity' for f in row['fields']))

    def __init__(self, row: dict[str, Any]) -> None:
        self._row = row
        self._places: dict[str, tuple[int, float, float]] | None = None  # made when it is first called

    def _prepare(self) -> dict[str, tuple[int, float, float]]:
        number, count, out = ctypes.c_int32(), ctypes.c_size_t(), ctypes.c_size_t()
        call('tw_formula_find', self._row['name'].encode(), ctypes.byref(number), ctypes.byref(count), ctypes.byref(out))
        places = {}
        for i, f in enumerate(self._row['fields']):
            places[f['name']] = places[argument_of(f['name'])] = (i, 1.0, 0.0)
        for i, f in enumerate(self._row['fields']):
            for unit, (size, zero) in units().get(f['quantity'], {}).items():
                places.setdefault(f'{f["name"]}_{unit}', (i, size, zero))
        self._number, self._array = number.value, ctypes.c_double * count.value
        defaults = self._array()
        call('tw_formula_defaults', number, ctypes.addressof(defaults))
        self._defaults = tuple(defaults)
        self._call = library().tw_formula_numbers
        self._quantity, self._unit = self._row['result']['quantity'], self._row['result']['unit']
        self._places = places
        return places

    def answer(self, arguments: dict[str, Any], extrapolate: bool) -> Quantity | None:
        """The answer; None where the arguments need the long way, which also says what is wrong with them."""
        places = self._places or self._prepare()
        given = self._array(*self._defaults)
        told = set()
        for name, value in arguments.items():
            place = places.get(name)
            if place is None or place[0] in told or type(value) not in (float, int):
                return None
            i, size, zero = place
            told.add(i)
            given[i] = value if size == 1.0 and zero == 0.0 else value * size + zero
        out, error = ctypes.c_double(), ctypes.c_void_p()
        code = self._call(self._number, ctypes.addressof(given), ctypes.addressof(out), extrapolate, ctypes.byref(error))
        if code:
            library().tw_free(error)
            return None  # the long way names the argument
        return Quantity(out.value, self._unit, self._quantity)


def _docstring(rows: list[dict[str, Any]]) -> str:
    """What the list says, as a docstring."""
    lines = []
    for row in rows:
        lines += [row['sentence'], '', '    ' + row['formula'] if row.get('formula') else '', '']
        for field in row['fields']:
            what = field.get('quantity') or field.get('type') or field['kind']
            said = f'{field["name"]}: {what}' + (f' [{field["unit"]}]' if field.get('unit') else '')
            lines.append(said + (f', {field["sentence"]}' if field.get('sentence') else '')
                         + ('' if field.get('required') else '; may be left out'))
        lines += [f'Returns {row["result"].get("sentence", "")}', f'Accuracy: {row.get("accuracy", "")}',
                  f'Source: {row.get("source", "")}', *(f'Caution: {c}' for c in row.get('cautions', ())), '']
    return '\n'.join(lines).strip()


@lru_cache(maxsize=None)
def _list() -> dict[str, Any]:
    listed: dict[str, Any] = json.loads(text_of('tw_formula_list'))
    return listed


@lru_cache(maxsize=None)
def formulas() -> dict[str, Formula]:
    """Every formula by its full name."""
    return {row['name']: Formula(row['name'], [row]) for row in _list()['formulas']}


@lru_cache(maxsize=None)
def _folder(folder: str) -> SimpleNamespace | None:
    rows = [row for row in _list()['formulas'] if row['folder'] == folder]
    return SimpleNamespace(**_by_short_name(rows)) if rows else None


def _by_short_name(rows: list[dict[str, Any]]) -> dict[str, Formula]:
    """Formulas by the last part of their names, and of those that only their arguments tell apart by the common one."""
    found: dict[str, Formula] = {}
    common: dict[str, list[dict[str, Any]]] = {}
    for row in rows:
        common.setdefault(row['function'].replace('tankwright::', '').replace('::', '.'), []).append(row)
    for name, own in common.items():
        found[name.rpartition('.')[2]] = Formula(name, own)
    for row in rows:
        found.setdefault(row['name'].rpartition('.')[2], Formula(row['name'], [row]))
    return found


def by_attribute(name: str) -> Any:
    """What `tankwright.<name>` is: a folder, or a formula whose name is in one folder alone."""
    folder = _folder(name)
    if folder is not None:
        return folder
    rows = [row for row in _list()['formulas']
            if name in (row['name'].rpartition('.')[2], row['function'].rpartition('::')[2])]
    folders = sorted({row['folder'] for row in rows})
    if len(folders) == 1:
        return getattr(_folder(folders[0]), name)
    if folders:
        raise AttributeError(f'{name} is in several folders: ' + ', '.join(f'tankwright.{f}.{name}' for f in folders))
    near = difflib.get_close_matches(name, [row['name'].rpartition('.')[2] for row in _list()['formulas']], 1)
    raise AttributeError(f"module 'tankwright' has no attribute {name!r}" + (f'; did you mean {near[0]}?' if near else ''))


class plain:
    """A formula on plain numbers in SI, for loops: `density = plain("water.density_with_practical_salinity")`, then
    `density(35.0, 298.15)`. One number comes back as a float, several as a tuple.

    Not for several threads at once: make one for each.
    """

    def __init__(self, name: str, *, extrapolate: bool = False) -> None:
        number, count, out = ctypes.c_int32(), ctypes.c_size_t(), ctypes.c_size_t()
        call('tw_formula_find', utf8(name, 'the name'), ctypes.byref(number), ctypes.byref(count), ctypes.byref(out))
        self.name = name
        self.takes: int = count.value
        self.gives: int = out.value
        self._in = (ctypes.c_double * count.value)()
        self._out = (ctypes.c_double * out.value)()
        self._error = ctypes.c_void_p()
        self._call = library().tw_formula_numbers
        self._fixed = (number, ctypes.addressof(self._in), ctypes.addressof(self._out), int(extrapolate),
                       ctypes.byref(self._error))

    def __call__(self, *numbers: float) -> Any:
        self._in[:] = list(numbers)
        code = self._call(*self._fixed)
        if code:
            error, self._error.value = ctypes.c_void_p(self._error.value), None
            refuse(code, error)
        return self._out[0] if self.gives == 1 else tuple(self._out)

    def __repr__(self) -> str:
        return f'<plain formula {self.name}: {self.takes} numbers to {self.gives}>'
