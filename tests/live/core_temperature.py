# SPDX-License-Identifier: BSL-1.0
"""Celsius temperatures of 1968 as the TEOS-10 toolbox converts them. Usage: core_temperature.py OUTPUT_DIRECTORY"""
import sys

import gsw

from table import Table

with Table(sys.argv[1], 'core_temperature.csv', 'TEOS-10 toolbox (python3-gsw), t90_from_t68') as table:
    for t68 in (-2.0, 0.0, 5.5, 15.0, 20.0, 25.0, 30.0, 40.0):
        t90 = gsw.t90_from_t68(t68)
        table.row('tankwright::ipts68_celsius', {'t68': t68}, t90, 'degC', '1e-13')
        table.row('tankwright::in_ipts68_celsius', {'t90': t90}, t68, 'degC', '1e-13')
