# SPDX-License-Identifier: BSL-1.0
"""Formulas of the literature written a second time, term by term as they are printed, from a transcription of the sources
that is not the library's: a wrong digit of a coefficient shows. Usage: water_formulas.py OUTPUT_DIRECTORY"""
import sys
from math import exp, log, log10, sqrt

import numpy as np

from table import Table

SEED = 20261129
print(f'seed {SEED}, numpy {np.__version__}')
rng = np.random.default_rng(SEED)


def t68(t):
    """Saunders 1990: IPTS-68 from ITS-90."""
    return 1.00024 * t


def states(s, t, count=40):
    """Random states, and the corners of the range."""
    yield from ((a, b) for a in s for b in t)
    yield from zip(rng.uniform(*s, count), rng.uniform(*t, count))


SOURCES = {
    'refractive_index_millard_seaver': 'Millard and Seaver 1990, coefficients from reproductions',
    'refractive_index_quan_fry': 'Quan and Fry 1995, eq. 3',
    'specific_heat_eos80': 'UNESCO 44 (Fofonoff and Millard 1983), eq. 26',
    'specific_heat_sharqawy': 'Sharqawy et al. 2010, eq. 9',
    'latent_heat_of_water': 'Sharqawy et al. 2010, eq. 37',
    'viscosity': 'Sharqawy et al. 2010, eqs 22 and 23, full precision of the authors',
    'thermal_conductivity_jamieson_tudhope': 'Jamieson and Tudhope 1970, as in Sharqawy et al. 2010, eq. 13',
    'vapour_pressure_weiss_price': 'Weiss and Price 1980, eq. 10',
    'vapour_pressure_nayar': 'Nayar et al. 2016, eqs 5 and 6',
    'vapour_pressure': 'Hyland and Wexler 1983',
    'ammonium_pka_total': 'Clegg and Whitfield 1995, table 8',
    'ammonium_pka_free': 'Clegg and Whitfield 1995, table 8',
    'ammonium_pka_khoo': 'Khoo et al. 1977, difference form, on Emerson et al. 1975',
    'ammonium_pka_bell': 'Bell et al. 2008, corrigendum',
    'oxygen_saturation_concentration': 'Benson and Krause 1984, eq. 24: the factor for pressure',
    'oxygen_saturation_benson_krause': 'Benson and Krause 1984, eq. 32',
    'oxygen_saturation_weiss': 'Weiss 1970, eq. 4',
    'water_activity': 'Dickson et al. 2007, ch. 5, coefficients from memory',
    'osmotic_coefficient': 'Sharqawy et al. 2010, eq. 49, coefficients from memory',
    'viscosity_millero': 'Millero 1974, coefficients from memory',
}


def write(name, kind, rows):
    with Table(sys.argv[1], f'water_formulas_{name}.csv', '', kind) as table:
        for row in rows:
            table.source = SOURCES[row[0].split('::')[-1]]
            table.row(*row)


def hyland_wexler(T):
    """Hyland and Wexler 1983, water: Pa."""
    return exp(-5.8002206e3 / T + 1.3914993 - 4.8640239e-2 * T + 4.1764768e-5 * T**2 - 1.4452093e-8 * T**3 + 6.5459673 * log(T))


# ---- refractive index: Millard and Seaver 1990 without pressure, L in um; Quan and Fry 1995, wavelength in nm

def millard_seaver(S, T, L):
    n1 = (1.3280657 - 4.5536802e-3 * L**2 + 2.5471707e-3 / L**2 + 7.501966e-6 / L**4 + 2.802632e-6 / L**6
          - 5.2883907e-6 * T - 3.0738272e-6 * T**2 + 3.0124687e-8 * T**3 - 2.0883178e-10 * T**4
          + 1.0508621e-5 * T * L + 2.1282248e-7 * T**2 * L - 1.705881e-9 * T**3 * L)
    n2 = S * (1.9029121e-4 + 2.4239607e-6 / L**2 - 7.3960297e-7 * T + 8.9818478e-9 * T**2 + 1.2078804e-10 * T**3
              - 3.589495e-7 * T * L)
    return n1 + n2


def quan_fry(S, T, nm):
    return (1.31405 + (1.779e-4 - 1.05e-6 * T + 1.6e-8 * T**2) * S - 2.02e-6 * T**2
            + (15.868 + 0.01155 * S - 0.00423 * T) / nm - 4382 / nm**2 + 1.1455e6 / nm**3)


def light():
    for (S, T), nm in zip(states((0.0, 43.0), (0.0, 30.0)), rng.uniform(500, 700, 100)):
        yield ('tankwright::water::refractive_index_millard_seaver', {'S_P': S, 't90': T, 'nm': nm},
               millard_seaver(S, T, nm / 1000), '', '1e-13')
    for (S, T), nm in zip(states((0.0, 35.0), (0.0, 30.0)), rng.uniform(400, 700, 100)):
        yield 'tankwright::water::refractive_index_quan_fry', {'S_P': S, 't90': T, 'nm': nm}, quan_fry(S, T, nm), '', '1e-13'


