# SPDX-License-Identifier: BSL-1.0
"""Random temperatures and colours with the refractive index of pure water by IAPWS R9-97, relative to air at the same
temperature (dry air of Ciddor 1996, scaled as an ideal gas). Usage: water_refractive_index.py OUTPUT_DIRECTORY"""
import sys

import gsw
import iapws
import numpy as np
from iapws._iapws import _Refractive

from table import Table

SEED = 20260807
print(f'seed {SEED}, iapws {iapws.__version__}')


def air(micrometres, celsius):
    sigma2 = micrometres ** -2
    standard = 5792105e-8 / (238.0185 - sigma2) + 167917e-8 / (57.362 - sigma2)  # 15 degC, 101325 Pa
    return 1 + standard * 288.15 / (273.15 + celsius)


rng = np.random.default_rng(SEED)
t = rng.uniform(0, 30, 300)
nm = np.where(rng.random(t.size) < 0.5, 589.26, rng.uniform(500, 700, t.size))
blue = rng.uniform(400, 700, t.size)
rho = gsw.rho_t_exact(0.0, t, 0.0)


def index(i, wavelength):
    return _Refractive(rho[i], 273.15 + t[i], wavelength * 1e-3) / air(wavelength * 1e-3, t[i])


source = f'IAPWS R9-97 (python3-iapws) over dry air, {t.size} random states of pure water'
with Table(sys.argv[1], 'water_refractive_index.csv', source) as table:
    for i in range(t.size):
        state = {'S': 0.0, 't': t[i]}
        table.row('tankwright::water::refractive_index_millard_seaver', state | {'nm': nm[i]}, index(i, nm[i]), '',
                  '3.5e-6' if nm[i] == 589.26 else '1e-5')
        table.row('tankwright::water::refractive_index_quan_fry', state | {'nm': blue[i]}, index(i, blue[i]), '', '4e-5')
