# SPDX-License-Identifier: BSL-1.0
"""The tables of docs/tables are what the program writes, and agree with printed values and with the equations worked out
here. Usage: tables.py PROGRAM ROOT [--write]"""
import csv
import math
import subprocess
import sys
import tempfile
from pathlib import Path

program, root = sys.argv[1], Path(sys.argv[2])
committed = root / 'docs' / 'tables'
if '--write' in sys.argv:
    sys.exit(subprocess.run([program, committed]).returncode)

bad = 0


def complain(text):
    global bad
    bad += 1
    print(text)


with tempfile.TemporaryDirectory() as folder:
    subprocess.run([program, folder], check=True)
    written = {p.name: p.read_bytes() for p in Path(folder).iterdir()}
there = {p.name: p.read_bytes() for p in committed.iterdir() if p.suffix in ('.md', '.csv')}
for name in sorted(written.keys() | there.keys()):
    if written.get(name) != there.get(name):
        complain(f'docs/tables/{name} is not what {program} writes; tables.py PROGRAM ROOT --write')


def table(name):
    """{(table, row, column): value} of a table's data."""
    with open(committed / f'{name}.csv', newline='') as file:
        return {(r['table'], r['row'], r['column']): float(r['value']) for r in csv.DictReader(file) if r['value']}


def held(value, expected, within, source):
    if not abs(value - expected) <= within:
        complain(f'{value} is not {expected} +- {within}: {source}')


density = table('density')
for row, column, expected, source in (
        ('35', '25', 1023.343, 'EOS-80, UNESCO 44 (1983) p. 19'), ('35', '20', 1024.763, 'EOS-80, UNESCO 44 (1983) p. 19'),
        ('0', '20', 998.207, 'CRC Handbook, pure water'), ('0', '25', 997.047, 'CRC Handbook, pure water')):
    held(density['Density of seawater', row, column], expected, 0.02, source)
conductivity = table('conductivity')
held(conductivity['Conductivity of seawater', '35', '15'], 42.914 + 0.003, 0.0051,
     'Culkin and Smith 1980, at 15 degC of IPTS-68, which is 14.9964 of ITS-90')
oxygen = table('oxygen')
for column, expected in (('10', 11.29), ('20', 9.09), ('25', 8.26), ('30', 7.56)):
    held(oxygen['Oxygen that water holds', '0', column], expected, 0.03, 'USGS tables of dissolved oxygen, 760 mmHg, from memory')

# Salt is neither made nor lost: S_A rho V / yield, with the density of the table.
mix = table('salt-mix')
for (name, salinity, part), kilograms in mix.items():
    if not name.startswith('Kilograms'):
        continue
    if ('Density of seawater', salinity, '25') in density:
        salt = 35.16504e-3 / 35 * float(salinity) * density['Density of seawater', salinity, '25'] * 0.1
        held(kilograms, salt / float(part), 0.0051, f'balance of salt at {salinity}, yield {part}')
        held(mix['Pounds for 100 US gallons', salinity, part], salt / float(part) * 3.785411784 / 0.45359237, 0.02,
             f'balance of salt at {salinity}, yield {part}')

# Darcy and Weisbach with Colebrook and White by iteration; viscosity of seawater of 35 at 25 degC: 0.9375e-6 m2/s (ITTC 2011).
walls = {'25': 1.9, '32': 2.4, '40': 3.0, '50': 3.7, '63': 4.7, '75': 5.6, '90': 6.7, '110': 6.6}  # EN ISO 1452-2 PN16, from memory
loss = table('head-loss')
for (name, flow, size), metres in loss.items():
    if not name.startswith('Metres'):
        continue
    d, q = (float(size) - 2 * walls[size]) / 1000, float(flow) / 3.6e6
    v = q / (math.pi / 4 * d * d)
    re, root_f = v * d / 0.9375e-6, 0.02 ** -0.5
    for _ in range(50):
        root_f = -2 * math.log10(1.5e-6 / d / 3.7 + 2.51 * root_f / re)
    expected = 10 / d * v * v / (2 * 9.80665) / root_f ** 2
    if re > 4000:
        held(metres, expected, 0.0006 + 0.01 * expected, f'Colebrook-White at {flow} L/h in {size} mm')

# Rehbock's formula as ISO 1438 has it: what flows at the printed head, which is rounded to a tenth of a millimetre.
for (name, flow, width), millimetres in table('weir-head').items():
    h = millimetres / 1000
    q = 2 / 3 * (0.602 + 0.083 * h / 0.6) * math.sqrt(2 * 9.80665) * float(width) * (h + 0.0012) ** 1.5
    if h > 0.01:
        held(q * 3.6e6, float(flow), float(flow) * (0.002 + 1.5 * 0.05 / millimetres), f'Rehbock at {flow} L/h over {width} m')

# Timoshenko and Woinowsky-Krieger 1959, square plate on four edges under water to its top, nu 0.3: M = 0.0264 q b^2 (from memory).
# Glass (nu 0.22) and acrylic (nu 0.37) lie to both sides of it; both are allowed 5 MPa.
panels = table('panels')
between = math.sqrt(6 * 0.0264 * 1025 * 9.80665 / 5e6) * 1000
if not panels['Annealed glass', '1.0', '1.0'] < between < panels['Cast acrylic, by stress alone', '1.0', '1.0']:
    complain(f'a square metre of glass and of acrylic do not lie to both sides of {between:.1f} mm')

# Free ammonia: a tenfold hydroxide makes the ratio of free to bound ten times as large.
free = table('free-ammonia')
name = 'The free part of ammonia'
for column in ('20', '25', '30'):
    ratio = [free[name, ph, column] / (100 - free[name, ph, column]) for ph in ('7.6', '8.6')]
    held(ratio[1] / ratio[0], 10.0, 0.1, f'law of mass action at {column} degC')

print(f'{len(written)} files, {bad} problems')
sys.exit(1 if bad else 0)
