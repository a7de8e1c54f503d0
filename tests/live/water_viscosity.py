# SPDX-License-Identifier: BSL-1.0
"""Viscosity and density of pure water by IAPWS R12-08 and IAPWS-95. Usage: water_viscosity.py OUTPUT_DIRECTORY"""
import sys

import iapws
import numpy as np

from table import Table

SEED = 20260802
print(f'seed {SEED}, iapws {iapws.__version__}')
rng = np.random.default_rng(SEED)
states = [(t, iapws.IAPWS95(T=273.15 + t, P=0.101325)) for t in rng.uniform(0.01, 80.0, 60)]


def tolerance(t):
    """What Sharqawy et al. 2010, eq. 23, is good for."""
    return 'rel 5e-4' if t < 45.0 else 'rel 1.2e-3'


with Table(sys.argv[1], 'water_viscosity.csv', f'IAPWS R12-08 (python3-iapws), {len(states)} random states') as table:
    for t, water in states:
        table.row('tankwright::water::viscosity', {'t90': t}, water.mu, 'Pa s', tolerance(t))
with Table(sys.argv[1], 'water_liquid.csv',
           f'IAPWS-95 and R12-08 (python3-iapws), {len(states)} random states') as table:
    for t, water in states:
        if t <= 40.0:  # where the water part of TEOS-10 (IAPWS SR7-09) holds
            table.row('tankwright::water::fresh_water', {'t90': t}, water.rho, 'kg/m3', '1e-4')
        table.row('tankwright::water::kinematic_viscosity_of', {'t90': t}, water.nu, 'm2/s', tolerance(t))