write('light', 'published', light())


# ---- heat and viscosity: UNESCO 44 eq. 26; Sharqawy et al. 2010 eqs 9, 22, 23 (authors' full precision), 37

def heat():
    for S, t in states((0.0, 40.0), (0.0, 34.9)):
        x = t68(t)
        A = -7.643575 + 0.1072763 * x - 1.38385e-3 * x**2
        B = 0.1770383 - 4.07718e-3 * x + 5.148e-5 * x**2
        c0 = 4217.4 - 3.720283 * x + 0.1412855 * x**2 - 2.654387e-3 * x**3 + 2.093236e-5 * x**4
        yield 'tankwright::water::specific_heat_eos80', {'S_P': S, 't90': t}, c0 + A * S + B * S**1.5, 'J/(kg K)', 'rel 1e-12'
    for S, t in states((0.0, 180.0), (0.0, 180.0)):
        T = t68(t) + 273.15
        A = 5.328 - 9.76e-2 * S + 4.04e-4 * S**2
        B = -6.913e-3 + 7.351e-4 * S - 3.15e-6 * S**2
        C = 9.6e-6 - 1.927e-6 * S + 8.23e-9 * S**2
        D = 2.5e-9 + 1.666e-9 * S - 7.125e-12 * S**2
        yield ('tankwright::water::specific_heat_sharqawy', {'SA': S, 't90': t},
               1000 * (A + B * T + C * T**2 + D * T**3), 'J/(kg K)', 'rel 1e-12')
    for t in (0.0, *rng.uniform(0, 200, 40), 200.0):
        h = 2.5008991412e6 - 2.3691806479e3 * t + 2.6776439436e-1 * t**2 - 8.1027544602e-3 * t**3 - 2.0799346624e-5 * t**4
        yield 'tankwright::water::latent_heat_of_water', {'t90': t}, h, 'J/kg', 'rel 1e-12'
    for S, t in states((0.0, 150.0), (0.0, 180.0)):
        s = S / 1000
        water = 4.2844324477e-5 + 1 / (1.5700386464e-1 * (t + 64.992620050)**2 - 91.296496657)
        A = 1.5409136040 + 1.9981117208e-2 * t - 9.5203865864e-5 * t**2
        B = 7.9739318223 - 7.5614568881e-2 * t + 4.7237011074e-4 * t**2
        yield 'tankwright::water::viscosity', {'SA': S, 't90': t}, water * (1 + A * s + B * s**2), 'Pa s', 'rel 1e-12'
    for S, t in states((0.0, 160.0), (0.0, 180.0)):
        T, sp = t68(t) + 273.15, S / 1.00472
        k = 10 ** (log10(240 + 0.0002 * sp)
                   + 0.434 * (2.3 - (343.5 + 0.037 * sp) / T) * (1 - T / (647.3 + 0.03 * sp)) ** (1 / 3))
        yield 'tankwright::water::thermal_conductivity_jamieson_tudhope', {'SA': S, 't90': t}, k / 1000, 'W/(m K)', 'rel 1e-12'


write('heat', 'published', heat())


# ---- vapour over seawater: Weiss and Price 1980; Nayar et al. 2016 over Hyland and Wexler 1983

def vapour():
    for S, t in states((0.0, 40.0), (0.0, 40.0)):
        T = t + 273.15
        p = 101325 * exp(24.4543 - 67.4509 * (100 / T) - 4.8489 * log(T / 100) - 0.000544 * S)
        yield 'tankwright::water::vapour_pressure_weiss_price', {'S_P': S, 't90': t}, p, 'Pa', 'rel 1e-12'
    for S, t in states((0.0, 160.0), (0.0, 180.0)):
        p = hyland_wexler(t + 273.15) * exp(-4.5818e-4 * S - 2.0443e-6 * S**2)
        yield 'tankwright::water::vapour_pressure_nayar', {'SA': S, 't90': t}, p, 'Pa', 'rel 1e-12'
    for t in (0.0, *rng.uniform(0, 200, 40), 200.0):
        yield 'tankwright::water::vapour_pressure', {'t90': t}, hyland_wexler(t + 273.15), 'Pa', 'rel 1e-12'


write('vapour', 'published', vapour())


# ---- ammonium and oxygen

