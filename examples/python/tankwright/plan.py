# SPDX-License-Identifier: BSL-1.0
"""Plans: read, changed by key, assessed, saved."""
from __future__ import annotations

import ctypes
import json
import os
from collections.abc import Callable, Iterator, Sequence
from typing import Any

from .errors import BadKey, Mistake
from .library import NO_PROGRESS, Progress, call, key_list, library, text_of, utf8
from .report import Cure, Report, cures_from

_NOTATIONS = {'toml': 0, 'json': 1}
_UNITS = {'si': 0, 'us': 1}
_BANDS, _CURES, _FIGURES, _COMPACT = 1, 2, 4, 8


def _word(word: str, known: dict[str, int], what: str) -> int:
    if word not in known:
        raise ValueError(f'{what} must be one of {", ".join(known)}, not {word!r}')
    return known[word]


def _as_text(value: object) -> str:
    """What a key is set to, as a file would hold it."""
    if isinstance(value, str):
        return value
    if isinstance(value, bool):
        return 'true' if value else 'false'
    if isinstance(value, (int, float)):
        return repr(value)  # a number without a unit: right for a salinity or a pH, refused for a length
    if isinstance(value, Sequence) and not isinstance(value, (bytes, bytearray)):
        return ', '.join(_as_text(v) for v in value)
    raise TypeError(f'a key is set to a text, a number, a bool or a list of them, not to a {type(value).__name__}')


