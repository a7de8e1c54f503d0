# SPDX-License-Identifier: BSL-1.0
"""Water activity by TEOS-10 and saturation pressure by IAPWS. Usage: water_vapour.py OUTPUT_DIRECTORY"""
import sys

import gsw
import iapws
import numpy as np

from table import Table

SEED = 20260803
print(f'seed {SEED}, gsw {gsw.__version__}, iapws {iapws.__version__}')
rng = np.random.default_rng(SEED)
R_WATER = 8.314472 / 0.018015268
SALT = 35.16504 / 35.0


def activity(s, t):
    """From the chemical potentials of TEOS-10 (J/g)."""
    shift = gsw.chem_potential_water_t_exact(SALT * s, t, 0.0) - gsw.chem_potential_water_t_exact(0.0, t, 0.0)
    return np.exp(1e3 * shift / (R_WATER * (273.15 + t)))


prefix = 'tankwright::water::'
s = rng.uniform(0.0, 42.0, 1000)
t = rng.uniform(0.0, 40.0, s.size)
with Table(sys.argv[1], 'water_vapour_activity.csv', f'TEOS-10 toolbox (python3-gsw), {s.size} random states') as table:
    for si, ti, a in zip(s, t, activity(s, t)):
        table.row(prefix + 'water_activity', {'S_P': si, 't90': ti}, a, '1', '1e-12')
        table.row(prefix + 'water_activity', {'S_P': si}, a, '1', '1e-4' if ti > 18.0 else '4e-4')
        if si <= 40.0:
            table.row(prefix + 'water_activity_witting', {'S_P': si}, a, '1', '4e-4')

with Table(sys.argv[1], 'water_vapour_pressure.csv',
           'TEOS-10 (python3-gsw) with IAPWS-95 (python3-iapws), 150 random states') as table:
    for si, ti in zip(s[:150], t[:150]):
        fresh = iapws.IAPWS95(T=273.15 + ti, x=0).P * 1e6
        p = fresh * activity(si, ti)
        table.row(prefix + 'vapour_pressure', {'S_P': 0.0, 't90': ti}, fresh, 'Pa', 'rel 3e-4')
        table.row(prefix + 'vapour_pressure', {'S_P': si, 't90': ti}, p, 'Pa', 'rel 3e-4')
        table.row(prefix + 'vapour_pressure_iapws', {'T': 273.15 + ti}, fresh, 'Pa', 'rel 8e-5')
        table.row(prefix + 'vapour_pressure_nayar', {'S_A': SALT * si, 't90': ti}, p, 'Pa', 'rel 2.6e-3')
        if si <= 40.0:
            table.row(prefix + 'vapour_pressure_weiss_price', {'S_P': si, 't90': ti}, p, 'Pa', 'rel 2e-3')
    for kelvin in rng.uniform(273.16, 647.0, 100):
        table.row(prefix + 'vapour_pressure_iapws', {'T': kelvin}, iapws.iapws97._PSat_T(kelvin) * 1e6, 'Pa', 'rel 1e-9')
