# SPDX-License-Identifier: BSL-1.0
"""Figures with matplotlib, where that is installed."""
from __future__ import annotations

from importlib import import_module
from typing import Any

_FILL = {'water': '#9ecae1', 'rise': '#fdae6b', 'wall': '#636363', 'room': '#f0f0f0'}
_DAY = 86400.0


def draw(figure: dict[str, Any], axes: Any = None) -> Any:
    """Draw a figure of a report: curves over two axes, or rectangles to scale. The axes come back."""
    try:
        plt: Any = import_module('matplotlib.pyplot')
    except ImportError as e:
        raise ImportError('drawing needs matplotlib; without it the figure is data: finding.figures') from e
    if axes is None:
        axes = plt.subplots()[1]
    axes.set_title(figure['title'])
    for curve in figure.get('curves', ()):
        _curve(axes, figure, curve)
    for r in figure.get('rectangles', ()):
        axes.add_patch(plt.Rectangle((r['left'], r['bottom']), r['width'], r['height'], facecolor=_FILL.get(r['fill'], 'none'),
                                     edgecolor='#636363', linewidth=0.5))
        if r['label']:
            axes.text(r['left'] + r['width'] / 2, r['bottom'] + r['height'] / 2, r['label'], ha='center', va='center')
    if figure.get('rectangles'):
        axes.set_aspect('equal')
        axes.autoscale_view()
        axes.set_xlabel('m')
        axes.set_ylabel('m')
    else:
        axes.set_xlabel(_label(figure['x_axis']))
        axes.set_ylabel(_label(figure['y_axis']))
        axes.legend()
    return axes


def _scale(axis: dict[str, Any]) -> float:
    return _DAY if axis['quantity'] == 'duration' else 1.0


def _label(axis: dict[str, Any]) -> str:
    label: str = axis['label']
    unit = 'd' if axis['quantity'] == 'duration' else axis['unit']
    return f'{label} [{unit}]' if unit else label


def _curve(axes: Any, figure: dict[str, Any], curve: dict[str, Any]) -> None:
    across, up = _scale(figure['x_axis']), _scale(figure['y_axis'])
    x = [v / across if v is not None else float('nan') for v in curve['x']]
    y = [v / up if v is not None else float('nan') for v in curve['y']]
    style = {'line': '-', 'points': 'o', 'dashed': '--'}[curve['stroke']]
    line = axes.plot(x, y, style, label=curve['label'])[0]
    if curve.get('low') and curve.get('high'):
        axes.fill_between(x, [v / up for v in curve['low']], [v / up for v in curve['high']], alpha=0.2, color=line.get_color())
