#!/usr/bin/env python3
# SPDX-License-Identifier: BSL-1.0
"""Draws evaporation.svg (with gnuplot) and prints the table of docs/theory/evaporation.md.

The correlations are written down here a second time, independently of the headers, from the formulas that the page quotes.
Usage: evaporation.py [--table]
"""
import math
import subprocess
import sys
from pathlib import Path

P = 101325.0


def saturation(t):
    """Hyland and Wexler over water, Pa; t in degC."""
    k = t + 273.15
    return math.exp(-5800.2206 / k + 1.3914993 - 0.048640239 * k + 4.1764768e-5 * k**2 - 1.4452093e-8 * k**3
                    + 6.5459673 * math.log(k))


def ratio(p):
    return 0.621945 * p / (P - p)


def dry_density(t, p):
    return (P - p) / (287.042 * (t + 273.15))


def latent(t):
    return 2501.0 - 2.361 * t  # kJ/kg


def state(tw, ta, humidity, activity=1.0):
    return {'tw': tw, 'ta': ta, 'pw': activity * saturation(tw), 'pa': humidity * saturation(ta)}


def dalton(s):
    return s['pw'] - s['pa']


def shah(s):
    light = dry_density(s['ta'], s['pa']) - dry_density(s['tw'], s['pw'])
    natural = 35 * dry_density(s['tw'], s['pw']) * max(light, 0.0) ** (1 / 3) * (ratio(s['pw']) - ratio(s['pa']))
    return max(natural, 5e-5 * dalton(s), key=abs)


def vdi(s, beta):
    return beta / (461.52 * (273.15 + 0.5 * (s['tw'] + s['ta']))) * dalton(s)


def carrier(s, v=0.0):
    return 3600 * 1e-3 * dalton(s) * (0.089 + 0.0782 * v) / latent(s['tw'])


def smith(s, v=0.0):
    return (30.6 + 32.1 * v) * dalton(s) / 133.322387415 / latent(s['tw'])


def rafferty(s):
    psi = dalton(s) / 6894.757293168
    return 1 / 0.018 * psi * 144 / (85.74 * (s['tw'] * 1.8 + 32 + 460)) * 0.45359237 / 0.09290304


def analogy(s):
    def moist(t, p):
        return dry_density(t, p) * (1 + ratio(p))
    light = moist(s['ta'], s['pa']) - moist(s['tw'], s['pw'])
    if light <= 0:
        return None
    film = 273.15 + 0.5 * (s['tw'] + s['ta'])
    d = 1.87e-10 * film**2.072
    mu = 1.716e-5 * (film / 273.15) ** 1.5 * (273.15 + 110.4) / (film + 110.4)
    rv = 287.042 / 0.621945
    return 3600 * 0.15 * d * (9.80665 * light / (mu * d)) ** (1 / 3) * (
        s['pw'] / rv / (s['tw'] + 273.15) - s['pa'] / rv / (s['ta'] + 273.15))


LAWS = [
    ('Shah (the default)', shah),
    ('ASHRAE, activity 0.5', lambda s: 3600 * 4e-8 * 0.5 * dalton(s)),
    ('ASHRAE, activity 1.0', lambda s: 3600 * 4e-8 * dalton(s)),
    ('Carrier, no air movement', carrier),
    ('Smith, Jones and Löf 1993', lambda s: 0.76 * carrier(s)),
    ('Smith, Löf and Jones 1994, no air movement †', smith),
    ('Smith, Löf and Jones 1998', lambda s: 0.74 * carrier(s)),
    ('VDI 2089, unoccupied', lambda s: vdi(s, 7)),
    ('VDI 2089, covered', lambda s: vdi(s, 0.7)),
    ('VDI 2089, private pool in use', lambda s: vdi(s, 21)),
    ('VDI 2089 of 1994, still', lambda s: 5e-5 * dalton(s)),
    ('(25 + 19 v)(x_s − x), v = 0', lambda s: 25 * (ratio(s['pw']) - ratio(s['pa']))),
    ('Rafferty 1986, no wind', rafferty),
    ('Pauken 1999, no air movement †', lambda s: 0.074 * (dalton(s) / 1e3) ** 1.22),
    ('Box 1876 †', lambda s: 7.78e-5 * dalton(s)),
    ('Biasin and Krumme 1974 †', lambda s: -0.059 + 7.9e-5 * dalton(s)),
    ('ISO/TR 12596, no air movement †', lambda s: 5.64 * dalton(s) / 24 / latent(s['tw'])),
    ('analogy of heat and mass transfer †', analogy),
]
CONDITIONS = [(25, 22, 0.50), (26, 24, 0.60), (25, 28, 0.40)]


