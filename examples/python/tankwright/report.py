# SPDX-License-Identifier: BSL-1.0
"""What an assessment says: findings, their numbers, what would hold."""
from __future__ import annotations

import difflib
import html
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from .quantity import Quantity, from_data


def escaped(text: object) -> str:
    """Text that may stand in HTML."""
    return html.escape(str(text))


@dataclass(frozen=True)
class Change:
    """One key, changed."""
    path: str  #: a path with "[]" means the key of every element of the list
    before: str  #: empty: not given
    to: str


@dataclass(frozen=True)
class Moved:
    """A finding whose verdict a change moves."""
    id: str
    before: str
    after: str


@dataclass(frozen=True)
class Cure:
    """Something that can still be done so that a finding holds. `Plan.apply` does it."""
    do: str  #: one sentence
    changes: tuple[Change, ...]
    chance: float  #: that the margin is positive afterwards
    size: float  #: how much it changes, as a part of what could be chosen
    better: tuple[Moved, ...]
    worse: tuple[Moved, ...]

    def __str__(self) -> str:
        return self.do


def cures_from(data: list[dict[str, Any]]) -> list[Cure]:
    """The cures of one finding."""
    def moved(all_moved: list[dict[str, str]]) -> tuple[Moved, ...]:
        return tuple(Moved(m['id'], m['before'], m['after']) for m in all_moved)
    return [Cure(c['do'], tuple(Change(ch['path'], ch['from'], ch['to']) for ch in c['changes']), c['chance'], c['size'],
                 moved(c['better']), moved(c['worse'])) for c in data]


class Finding:
    """One decision, answered. `finding["left"]` is a number of it; `float(finding.margin)` the margin in SI."""

    def __init__(self, data: dict[str, Any], figures: list[dict[str, Any]]) -> None:
        self.data = data
        self.id: str = data['id']
        self.day: str = data['day']
        self.question: str = data['question']
        self.consequence: str = data['consequence']
        self.verdict: str = data['verdict']  #: "holds", "thin margin", "does not hold", ...
        self.recommendation: bool = data['recommendation']  #: its limit is advice
        self.happens: str = data['happens']  #: in plain words; empty where the numbers say it
        self.note: str = data['note']
        self.caution: str = data['caution']  #: show it where you show the number
        self.measure_next: list[str] = data['measure_next']
        self.sources: list[dict[str, Any]] = data['sources']
        self.numbers = [from_data(n) for n in data['numbers']]
        for place in data['places']:
            self.numbers += [from_data({**n, 'place': place['place']}) for n in place['numbers']]
        self.figures = figures  #: where they were asked for
        self.cures = cures_from(data.get('would_hold', []))  #: where they were asked for
        self.chance: float | None = data.get('chance')  #: that the margin is positive, where bands were asked for

    @property
    def margin(self) -> Quantity | None:
        """The margin that decides; None where there is none. Positive: so much is left."""
        deciding = self.data.get('margin')
        return None if deciding is None else self.number(deciding['id'], deciding['place'])

    @property
    def holds(self) -> bool:
        """Whether the verdict is "holds"."""
        return self.verdict == 'holds'

    def number(self, id: str, place: str | None = None) -> Quantity:
        """A number by its id, and its place where there are several."""
        for n in self.numbers:
            if n.id == id and (place is None or n.place == place):
                return n
        raise KeyError(f'{self.id} has no number {id!r}' + (f' at {place!r}' if place else '') + '; it has '
                       + ', '.join(dict.fromkeys(n.id for n in self.numbers)))

    __getitem__ = number

    def __repr__(self) -> str:
        margin = f', margin {self.margin}' if self.margin is not None else ''
        return f'<{self.id}: {self.verdict}{margin}>'

    def _repr_html_(self) -> str:
        rows = ''.join(f'<tr><td>{escaped(n.label)}{escaped(", " + n.place if n.place else "")}</td>'
                       f'<td style="text-align:right">{escaped(n)}</td></tr>' for n in self.numbers)
        parts = [f'<h4>{escaped(self.question)}</h4>', f'<p><b>{escaped(self.verdict)}</b>'
                 + (f': {escaped(self.happens)}' if self.happens else '') + '</p>', f'<table>{rows}</table>']
        parts += [f'<p>{escaped(self.note)}</p>'] * bool(self.note)
        parts += [f'<p><b>Caution:</b> {escaped(self.caution)}</p>'] * bool(self.caution)
        return ''.join(parts)

    def plot(self, axes: Any = None) -> Any:
        """Draw its first figure with matplotlib, and give the axes. Assess with `figures=True`."""
        if not self.figures:
            raise ValueError(f'{self.id} has no figure; assess with figures=True')
        from .drawing import draw
        return draw(self.figures[0], axes)


class Report:
    """An assessment: findings by their id, in the order of the job."""

    def __init__(self, data: dict[str, Any], by_chance: bool = False) -> None:
        self.data = data
        self.title: str = data['title']
        self.by_chance = by_chance  #: verdicts by chance with everything doubtful varying; else by central values
        self.measure_first: list[dict[str, str]] = data['measure_first']
        self.figures: list[dict[str, Any]] = data['figures']
        self.findings = [Finding(f, [p for p in self.figures if p['id'] == f['id']])
                         for f in data['findings']]

    def __getitem__(self, id: str) -> Finding:
        for f in self.findings:
            if f.id == id:
                return f
        near = difflib.get_close_matches(id, [f.id for f in self.findings], 1)
        raise KeyError(f'the report has no finding {id!r}' + (f'; did you mean {near[0]}?' if near else ''))

    def __contains__(self, id: object) -> bool:
        return any(f.id == id for f in self.findings)

    def __iter__(self) -> Iterator[Finding]:
        return iter(self.findings)

    def __len__(self) -> int:
        return len(self.findings)

    def with_verdict(self, verdict: str) -> list[Finding]:
        """The findings with a verdict: "does not hold"."""
        return [f for f in self.findings if f.verdict == verdict]

    def __repr__(self) -> str:
        count: dict[str, int] = {}
        for f in self.findings:
            count[f.verdict] = count.get(f.verdict, 0) + 1
        return f'<report {self.title!r}: ' + ', '.join(f'{n} {v}' for v, n in count.items()) + '>'

    def _repr_html_(self) -> str:
        rows = ''.join(f'<tr><td>{escaped(f.id)}</td><td>{escaped(f.happens or f.question)}</td><td>{escaped(f.verdict)}</td>'
                       f'<td style="text-align:right">{escaped(f.margin if f.margin is not None else "")}</td></tr>'
                       for f in self.findings)
        cautions = ''.join(f'<li>{escaped(c)}</li>' for c in dict.fromkeys(f.caution for f in self.findings) if c)
        return (f'<h3>{escaped(self.title)}</h3><table><tr><th>finding</th><th></th><th>verdict</th><th>margin</th></tr>{rows}'
                f'</table><p><b>Cautions</b></p><ul>{cautions}</ul>')
