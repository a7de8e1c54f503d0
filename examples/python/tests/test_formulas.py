# SPDX-License-Identifier: BSL-1.0
"""Formulas by their names."""
import inspect
import math
import unittest

import tankwright

#: UNESCO 44 (1983): density at S = 35, 25 degC; TEOS-10 lies within 0.01 of it there.
DENSITY = 1023.343


class Formulas(unittest.TestCase):
    def test_units_in_the_text_or_in_the_name(self):
        density = tankwright.water.density
        for given in ({'temperature': '25 degC'}, {'temperature_celsius': 25}, {'temperature_degC': 25.0},
                      {'temperature_fahrenheit': 77}, {'temperature': 298.15}, {'temperature_kelvins': 298.15}):
            self.assertAlmostEqual(density(practical_salinity=35, **given).si, DENSITY, delta=0.01)
        self.assertAlmostEqual(density(practical_salinity=35, temperature='25 degC').to('g/mL'), DENSITY / 1000, delta=1e-5)

    def test_both_ways_are_one(self):
        # Numbers go straight to the formula, texts through JSON.
        density = tankwright.water.density_with_practical_salinity
        self.assertEqual(density(practical_salinity=35.0, temperature=298.15),
                         density(practical_salinity=35.0, temperature='298.15 K'))
        plain = tankwright.plain('water.density_with_practical_salinity')
        self.assertEqual(plain(35.0, 298.15), density(practical_salinity=35.0, temperature=298.15).si)

    def test_a_field_that_is_a_word_of_python(self):
        # Torricelli (1644): an area A empties from h1 to h2 through a in t = 2 A (sqrt(h1) - sqrt(h2)) / (Cd a sqrt(2g)).
        hole = math.pi / 4 * 0.02 ** 2
        seconds = 2 * 0.5 * (math.sqrt(0.4) - math.sqrt(0.1)) / (0.6 * hole * math.sqrt(2 * 9.80665))
        for given in ({'from_': 0.4}, {'from_': '400 mm'}, {'from': 0.4}, {'from_millimetres': 400}):
            found = tankwright.discharge_coefficient_from(horizontal_area=0.5, bore=0.02, to=0.1, time=seconds, **given)
            self.assertAlmostEqual(found.si, 0.6, places=9)
        with self.assertRaisesRegex(TypeError, 'twice'):
            tankwright.discharge_coefficient_from(horizontal_area=0.5, bore=0.02, from_=0.4, to=0.1, time=seconds, **{'from': 0.4})

    def test_several_results_with_cautions(self):
        # Conservation of mass: what is poured in comes out.
        batch = tankwright.salt_for_new_water(volume_litres=2150, target=35, temperature_celsius=24, mix_yield='87 %')
        self.assertAlmostEqual(batch.finished_mass.si, batch.mix.si + batch.fresh_water_mass.si, places=9)
        self.assertAlmostEqual(batch.fresh_water.to('L'), 2150, places=9)
        self.assertEqual(batch.fresh_water.to('US gal'), 2150e-3 / 3.785411784e-3)
        self.assertTrue(batch.cautions and batch.source)
        self.assertIn('Caution: ', repr(batch))
        self.assertIn('Caution', batch._repr_html_())
        with self.assertRaisesRegex(AttributeError, 'did you mean mix?'):
            batch.mixx

    def test_what_a_formula_says_of_itself(self):
        f = tankwright.salt_for_new_water
        self.assertIs(f, tankwright.salt_for_new_water)
        for part in ('volume: volume [m3]', 'Source: ', 'Accuracy: ', 'Caution: '):
            self.assertIn(part, inspect.getdoc(f))
        self.assertIn('salt_for_new_water', dir(tankwright))
        self.assertGreater(len(tankwright.formulas()), 300)
        for name, formula in tankwright.formulas().items():
            self.assertTrue(formula.source, name)
            self.assertTrue(formula.__doc__, name)

    def test_errors_carry_what_they_know(self):
        with self.assertRaises(tankwright.OutOfRange) as caught:
            tankwright.density(practical_salinity=80, temperature='25 degC')
        e = caught.exception
        self.assertEqual((e.value, e.low, e.high), (80, 0, 42))
        self.assertIn('density', e.function)
        self.assertIn('extrapolate=True', str(e))
        self.assertGreater(tankwright.density(practical_salinity=80, temperature='25 degC', extrapolate=True).si, DENSITY)
        with self.assertRaises(tankwright.InvalidInput):
            tankwright.density(practical_salinity=-1, temperature='25 degC')
        with self.assertRaises(tankwright.BadValue):
            tankwright.density(practical_salinity=35, temperature='25 kg')
        with self.assertRaises(tankwright.BadValue):
            tankwright.density(practical_salinity=35)
        for wrong in (math.nan, math.inf, -math.inf):
            with self.assertRaises(tankwright.Error):
                tankwright.density(practical_salinity=wrong, temperature='25 degC')
            with self.assertRaises(tankwright.Error):
                tankwright.water.density_with_practical_salinity(practical_salinity=wrong, temperature=298.15)

    def test_wrong_calls(self):
        with self.assertRaisesRegex(TypeError, 'did you mean'):
            tankwright.density(practical_salinty=35, temperature='25 degC')
        with self.assertRaises(TypeError):
            tankwright.density(35, 298.15)
        with self.assertRaisesRegex(TypeError, 'twice'):
            tankwright.density(practical_salinity=35, temperature=298.15, temperature_celsius=25)
        with self.assertRaisesRegex(TypeError, 'must be a number'):
            tankwright.density(practical_salinity=35, temperature_celsius='25 degC')
        with self.assertRaisesRegex(AttributeError, 'did you mean salt_for_new_water'):
            tankwright.salt_for_new_watr
        with self.assertRaises(tankwright.BadArgument):
            tankwright.plain('water.nothing')
        with self.assertRaises(ValueError):
            tankwright.plain('water.density_with_practical_salinity')(35.0)
        with self.assertRaises(tankwright.OutOfRange):
            tankwright.plain('water.density_with_practical_salinity')(80.0, 298.15)

    def test_every_formula_can_be_asked(self):
        # Without arguments each answers, or says which of its own arguments it needs.
        for name, formula in tankwright.formulas().items():
            try:
                formula()
            except tankwright.BadValue as e:
                fields = {f['name'] for f in formula.rows[0]['fields']}
                self.assertIn(e.argument.partition('.')[0].partition('[')[0], fields, name)


if __name__ == '__main__':
    unittest.main()
