# SPDX-License-Identifier: BSL-1.0
"""Random conductivities and salinities, both ways, by the TEOS-10 toolbox. Usage: water_conductivity.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260805
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
sp = np.concatenate([rng.uniform(2, 42, 700), rng.uniform(0.01, 2, 300)])
t = rng.uniform(0, 35, sp.size)
p = np.where(rng.random(sp.size) < 0.5, 0.0, rng.uniform(0, 10000, sp.size))
c = gsw.C_from_SP(sp, t, p)
noise = c * (1 + rng.uniform(-1e-3, 1e-3, sp.size))
back = gsw.SP_from_C(noise, t, p)
with Table(sys.argv[1], 'water_conductivity.csv', f'TEOS-10 toolbox (python3-gsw), {sp.size} random states') as table:
    for i in range(sp.size):
        state = {'t90': t[i], 'p': p[i]}
        table.row('tankwright::water::conductivity_from_salinity', {'S_P': sp[i]} | state, c[i], 'mS/cm', 'rel 1e-9')
        if back[i] <= 42:
            table.row('tankwright::water::salinity_from_conductivity', {'C': noise[i]} | state, back[i], '', 'rel 1e-9')
