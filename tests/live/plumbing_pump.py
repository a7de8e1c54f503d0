# SPDX-License-Identifier: BSL-1.0
"""Random pump curves with scipy's monotone cubic through them. Usage: plumbing_pump.py OUTPUT_DIRECTORY"""
import sys

import numpy as np
import scipy
from scipy.interpolate import PchipInterpolator

from table import Table

SEED = 20260803
print(f'seed {SEED}, scipy {scipy.__version__}')
rng = np.random.default_rng(SEED)
with Table(sys.argv[1], 'plumbing_pump.csv', 'scipy PchipInterpolator, 200 random curves') as table:
    for _ in range(200):
        n = int(rng.integers(3, 9))
        q = np.concatenate([[0.0], np.cumsum(rng.uniform(0.2, 3.0, n - 1))])
        h = rng.uniform(3.0, 9.0) - np.concatenate([[0.0], np.cumsum(rng.uniform(0.02, 1.0, n - 1))])
        curve = PchipInterpolator(q, h)
        points = ' '.join(f'{a!r}:{b!r}' for a, b in zip(q.tolist(), h.tolist()))
        for x in rng.uniform(0.0, q[-1], 5):
            table.row('tankwright::plumbing::head_at', {'points': points, 'Q': x}, curve(x), 'm', '1e-12')
