# SPDX-License-Identifier: BSL-1.0
"""A number with its unit and its band."""
from __future__ import annotations

import math
from typing import Any

from .errors import BadValue
from .library import units


def _digits(x: float | None) -> str:
    return 'unknown' if x is None or math.isnan(x) else f'{x:.4g}'


class Quantity:
    """A number of an answer, in SI, and its band from `low` to `high` where it is an estimate.

    `to` gives it in another unit; `float` gives the middle in SI.
    """
    __slots__ = ('low', 'central', 'high', 'unit', 'quantity', 'reason', 'id', 'label', 'place', 'role')

    def __init__(self, central: float, unit: str, quantity: str, low: float | None = None, high: float | None = None,
                 reason: str = '', id: str = '', label: str = '', place: str = '', role: str = '') -> None:
        self.central = math.nan if central is None else central
        self.low = self.central if low is None else low
        self.high = self.central if high is None else high
        self.unit = unit  #: SI unit; empty for a pure number
        self.quantity = quantity  #: "length"
        self.reason = reason  #: for the band; empty where there is none
        self.id = id  #: of a finding's number: "left"
        self.label = label
        self.place = place  #: "left return", where there are several
        self.role = role  #: "answer", "limit", "margin", "detail"

    def _in(self, si: float, unit: str) -> float:
        if unit == self.unit:
            return si
        known = units().get(self.quantity, {})
        if unit not in known:
            raise BadValue({'code': 6, 'name': 'bad_value', 'message': f'{unit} is no unit of a {self.quantity}; known are '
                            + ', '.join(known), 'text': unit})
        size, zero = known[unit]
        return (si - zero) / size

    def to(self, unit: str) -> float:
        """The middle in a unit, by its symbol ("mm", "US gal") or its name ("millimetres")."""
        return self._in(self.central, unit)

    def band(self, unit: str | None = None) -> tuple[float, float]:
        """From where to where it may lie."""
        unit = self.unit if unit is None else unit
        return self._in(self.low, unit), self._in(self.high, unit)

    @property
    def si(self) -> float:
        """The middle in SI."""
        return self.central

    @property
    def is_sharp(self) -> bool:
        """Whether it has no band."""
        return self.low == self.high

    def __float__(self) -> float:
        return self.central

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Quantity):
            return (self.quantity, self.low, self.central, self.high) == (other.quantity, other.low, other.central, other.high)
        return NotImplemented

    __hash__ = None  # type: ignore[assignment]

    def __format__(self, how: str) -> str:
        return format(self.central, how) if how else str(self)

    def __str__(self) -> str:
        text = _digits(self.central) if self.is_sharp else \
            f'{_digits(self.central)} ({_digits(self.low)} to {_digits(self.high)})'
        return f'{text} {self.unit}'.rstrip()

    def __repr__(self) -> str:
        return f'<{self.label or self.quantity}: {self}>'


def from_data(data: dict[str, Any]) -> Quantity:
    """A number of a report or of a formula's result."""
    central = data.get('central', data.get('value'))
    return Quantity(central, data.get('unit', ''), data.get('quantity', 'number'), data.get('low'), data.get('high'),
                    data.get('band') or data.get('reason') or '', data.get('id', ''), data.get('label', ''),
                    data.get('place', ''), data.get('role', ''))
