# SPDX-License-Identifier: BSL-1.0
"""A program that mypy --strict accepts and that runs: every kind of argument and of result. test_types.py does both."""
from __future__ import annotations

from typing import TYPE_CHECKING

import tankwright

if TYPE_CHECKING:
    from tankwright.types import Constituent, CornerParts, PortionGiven, SaltBatch, SpecificGravityParts

# A plan.
plan: tankwright.Plan = tankwright.demo()
plan['plumbing.return[left return].below_edge'] = '35 mm +/- 5 mm'
margin: tankwright.Quantity | None = plan.assess()['sump.power_cut'].margin
assert margin is not None and isinstance(margin.to('mm'), float)

# A text with its unit, a number with its unit in the name, several results.
batch: SaltBatch = tankwright.salt_for_new_water(volume='2150 L', target=35, temperature_celsius=24, mix_yield='87 %')
mix: tankwright.Quantity = batch.mix
said: str = batch.caution
assert mix.quantity == 'mass' and said in batch.cautions
same = tankwright.water.salt_for_new_water(volume_litres=2150, target=35, temperature_celsius=24, mix_yield_percent=87,
                                           extrapolate=False)
assert same.value['mix'] == mix

# What is a word of Python has a line behind it; in a dict it is as it is.
raised: tankwright.Quantity = tankwright.raise_salinity(volume='100 L', from_=30, target=35, temperature='25 degC',
                                                        mix_yield=0.9).mix
assert raised.si > 0

# Overloads that their arguments tell apart.
density: tankwright.Quantity = tankwright.density(practical_salinity=35, temperature='25 degC')
also: tankwright.Quantity = tankwright.water.density_with_practical_salinity(practical_salinity=35.0, temperature=298.15)
assert density == also

# A list of objects, one with a number in its unit.
portions: list[PortionGiven] = [
    {'volume': '100 L', 'salinity': 35, 'temperature': '25 degC'},
    {'volume': {'value': 100, 'unit': 'L'}, 'salinity': 25, 'temperature': 298.15}]
assert 29.9 < tankwright.blend(waters=portions).salinity.si < 30.1

# A word of a list; a value that says which it is; what one formula makes, given to another in both ways.
what: Constituent = 'sodium'
assert tankwright.concentration_of(what=what, practical_salinity=35, temperature='25 degC').to('mg/L') > 10000
free = tankwright.free_ammonia_fraction(ph_reading={'ph_nbs': 8.2}, practical_salinity=35, temperature_celsius=25)
assert free.low < free.central < free.high
box = tankwright.vessel.box(length='2 m', width='60 cm', height='70 cm')
held: tankwright.Quantity = tankwright.filled_volume(vessel=box, depth='50 cm')
assert held == tankwright.filled_volume(
    vessel={'box': {'length': '2 m', 'width': '60 cm', 'height': '70 cm'}}, depth_centimetres=50)

# Results that are one thing: a whole number, a yes or no, a list, and what may be missing.
times: int = tankwright.changes_to_leave(part='20 %', left=0.5).value
yes: bool = tankwright.looks_like_a_gravity(practical_salinity=1.025).value
corners: list[CornerParts] = tankwright.inside_corners(
    outer=[{'x': 0, 'y': 0}, {'x': '2 m', 'y': 0}, {'x': 2, 'y': 1}, {'x': 0, 'y': 1}], thickness='10 mm').value
assert isinstance(times, int) and yes is True and isinstance(corners[0]['x'], tankwright.Quantity)
least = tankwright.least_thickness(nominal='10 mm')
thin: tankwright.Quantity | None = least if isinstance(least, tankwright.Quantity) else least.value
assert thin is not None and 9 < thin.to('mm') < 10

# A result with parts, and with a band of such.
gravity: SpecificGravityParts = tankwright.specific_gravity_from_salinity(
    practical_salinity=35, scale={'sample': '25 degC', 'reference': '4 degC'}).value
read = tankwright.specific_gravity_from_hydrometer(reading=1.024, water='25 degC', instrument={'scale': 'scale_25_25'})
assert gravity['scale']['sample'].to('degC') == 25 and read.low['value'].si < read.high['value'].si
