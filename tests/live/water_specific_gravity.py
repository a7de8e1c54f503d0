# SPDX-License-Identifier: BSL-1.0
"""Random states of seawater with specific gravity, hydrometer reading and mass concentration by the densities of the
TEOS-10 toolbox. Usage: water_specific_gravity.py OUTPUT_DIRECTORY"""
import sys

import gsw
import numpy as np

from table import Table

SEED = 20260806
print(f'seed {SEED}, gsw {gsw.__version__}')
rng = np.random.default_rng(SEED)
sp = rng.uniform(0, 42, 400)
sample = rng.uniform(0, 40, sp.size)
reference = rng.uniform(0, 30, sp.size)
water = rng.uniform(0, 40, sp.size)
sa = gsw.SR_from_SP(sp)
pure = gsw.rho_t_exact(0.0, reference, 0.0)
gravity = gsw.rho_t_exact(sa, sample, 0.0) / pure
expansion = 25e-6
reading = gsw.rho_t_exact(sa, water, 0.0) / pure * (1 + expansion * (water - sample))
concentration = sa * gsw.rho_t_exact(sa, water, 0.0) / 1000
source = f'TEOS-10 toolbox (python3-gsw), {sp.size} random states'
with Table(sys.argv[1], 'water_specific_gravity.csv', source) as table:
    for i in range(sp.size):
        scale = {'sample_C': sample[i], 'reference_C': reference[i]}
        table.row('tankwright::water::specific_gravity_from_salinity', {'S_P': sp[i]} | scale, gravity[i], '', '1e-9')
        table.row('tankwright::water::salinity_from_specific_gravity', {'SG': gravity[i]} | scale, sp[i], '', '2e-6')
with Table(sys.argv[1], 'water_hydrometer.csv', source) as table:
    for i in range(sp.size):
        scale = {'sample_C': sample[i], 'reference_C': reference[i], 't90': water[i], 'expansion': expansion}
        table.row('tankwright::water::hydrometer_reading', {'S_P': sp[i]} | scale, reading[i], '', '1e-9')
        table.row('tankwright::water::salinity_from_hydrometer', {'reading': reading[i]} | scale, sp[i], '', '2e-6')
with Table(sys.argv[1], 'water_mass_concentration.csv', source) as table:
    for i in range(sp.size):
        state = {'t90': water[i]}
        table.row('tankwright::water::mass_concentration_from_salinity', {'S_P': sp[i]} | state, concentration[i],
                  'g/L', '1e-7')
        table.row('tankwright::water::salinity_from_mass_concentration', {'c': concentration[i]} | state, sp[i], '',
                  '2e-6')
