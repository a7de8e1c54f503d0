# SPDX-License-Identifier: BSL-1.0
"""Random salinities with the freezing point of air-saturated seawater by the TEOS-10 toolbox.
Usage: water_freezing.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260803
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
sp = rng.uniform(4, 40, 200)
freezing = gsw.t_freezing(gsw.SR_from_SP(sp), 0.0, 1.0)
with Table(sys.argv[1], 'water_freezing.csv', f'TEOS-10 toolbox (python3-gsw), {sp.size} random salinities') as table:
    for i in range(sp.size):
        table.row('tankwright::water::freezing_point', {'S_P': sp[i]}, freezing[i], 'degC', '3e-3')
