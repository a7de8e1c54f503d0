# SPDX-License-Identifier: BSL-1.0
"""What every maker and reader of the unit table must give, in rational arithmetic from the definitions of the units.

Only the names and the symbols are taken from the table; the sizes are computed here from the symbols.
Usage: core_units.py OUTPUT_DIRECTORY"""
import re
import sys
from fractions import Fraction
from pathlib import Path

from table import Table

PI = Fraction('3.14159265358979323846264338327950288')
PREFIX = {'n': Fraction(1, 10**9), 'u': Fraction(1, 10**6), 'm': Fraction(1, 1000), 'c': Fraction(1, 100),
          'd': Fraction(1, 10), '': Fraction(1), 'h': Fraction(100), 'k': Fraction(1000), 'M': Fraction(10**6),
          'G': Fraction(10**9)}
INCH = Fraction('0.0254')           # international inch, 1959
POUND = Fraction('0.45359237')      # international pound, 1959
GRAVITY = Fraction('9.80665')       # standard gravity, 3rd CGPM 1901
HOUR = Fraction(3600)
WITH_PREFIX = {'m': 1, 'L': Fraction(1, 1000), 'g': Fraction(1, 1000), 'N': 1, 'J': 1, 'W': 1, 'Wh': HOUR, 'Pa': 1,
               'bar': 10**5, 'S': 1, 'mol': 1, 'A': 1, 'V': 1}
WITHOUT_PREFIX = {
    's': 1, 'min': 60, 'h': HOUR, 'd': 24 * HOUR, 'wk': 168 * HOUR, 'rad': 1, 'deg': PI / 180, 'K': 1, '%': Fraction(1, 100),
    'in': INCH, 'ft': 12 * INCH, 't': 1000, 'lb': POUND, 'oz': POUND / 16, 'lbf': POUND * GRAVITY,
    'hp': 550 * 12 * INCH * POUND * GRAVITY,          # 550 foot pounds-force per second
    'Btu': Fraction('2326') * POUND,                  # International Table: 1 Btu/lb = 2326 J/kg
    'atm': 101325,                                    # 10th CGPM 1954
    'psi': POUND * GRAVITY / INCH**2, 'psf': POUND * GRAVITY / (12 * INCH)**2,
}
GALLON = {'US': 231 * INCH**3, 'imp': Fraction('4.54609') / 1000}   # 231 cubic inches; Weights and Measures Act 1985
PER = {'gal': 1, 'gpm': 60, 'gph': HOUR, 'gpd': 24 * HOUR}


def word_size(word):
    if word in WITHOUT_PREFIX:
        return Fraction(WITHOUT_PREFIX[word])
    for unit, size in WITH_PREFIX.items():
        if word.endswith(unit) and word[:-len(unit)] in PREFIX:
            return PREFIX[word[:-len(unit)]] * size
    sys.exit(f'{word}: define this unit here, independently of the table')


def symbol_size(symbol):
    words = symbol.split()
    if words[0] in GALLON:
        return GALLON[words[0]] / PER[words[1]]
    above, _, below = symbol.partition('/')
    size = Fraction(1)
    for text, sign in ((above, 1), (below, -1)):
        for word, power in re.findall(r'([A-Za-z%]+)(\d?)', text):
            size *= word_size(word) ** (sign * int(power or 1))
    return size


unit_table = Path(__file__).resolve().parents[2] / 'include/tankwright/core/unit_table.hpp'
rows = re.findall(r'ROW\(\w+,\s*(\w+),\s*"([^"]*)"', unit_table.read_text())
if len(rows) < 100:
    sys.exit(f'{unit_table}: only {len(rows)} rows read')
source = 'exact definition of the unit (inch and pound 1959, standard gravity 1901, SI), rational arithmetic'
with Table(sys.argv[1], 'core_units.csv', source, kind='identity') as table:
    for name, symbol in rows:
        size = symbol_size(symbol)
        for number in (1.0, 2150.0, 0.37):
            # Factor, product and this value are each rounded, and a factor may be a quotient.
            table.row(f'tankwright::{name}', {'number': number}, Fraction(number) * size, 'SI', 'rel 6e-16')
            table.row(f'tankwright::in_{name}', {'si': number}, Fraction(number) / size, symbol, 'rel 6e-16')
