# SPDX-License-Identifier: BSL-1.0
"""Balances of salt and water with the densities of the TEOS-10 toolbox. Usage: water_salt_mix.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260806
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
prefix = 'tankwright::water::'
SALT = 35.16504e-3 / 35.0  # kg of salt in a kilogram of water of practical salinity 1


def rho(s, t):
    return gsw.rho_t_exact(1e3 * SALT * s, t, 0.0)


N = 200
volume = rng.uniform(1.0, 20000.0, N)  # L
s1, s2 = rng.uniform(1.0, 41.0, (2, N))
t = rng.uniform(5.0, 35.0, N)
y = rng.uniform(0.8, 1.0, N)
source = f'mass balance with the densities of the TEOS-10 toolbox (python3-gsw), {N} random states'

with Table(sys.argv[1], 'water_salt_mix.csv', source) as table:
    for v, s, ti, yi in zip(volume, s2, t, y):
        # Unknown mix x: salt y x in water + x must be the wanted part.
        water = rho(0.0, ti) * v * 1e-3
        x = np.linalg.solve([[yi, -SALT * s], [-1.0, 1.0]], [0.0, water])  # mix, finished mass
        state = {'L': v, 'S_P': s, 't90': ti, 'yield': yi}
        table.row(prefix + 'salt_for_new_water', state | {'what': 'mix'}, x[0], 'kg', 'rel 1e-9')
        table.row(prefix + 'salt_for_new_water', state | {'what': 'finished'}, 1e3 * x[1] / rho(s, ti), 'L', 'rel 1e-9')
        finished = rho(s, ti) * v * 1e-3
        mix = SALT * s * finished / yi
        table.row(prefix + 'salt_for_finished_volume', state | {'what': 'mix'}, mix, 'kg', 'rel 1e-9')
        table.row(prefix + 'salt_for_finished_volume', state | {'what': 'water'}, 1e3 * (finished - mix) / rho(0.0, ti),
                  'L', 'rel 1e-9')

with Table(sys.argv[1], 'water_adjust.csv', source) as table:
    for v, a, b, ti, yi in zip(volume, s1, s2, t, y):
        low, high = sorted((a, b))
        state = {'L': v, 'low': low, 'high': high, 't90': ti, 'yield': yi}
        thin, thick = rho(low, ti) * v * 1e-3, rho(high, ti) * v * 1e-3
        mix = np.linalg.solve([[yi, -SALT * high], [-1.0, 1.0]], [-SALT * low * thin, thin])[0]
        table.row(prefix + 'raise_salinity', state, mix, 'kg', 'rel 1e-9')
        table.row(prefix + 'lower_salinity', state, 1e3 * (thick * high / low - thick) / rho(0.0, ti), 'L', 'rel 1e-9')
        # Fresh water in place of some of the water, same volume: unknown masses out and in.
        out, fresh = np.linalg.solve([[-high, 0.0], [-1.0, 1.0]], [low * thin - high * thick, thin - thick])
        table.row(prefix + 'replace_to_reach', state | {'what': 'out'}, 1e3 * out / rho(high, ti), 'L', 'rel 1e-9')
        table.row(prefix + 'replace_to_reach', state | {'what': 'in'}, 1e3 * fresh / rho(0.0, ti), 'L', 'rel 1e-9')

with Table(sys.argv[1], 'water_drift.csv', source) as table:
    for v, s, ti in zip(volume, s1, t):
        state = {'L': v, 'S_P': s, 't90': ti}
        s_in, days = rng.uniform(0.0, 5.0), rng.uniform(0.1, 10.0)
        lost, brought = rng.uniform(0.0, 0.01 * v, 2)  # L/d
        mass = rho(s, ti) * v + days * (brought * rho(s_in, ti) - lost * rho(0.0, ti))
        salt = rho(s, ti) * v * s + days * brought * rho(s_in, ti) * s_in
        state |= {'lost': lost, 'brought': brought, 'S_in': s_in, 'days': days}
        table.row(prefix + 'drift', state, salt / mass, '1', 'rel 1e-9')
        table.row(prefix + 'time_to_salinity', state | {'reached': salt / mass}, days, 'd', 'rel 1e-7')
        gone = rho(s, ti) * v * (1.0 - s / 41.5)
        table.row(prefix + 'evaporation_from_readings', state | {'second': 41.5}, gone / rho(0.0, ti), 'L', 'rel 1e-9')
