# SPDX-License-Identifier: BSL-1.0
"""Random temperatures with the saturation pressure and latent heat of IAPWS. Usage: room_saturation.py OUTPUT_DIRECTORY

Over water the saturation line of IAPWS R7-97 (region 4), over ice the sublimation pressure of IAPWS R14-08. The
tolerances are what Hyland and Wexler's formulas are off: 300 ppm over water, 330 ppm over ice.
"""
import sys

import iapws
from iapws._iapws import _Sublimation_Pressure
from iapws.iapws97 import _PSat_T
import numpy as np

from table import Table

SEED = 20260803
print(f'seed {SEED}, iapws {iapws.__version__}')
rng = np.random.default_rng(SEED)
water = rng.uniform(0.01, 180, 2000)
ice = rng.uniform(-100, 0.0, 500)
with Table(sys.argv[1], 'room_saturation.csv', f'IAPWS R7-97 and R14-08 (python3-iapws), {water.size + ice.size} random states') as table:
    for t in water:
        table.row('tankwright::room::saturation_pressure', {'t': t}, 1e6 * _PSat_T(t + 273.15), 'Pa', 'rel 3e-4')
    for t in ice:
        table.row('tankwright::room::saturation_pressure', {'t': t}, 1e6 * _Sublimation_Pressure(t + 273.15), 'Pa', 'rel 3.5e-4')
    for t in water[:500]:
        table.row('tankwright::room::saturation_temperature', {'p': 1e6 * _PSat_T(t + 273.15)}, t, 'C', '0.014')
