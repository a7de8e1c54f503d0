# SPDX-License-Identifier: BSL-1.0
"""Random states of seawater under pressure, and conservative temperatures, by the TEOS-10 toolbox.
Usage: water_density_at_depth.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260804
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
sa = np.concatenate([rng.uniform(0, 42, 450), np.zeros(50)])
t = rng.uniform(0, 38, sa.size)
p = rng.uniform(0, 8000, sa.size)
rho = gsw.rho(sa, t, p)
ct = gsw.CT_from_pt(sa, t)
with Table(sys.argv[1], 'water_density_at_depth.csv', f'TEOS-10 toolbox (python3-gsw), {sa.size} random states') as table:
    for i in range(sa.size):
        table.row('tankwright::water::density_at_depth', {'SA': sa[i], 'CT': t[i], 'p': p[i]}, rho[i], 'kg/m3', '1e-8')
        table.row('tankwright::water::conservative_temperature_at_surface', {'SA': sa[i], 't90': t[i]}, ct[i], 'degC',
                  '1e-10')
