# SPDX-License-Identifier: BSL-1.0
"""What can go wrong, with everything that is known about it."""
from __future__ import annotations

from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True)
class Mistake:
    """One thing that is wrong with a plan."""
    path: str
    reason: str  #: reads on from the path
    line: int | None = None  #: of the text it was read from, from 1
    pointer: str | None = None  #: JSON Pointer, in JSON
    clashes: str | None = None  #: path of the key that it cannot be true with

    def __str__(self) -> str:
        where = f'line {self.line}: ' if self.line else ''
        return f'{where}{self.path}: {self.reason}' + (f' ({self.clashes})' if self.clashes else '')


class Error(Exception):
    """Base of all errors of this package; `data` holds everything that the library said."""

    def __init__(self, data: dict[str, Any]) -> None:
        super().__init__(data.get('message', ''))
        self.data = data
        self.message: str = data.get('message', '')  #: one line for a person
        self.code: int = data.get('code', 0)
        self.path: str | None = data.get('path')  #: the key of a plan, or the id of a finding
        self.function: str | None = data.get('function')
        self.argument: str | None = data.get('argument') or data.get('field')
        self.value: float | None = data.get('value')  #: in `unit`
        self.low: float | None = data.get('low')  #: the limits
        self.high: float | None = data.get('high')
        self.unit: str | None = data.get('unit')
        self.source: str | None = data.get('source')  #: whose limits they are
        self.expected: str | None = data.get('expected')  #: of a text
        self.nearest: str | None = data.get('nearest')  #: a name that there is
        self.line: int | None = data.get('line')  #: of a text
        self.mistakes = [Mistake(m['path'], m['reason'], m.get('line'), m.get('pointer'), m.get('clashes'))
                         for m in data.get('mistakes', ())]

    def __str__(self) -> str:  # a KeyError would put it in quotation marks
        return self.message

    def __reduce__(self) -> tuple[type, tuple[dict[str, Any]]]:
        return type(self), (self.data,)


class BadHandle(Error, ValueError):
    """The plan was closed."""


class BadArgument(Error, ValueError):
    """An option, a finding or a formula that there is not."""


class BadDocument(Error, ValueError):
    """A text that is neither TOML nor JSON."""


class BadPlan(Error, ValueError):
    """A plan that cannot be assessed; `mistakes` has all that is wrong."""


class BadKey(Error, KeyError):
    """A path that names no key of a plan."""


class BadValue(Error, ValueError):
    """A text or a number that is not what the key or the argument holds."""


class InvalidInput(Error, ValueError):
    """Describes nothing that can exist."""


class OutOfRange(Error, ValueError):
    """Can exist, but lies outside the published range; pass `extrapolate=True` to go past it."""

    def __init__(self, data: dict[str, Any]) -> None:
        super().__init__(data)
        self.message = self.message.replace('pass tankwright::extrapolate', 'pass extrapolate=True')


class NoConvergence(Error, ArithmeticError):
    """A solver did not reach its tolerance."""


class Cancelled(Error):
    """The progress function said so."""


class NoMemory(Error, MemoryError):
    """There is not enough memory."""


class Internal(Error, RuntimeError):
    """A fault of the library; please report it with its message."""


OF_CODE: dict[int, type[Error]] = {1: BadHandle, 2: BadArgument, 3: BadDocument, 4: BadPlan, 5: BadKey, 6: BadValue,
                                   7: InvalidInput, 8: OutOfRange, 9: NoConvergence, 10: Cancelled, 11: NoMemory,
                                   12: Internal}
