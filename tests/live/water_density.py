# SPDX-License-Identifier: BSL-1.0
"""Random states of seawater with the density of the TEOS-10 toolbox. Usage: water_density.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260801
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
sa = np.concatenate([rng.uniform(0, 42, 2500), rng.uniform(0, 2, 300), [0.0] * 200])
t = rng.uniform(0, 40, sa.size)
rho = gsw.rho_t_exact(sa, t, 0.0)
with Table(sys.argv[1], 'water_density.csv', f'TEOS-10 toolbox (python3-gsw), {sa.size} random states') as table:
    for i in range(sa.size):
        table.row('tankwright::water::density', {'SA': sa[i], 't90': t[i]}, rho[i], 'kg/m3', '1e-6')
    for i in range(300):
        table.row('tankwright::water::salinity_from_density', {'rho': rho[i], 't90': t[i]}, gsw.SP_from_SR(sa[i]), '',
                  '2e-6')
