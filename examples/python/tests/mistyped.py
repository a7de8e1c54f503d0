# SPDX-License-Identifier: BSL-1.0
"""Mistakes that mypy must refuse, each on its line and for its reason; test_types.py looks. Never run."""
import tankwright

tankwright.salt_for_new_water(volume='2150 L', target=35, temprature='24 degC', mix_yield='87 %')  # refused: temprature
tankwright.salt_for_new_water(volume='2150 L', temperature='24 degC', mix_yield='87 %')  # refused: target
tankwright.salt_for_new_water(volume_litres='2150 L', target=35, temperature=297, mix_yield=0.87)  # refused: volume_litres
tankwright.concentration_of(what='natrium', practical_salinity=35, temperature='25 degC')  # refused: natrium
tankwright.fitting_loss(kind='ball_valve', bore={'diameter': '57 mm'})  # refused: bore
tankwright.seawater(practical_salinity=35, temperature='25 degC').densty  # refused: densty
tankwright.looks_like_a_gravity(practical_salinity=35).value.si  # refused: bool
tankwright.water.salt_for_new_watr  # refused: salt_for_new_watr