def ions():
    for S, t in states((0.0, 40.0), (-1.0, 40.0)):
        T = t + 273.15
        pk0 = 9.244605 - 2729.33 * (1 / 298.15 - 1 / T)
        total = (pk0 + (.04203362 - 11.24742 / T) * S**.25
                 + (-13.6416 + 1.176949 * sqrt(T) - .02860785 * T + 545.4834 / T) * sqrt(S)
                 + (-.1462507 + .009022648 * sqrt(T) - 1.471361e-4 * T + 10.5425 / T) * S**1.5
                 + (.004669309 - 1.691742e-4 * sqrt(T) - .5677934 / T) * S**2 + (-2.354039e-5 + .009698623 / T) * S**2.5)
        free = (pk0 + (.0500616 - 9.412696 / T - 2.029559e-7 * T**2) * sqrt(S)
                + (-.0142372 + 1.46041e-5 * T + 3.730005 / T) * S + (7.1047e-5 - .0229021 / T) * S**2
                + (-5.521278e-7 + 1.95413e-4 / T) * S**3)
        strength = 19.9273 * S / (1000 - 1.005109 * S)
        khoo = 0.09018 + 2729.92 / T + (0.1552 - 0.0003142 * t) * strength
        where = {'S_P': S, 't90': t}
        yield 'tankwright::water::ammonium_pka_total', where, total, '', '1e-10'
        yield 'tankwright::water::ammonium_pka_free', where, free, '', '1e-10'
        yield 'tankwright::water::ammonium_pka_khoo', where, khoo, '', '1e-12'
        yield 'tankwright::water::ammonium_pka_bell', where, 10.0423 - 0.0315536 * t + 0.003071 * S, '', '1e-12'
    for p, t in states((0.5, 1.135), (0.0, 40.0)):
        w = 0.01 * t / 20
        theta = 0.000975 - 1.426e-5 * t + 6.436e-8 * t**2
        yield ('tankwright::water::oxygen_saturation_concentration', {'atm': p, 'vapour': w, 't90': t},
               p * (1 - w / p) * (1 - theta * p) / ((1 - w) * (1 - theta)), '', 'rel 1e-13')
    for S, t in states((0.0, 40.0), (0.0, 40.0)):
        T = t68(t) + 273.15
        c = exp(-139.34411 + 1.575701e5 / T - 6.642308e7 / T**2 + 1.243800e10 / T**3 - 8.621949e11 / T**4
                - S * (1.7674e-2 - 1.0754e1 / T + 2.1407e3 / T**2))
        yield 'tankwright::water::oxygen_saturation_benson_krause', {'S_P': S, 't90': t}, c, 'mg/L', 'rel 1e-11'
        v = exp(-173.4292 + 249.6339 * (100 / T) + 143.3483 * log(T / 100) - 21.8492 * (T / 100)
                + S * (-0.033096 + 0.014259 * (T / 100) - 0.0017000 * (T / 100)**2))
        yield 'tankwright::water::oxygen_saturation_weiss', {'S_P': S, 't90': t}, v / 22.3916, 'mol/m3', 'rel 1e-11'


write('ions', 'published', ions())


# ---- what could not be read in a source: written down from memory

def remembered():
    for S in (0.0, *rng.uniform(0, 42, 20), 42.0):  # Dickson et al. 2007, ch. 5
        total = 31.998 * S / (1000 - 1.005 * S)
        m = total / 2
        phi = 0.90799 - 0.08992 * m + 0.18458 * m**2 - 0.07395 * m**3 - 0.00221 * m**4
        yield 'tankwright::water::water_activity', {'S_P': S}, exp(-0.018 * phi * total), '', '1e-13'
    for S, t in states((10.0, 120.0), (0.0, 200.0)):  # Sharqawy et al. 2010, eq. 49
        phi = (8.9453233003e-1 + 4.1560737424e-4 * t - 4.6262121398e-6 * t**2 + 2.2211195897e-11 * t**4
               + S * (-1.1445456438e-4 - 1.4783462366e-6 * t - 1.3526263499e-11 * t**3)
               + S**2 * (7.0132355546e-6 + 5.6960486681e-8 * t - 2.8624032584e-10 * t**2))
        yield 'tankwright::water::osmotic_coefficient', {'SA': S, 't90': t}, phi, '', 'rel 1e-12'
    for (S, t), rho in zip(states((0.0, 40.0), (5.0, 25.0)), rng.uniform(998, 1030, 100)):  # Millero 1974
        x = t68(t)
        water = 1.002e-3 * 10 ** ((1.1709 * (20 - x) - 0.001827 * (x - 20)**2) / (x + 89.93))
        chlorinity = rho * S / 1806.55
        mu = water * (1 + (5.185e-5 * x + 1.0675e-4) * sqrt(chlorinity) + (3.300e-5 * x + 2.591e-3) * chlorinity)
        yield 'tankwright::water::viscosity_millero', {'S_P': S, 't68': x, 'rho': rho}, mu, 'Pa s', 'rel 1e-12'


write('remembered', 'from memory', remembered())