def low(s):
    return min(vdi(s, 7), 0.65 * shah(s))


def high(s):
    return max(smith(s, 0.1), 1.35 * shah(s))


def table():
    def cell(value):
        return 'stable air, no answer' if value is None else f'{value:.3f}'
    base = shah(state(*CONDITIONS[0]))
    lines = ['| correlation | A | B | C | A in L a day and m² | A over Shah |', '|--|--:|--:|--:|--:|--:|']
    for name, law in LAWS:
        values = [law(state(*c)) for c in CONDITIONS]
        lines.append(f'| {name} | ' + ' | '.join(map(cell, values)) + f' | {24 * values[0]:.2f} | {values[0] / base:.2f} |')
    for name, law in (('**low end of the estimate**', low), ('**high end of the estimate**', high)):
        values = [law(state(*c)) for c in CONDITIONS]
        lines.append(f'| {name} | ' + ' | '.join(map(cell, values)) + f' | {24 * values[0]:.2f} | {values[0] / base:.2f} |')
    return '\n'.join(lines)


PLOT = '''
set terminal svg size 860,520 font "sans,13" background rgb "white"
set output '{out}'
set encoding utf8
set title "Still fresh water of 25 °C under air of 22 °C"
set xlabel "relative humidity of the room, %"
set ylabel "evaporation, kg/(m² h)"
set xrange [30:80]
set yrange [0:0.42]
set grid lc rgb "#dddddd"
set key outside right top spacing 1.25 width -2
plot '{data}' using 1:2:3 with filledcurves lc rgb "#cfe3f5" title "band of the estimate", \\
  '' using 1:4 with lines lw 3 lc rgb "#0b4f8a" title "Shah, central", \\
  '' using 1:5 with lines lw 1.5 lc rgb "#c43c39" title "(25 + 19 v)(x_s − x)", \\
  '' using 1:6 with lines lw 1.5 dt 2 lc rgb "#c43c39" title "ASHRAE, in use", \\
  '' using 1:7 with lines lw 1.5 dt 4 lc rgb "#c43c39" title "Carrier", \\
  '' using 1:8 with lines lw 1.5 lc rgb "#2d8659" title "Smith 1993, measured", \\
  '' using 1:9 with lines lw 1.5 dt 2 lc rgb "#2d8659" title "Smith 1994", \\
  '' using 1:10 with lines lw 1.5 lc rgb "#8a5fb0" title "ASHRAE, unoccupied", \\
  '' using 1:11 with lines lw 1.5 dt 2 lc rgb "#8a5fb0" title "analogy", \\
  '' using 1:12 with lines lw 1.5 lc rgb "#777777" title "VDI 2089, unoccupied", \\
  '' using 1:13 with lines lw 1.5 dt 2 lc rgb "#777777" title "Biasin and Krumme"
'''


def draw(directory):
    names = dict(LAWS)
    shown = ['(25 + 19 v)(x_s − x), v = 0', 'ASHRAE, activity 1.0', 'Carrier, no air movement',
             'Smith, Jones and Löf 1993', 'Smith, Löf and Jones 1994, no air movement †', 'ASHRAE, activity 0.5',
             'analogy of heat and mass transfer †', 'VDI 2089, unoccupied', 'Biasin and Krumme 1974 †']
    rows = []
    for percent in range(30, 81):
        s = state(25, 22, percent / 100)
        values = [low(s), high(s), shah(s)] + [names[n](s) for n in shown]
        rows.append(f'{percent} ' + ' '.join('nan' if v is None or v < 0 else f'{v:.5f}' for v in values))
    data = '$data << EOD\n' + '\n'.join(rows) + '\nEOD\n'
    script = data + PLOT.format(out=directory / 'evaporation.svg', data='$data').replace("'$data'", '$data')
    subprocess.run(['gnuplot'], input=script, text=True, check=True)


if __name__ == '__main__':
    if '--table' in sys.argv[1:]:
        print(table())
    else:
        draw(Path(__file__).resolve().parent)
