# SPDX-License-Identifier: BSL-1.0
"""Oxygen at saturation by the TEOS-10 toolbox. Usage: water_oxygen.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260804
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
s = rng.uniform(0.0, 42.0, 1000)
t = rng.uniform(-2.0, 40.0, s.size)
with Table(sys.argv[1], 'water_oxygen.csv', f'TEOS-10 toolbox (python3-gsw), {s.size} random states') as table:
    for si, ti, c in zip(s, t, gsw.O2sol_SP_pt(s, t)):
        table.row('tankwright::water::oxygen_saturation', {'S_P': si, 't90': ti}, c, 'umol/kg', 'rel 1e-12')