class Plan:
    """A plan of a display: keys by their path, with the units they are written in.

    >>> plan["plumbing.return[left].below_edge"] = "35 mm +/- 5 mm"
    >>> plan["plumbing.return[left].below_edge"]
    '35 mm +/- 5 mm'
    >>> del plan["plumbing.sump"]

    A path names an element of a list by its label or by its number from 1. `tankwright.keys()` lists what there is.
    """

    def __init__(self, _handle: ctypes.c_void_p | None = None) -> None:
        if _handle is None:
            _handle = ctypes.c_void_p()
            call('tw_plan_new', ctypes.byref(_handle))
        self._handle = _handle

    def close(self) -> None:
        """Free the plan now; otherwise it goes with the object."""
        handle, self._handle = getattr(self, '_handle', None), ctypes.c_void_p()
        if handle:
            library().tw_plan_free(handle)

    def __del__(self) -> None:
        try:
            self.close()
        except Exception:  # the interpreter is going away, or the library never came
            pass

    # ---- keys -------------------------------------------------------------------------------------------------------

    def __getitem__(self, path: str) -> str | None:
        """What was given for a key, as text; None where nothing was."""
        return text_of('tw_plan_get', self._handle, utf8(path, 'the path')) or None

    def __setitem__(self, path: str, value: object) -> None:
        call('tw_plan_set', self._handle, utf8(path, 'the path'), utf8(_as_text(value), 'the value'))

    def __delitem__(self, path: str) -> None:
        """Take back a key, a table, a list or an element of one."""
        call('tw_plan_clear', self._handle, utf8(path, 'the path'))

    def __contains__(self, path: object) -> bool:
        """Whether a key was given or a table is there."""
        return isinstance(path, str) and any(v['path'] == path for v in self._values())

    def __iter__(self) -> Iterator[str]:
        return iter([v['path'] for v in self._values() if 'text' in v])

    def __len__(self) -> int:
        return sum('text' in v for v in self._values())

    def items(self) -> list[tuple[str, str]]:
        """Every key that was given, with its text."""
        return [(v['path'], v['text']) for v in self._values() if 'text' in v]

    def get(self, path: str, default: str | None = None) -> str | None:
        """What was given for a key; `default` where nothing was, or where its table is missing."""
        try:
            given = self[path]
        except BadKey:
            return default
        return default if given is None else given

    def add(self, path: str) -> str:
        """Add a table, or an element of a list of tables; its path."""
        return text_of('tw_plan_add', self._handle, utf8(path, 'the path'))

    def si(self, path: str) -> float:
        """The number of a key in SI, its default, or NaN."""
        out = ctypes.c_double()
        call('tw_plan_get_si', self._handle, utf8(path, 'the path'), ctypes.byref(out))
        return out.value

    def set_si(self, path: str, si: float) -> None:
        """Set the number of a key in SI; its unit and its doubt stay."""
        call('tw_plan_set_si', self._handle, utf8(path, 'the path'), si)

    def _values(self) -> list[dict[str, Any]]:
        values: list[dict[str, Any]] = json.loads(text_of('tw_plan_values', self._handle))['values']
        return values

    # ---- answers ----------------------------------------------------------------------------------------------------

    def validate(self) -> list[Mistake]:
        """All that is wrong; empty for a plan that can be assessed."""
        data = json.loads(text_of('tw_plan_validate', self._handle))
        return [Mistake(m['path'], m['reason'], clashes=m.get('clashes')) for m in data['mistakes']]

    def assess(self, finding: str | None = None, *, bands: bool = False, cures: bool = False, figures: bool = False,
               progress: Callable[[int, int], object] | None = None) -> Report:
        """The report: all findings, or those of one decision.

        bands:    everything doubtful varies, and verdicts go by their chance: takes a thousand times as long
        cures:    bands, what would hold, and what to measure first: takes longer still
        figures:  pictures, for `Report.figures` and `Finding.plot`
        progress: called with (done, of) now and then; a return value that is true stops it with `Cancelled`
        """
        parts = bands * _BANDS | cures * _CURES | figures * _FIGURES | _COMPACT
        which = None if finding is None else utf8(finding, 'the finding')
        said = _watched('tw_plan_assess', self._handle, which, parts, progress=progress)
        return Report(json.loads(said), by_chance=bands or cures)

    def cures(self, finding: str) -> list[Cure]:
        """What can still be changed so that a finding holds, the smallest change first."""
        return cures_from(json.loads(text_of('tw_plan_cures', self._handle, utf8(finding, 'the finding')))['cures'])

    def apply(self, cure: Cure) -> None:
        """Change the plan as a cure says."""
        for change in cure.changes:
            head, each, rest = change.path.partition('[]')
            if not each:
                self[change.path] = change.to
                continue
            for number in range(1, self._elements(head) + 1):
                self[f'{head}[{number}]{rest}'] = change.to

    def _elements(self, path: str) -> int:
        """How many elements a list of tables has."""
        return sum('text' not in v and v['path'].startswith(path + '[') and v['path'].endswith(']')
                   and '].' not in v['path'][len(path):] for v in self._values())

    def text(self, units: str = 'si', *, bands: bool = False, cures: bool = False) -> str:
        """The report for a terminal of 80 columns."""
        return text_of('tw_plan_text', self._handle, _word(units, _UNITS, 'units'), bands * _BANDS | cures * _CURES,
                       NO_PROGRESS, None)

    def page(self, units: str = 'si', *, bands: bool = False, cures: bool = False) -> str:
        """The report as one HTML page that needs nothing else."""
        return text_of('tw_plan_page', self._handle, _word(units, _UNITS, 'units'), bands * _BANDS | cures * _CURES,
                       NO_PROGRESS, None)

    # ---- as a whole -------------------------------------------------------------------------------------------------

    def to_toml(self) -> str:
        """The plan as TOML, with each key's sentence beside it."""
        return text_of('tw_plan_write', self._handle, 0)

    def to_json(self) -> str:
        """The plan as JSON."""
        return text_of('tw_plan_write', self._handle, 1)

    def save(self, path: str | os.PathLike[str]) -> None:
        """Write the plan as TOML, or as JSON where the name ends so. Who looks sees the old file or the new one."""
        path = os.fspath(path)
        text = self.to_json() if path.lower().endswith('.json') else self.to_toml()
        beside = f'{path}.{os.getpid()}.tmp'
        try:
            with open(beside, 'x', encoding='utf-8', newline='') as out:
                out.write(text)
            os.replace(beside, path)
        except BaseException:
            if os.path.exists(beside):
                os.unlink(beside)
            raise

    def copy(self) -> Plan:
        """Another plan that says the same."""
        handle = ctypes.c_void_p()
        call('tw_plan_copy', self._handle, ctypes.byref(handle))
        return Plan(handle)

    def __copy__(self) -> Plan:
        return self.copy()

    def __deepcopy__(self, memo: dict[int, Any]) -> Plan:
        return self.copy()

    def __reduce__(self) -> tuple[Any, tuple[str, str]]:
        return _unpickled, (self.to_json(), 'json')

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Plan):
            return self.to_json() == other.to_json()
        return NotImplemented

    __hash__ = None  # type: ignore[assignment]

    def __repr__(self) -> str:
        return f'<tankwright.Plan {self["title"] or "without a title"}, {len(self)} keys>' if self._handle else \
            '<tankwright.Plan, closed>'


