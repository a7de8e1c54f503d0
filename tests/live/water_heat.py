# SPDX-License-Identifier: BSL-1.0
"""Specific and latent heat by TEOS-10 and IAPWS-95, thermal conductivity and surface tension by IAPWS.
Usage: water_heat.py OUTPUT_DIRECTORY"""
import sys

import gsw
import iapws
import numpy as np
from iapws.iapws08 import _Tension_SeaWater, _ThCond_SeaWater

from table import Table

SEED = 20260805
print(f'seed {SEED}, gsw {gsw.__version__}, iapws {iapws.__version__}')
rng = np.random.default_rng(SEED)
prefix = 'tankwright::water::'
SALT = 35.16504 / 35.0

s = np.concatenate([rng.uniform(0.0, 42.0, 1800), [0.0] * 200])
t = rng.uniform(0.0, 40.0, s.size)
with Table(sys.argv[1], 'water_heat.csv', f'TEOS-10 toolbox (python3-gsw), {s.size} random states') as table:
    for si, ti, cp in zip(s, t, gsw.cp_t_exact(SALT * s, t, 0.0)):
        table.row(prefix + 'specific_heat', {'S_P': si, 't90': ti}, cp, 'J/(kg K)', 'rel 1e-12')
    for si, ti, heat in zip(s, t, gsw.latentheat_evap_t(SALT * s, t)):
        if si <= 41.8:
            table.row(prefix + 'latent_heat', {'S_P': si, 't90': ti}, heat, 'J/kg', 'rel 1e-12')

with Table(sys.argv[1], 'water_heat_of_water.csv', 'IAPWS-95 (python3-iapws), 60 random states') as table:
    for ti in rng.uniform(0.01, 200.0, 60):
        heat = iapws.IAPWS95(T=273.15 + ti, x=1).h - iapws.IAPWS95(T=273.15 + ti, x=0).h
        table.row(prefix + 'latent_heat_of_water', {'t90': ti}, heat, 'kJ/kg', 'rel 1e-4')

with Table(sys.argv[1], 'water_thermal_conductivity.csv',
           'IAPWS G10-15 and R15-11 (python3-iapws), 100 random states') as table:
    for ti, si in zip(rng.uniform(0.01, 80.0, 100), rng.uniform(0.0, 120.0, 100)):
        k = iapws.IAPWS95(T=273.15 + ti, P=0.101325).k + _ThCond_SeaWater(273.15 + ti, 0.101325, si / 1000.0)
        table.row(prefix + 'thermal_conductivity_of', {'S_A': si, 't90': ti}, k, 'W/(m K)',
                  'rel 1e-6' if ti <= 40.0 else 'rel 3e-4')  # the density of water by TEOS-10 is exact up to 40 degC

with Table(sys.argv[1], 'water_surface_tension.csv', 'IAPWS G14-19 (python3-iapws), 300 random states') as table:
    for ti, si in zip(rng.uniform(1.0, 92.0, 300), rng.uniform(0.0, 131.0, 300)):
        table.row(prefix + 'surface_tension_of', {'S_A': si, 't90': ti}, _Tension_SeaWater(273.15 + ti, si / 1000.0) * 1e3,
                  'mN/m', 'rel 1e-12')