def _unpickled(text: str, notation: str) -> Plan:
    return _reading(text.encode(), notation, strict=False)


def _watched(name: str, *arguments: Any, progress: Callable[[int, int], object] | None) -> str:
    """Call with a progress function; what it raises comes out here, not in C."""
    if progress is None:
        return text_of(name, *arguments, NO_PROGRESS, None)
    tell = progress
    raised: list[BaseException] = []

    def told(_context: object, done: int, of: int) -> int:
        try:
            return 1 if tell(done, of) else 0
        except BaseException as e:  # nothing may pass through C
            raised.append(e)
            return 1

    try:
        return text_of(name, *arguments, Progress(told), None)
    except Exception:
        if raised:
            raise raised[0] from None
        raise


def _reading(text: bytes, notation: str, strict: bool) -> Plan:
    handle, mistakes = ctypes.c_void_p(), ctypes.c_void_p()
    how = _word(notation, _NOTATIONS, 'notation')
    if strict:
        call('tw_plan_read', text, len(text), how, ctypes.byref(handle))
        return Plan(handle)
    call('tw_plan_read_what_can_be', text, len(text), how, ctypes.byref(handle), ctypes.byref(mistakes))
    library().tw_free(mistakes)
    return Plan(handle)


def read(path: str | os.PathLike[str]) -> Plan:
    """A plan from a file: TOML, or JSON where its name ends so. `BadPlan` has all its mistakes with their lines."""
    with open(path, 'rb') as file:
        text = file.read(1_000_002)  # the library refuses what is larger
    return _reading(text, 'json' if os.fspath(path).lower().endswith('.json') else 'toml', strict=True)


def read_text(text: str, notation: str = 'toml') -> Plan:
    """A plan from a text."""
    if not isinstance(text, str):
        raise TypeError(f'the plan must be a text, not {type(text).__name__}')
    return _reading(text.encode('utf-8', 'surrogatepass'), notation, strict=True)


def new() -> Plan:
    """A plan in which nothing is given."""
    return Plan()


def demo() -> Plan:
    """The plan of the invented lagoon that the documentation uses."""
    handle = ctypes.c_void_p()
    call('tw_plan_demo', ctypes.byref(handle))
    return Plan(handle)


def starter(units: str = 'si') -> Plan:
    """A short plan to begin with."""
    handle = ctypes.c_void_p()
    call('tw_plan_starter', _word(units, _UNITS, 'units'), ctypes.byref(handle))
    return Plan(handle)


def keys() -> list[dict[str, Any]]:
    """Every key that a plan may have: path, kind, sentence, quantity, limits, default, usual doubt, choices."""
    all_keys: list[dict[str, Any]] = key_list()['keys']
    return all_keys


def decisions() -> list[dict[str, str]]:
    """Every decision of the library, in the order of the job: id, day, question, consequence."""
    all_decisions: list[dict[str, str]] = json.loads(text_of('tw_decisions'))['decisions']
    return all_decisions
