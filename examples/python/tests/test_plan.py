# SPDX-License-Identifier: BSL-1.0
"""Plans: keys, reports, what a caller can get wrong."""
import copy
import math
import os
import pickle
import tempfile
import threading
import unittest

import tankwright


def small() -> tankwright.Plan:
    """Plumbing alone: quick to sample."""
    plan = tankwright.new()
    for path, text in {
            'plumbing.lift': '1.45 m', 'plumbing.overflow.surface': '2.4 m2', 'plumbing.overflow.crest_height': '0.8 m',
            'plumbing.overflow.width': '0.8 m', 'plumbing.pump.flows': ['0 L/h', '8000 L/h', '15000 L/h'],
            'plumbing.pump.heads': '4.6 m, 3.4 m, 0.6 m', 'plumbing.return[1].label': 'left',
            'plumbing.return[left].bore': '57 mm', 'plumbing.return[left].length': '3 m',
            'plumbing.return[left].loss': 4.5, 'plumbing.return[left].below_edge': '40 mm', 'plumbing.sump.rim': '800 mm',
            'plumbing.sump.running_level': '250 mm', 'plumbing.sump.chamber[1].area': '0.9 m2'}.items():
        plan[path] = text
    return plan


class Keys(unittest.TestCase):
    def test_set_get_and_take_back(self):
        plan = small()
        self.assertEqual(plan['plumbing.return[left].below_edge'], '40 mm')
        plan['plumbing.return[left].below_edge'] = '35 mm +/- 5 mm'
        self.assertEqual(plan['plumbing.return[left].below_edge'], '35 mm +/- 5 mm')
        self.assertEqual(plan.si('plumbing.return[left].below_edge'), 0.035)
        plan.set_si('plumbing.return[left].below_edge', 0.04)
        self.assertEqual(plan['plumbing.return[left].below_edge'], '40 mm +/- 5 mm')
        del plan['plumbing.return[left].below_edge']
        self.assertIsNone(plan['plumbing.return[left].below_edge'])
        self.assertNotIn('plumbing.return[left].below_edge', plan)
        self.assertTrue(math.isnan(plan.si('plumbing.return[left].below_edge')))

    def test_as_a_mapping(self):
        plan = small()
        self.assertIn('plumbing.sump', plan)
        self.assertIn('plumbing.sump.rim', plan)
        self.assertNotIn('room', plan)
        self.assertNotIn(7, plan)
        self.assertEqual(dict(plan.items())['plumbing.return[left].loss'], '4.5')
        self.assertEqual(len(plan), 14)
        self.assertEqual(list(plan)[0], 'plumbing.lift')
        self.assertEqual(plan.get('room.volume', 'nothing'), 'nothing')
        self.assertEqual(plan.add('plumbing.return'), 'plumbing.return[2]')

    def test_copies_are_equal_and_apart(self):
        plan = small()
        for other in (plan.copy(), copy.copy(plan), copy.deepcopy(plan), pickle.loads(pickle.dumps(plan)),
                      tankwright.read_text(plan.to_toml()), tankwright.read_text(plan.to_json(), 'json')):
            self.assertEqual(other, plan)
            other['plumbing.sump.rim'] = '0.9 m'
            self.assertNotEqual(other, plan)
        self.assertNotEqual(plan, 'a plan')

    def test_files(self):
        with tempfile.TemporaryDirectory() as folder:
            for name in ('plan.toml', 'plan.JSON'):
                path = os.path.join(folder, name)
                small().save(path)
                self.assertEqual(tankwright.read(path), small())
            self.assertEqual(sorted(os.listdir(folder)), ['plan.JSON', 'plan.toml'])
            with self.assertRaises(FileNotFoundError):
                tankwright.read(os.path.join(folder, 'none.toml'))
            with self.assertRaises(OSError):
                small().save(os.path.join(folder, 'none', 'plan.toml'))

    def test_lists_of_keys_and_decisions(self):
        key = next(k for k in tankwright.keys() if k['path'] == 'plumbing.return[].below_edge')
        self.assertEqual((key['quantity'], key['unit'], key['set_by']), ('length', 'm', 'chosen'))
        self.assertLess(key['low'], key['high'])
        ids = [d['id'] for d in tankwright.decisions()]
        self.assertIn('sump.power_cut', ids)
        self.assertEqual(len(ids), len(set(ids)))
        for k in tankwright.keys():  # a form can show every key
            self.assertTrue(k['means'], k['path'])
            if 'quantity' in k:
                units = tankwright.library.units()[k['quantity']]
                for system in ('si', 'us'):
                    self.assertTrue(k['everyday'][system] in units or not units, k['path'])


class Answers(unittest.TestCase):
    def test_margin_of_a_slider(self):
        # An outlet 20 mm deeper: a display of 2.4 m2 falls 20 mm more, a sump of 0.9 m2 rises 20 mm * 2.4 / 0.9.
        plan = small()
        before = plan.assess()['sump.power_cut'].margin
        plan['plumbing.return[left].below_edge'] = '60 mm'
        after = plan.assess('sump.power_cut')['sump.power_cut'].margin
        self.assertAlmostEqual(float(before) - float(after), 0.020 * 2.4 / 0.9, delta=0.0005)
        self.assertAlmostEqual(before.to('mm'), float(before) * 1000, places=9)
        self.assertAlmostEqual(before.to('inches'), float(before) / 0.0254, places=9)

    def test_report(self):
        report = tankwright.demo().assess(figures=True)
        self.assertGreater(len(report), 40)
        self.assertEqual(len(report), len(list(report)))
        self.assertIn('sump.power_cut', report)
        self.assertNotIn('sump.nothing', report)
        finding = report['sump.power_cut']
        self.assertEqual(finding.holds, finding.verdict == 'holds')
        self.assertIn('sump.power_cut', repr(finding))
        self.assertIs(type(finding['reserve'].central), float)
        with self.assertRaisesRegex(KeyError, 'it has left'):
            finding['nothing']
        with self.assertRaisesRegex(KeyError, 'did you mean sump.power_cut'):
            report['sump.power_cutt']
        for f in report:
            low_to_high = [(n.low, n.central, n.high) for n in f.numbers if not math.isnan(n.central)]
            self.assertTrue(all(a <= b <= c for a, b, c in low_to_high), f.id)
            if f.data.get('margin'):
                self.assertEqual(f.margin.role, 'margin')

    def test_shows_itself_with_its_caution(self):
        plan = small()
        plan['title'] = '<b>Eels</b>'
        report = plan.assess()
        self.assertIn('&lt;b&gt;Eels&lt;/b&gt;', report._repr_html_())
        for finding in report:
            shown = finding._repr_html_()
            self.assertIn(tankwright.report.escaped(finding.question), shown)
            self.assertIn(tankwright.report.escaped(finding.caution), shown)

    def test_bands_can_be_watched_and_stopped(self):
        plan, told = small(), []
        report = plan.assess(bands=True, progress=lambda done, of: told.append((done, of)))
        self.assertTrue(report.by_chance)
        self.assertGreater(len(told), 2)
        self.assertEqual(told[-1][0], told[-1][1])
        self.assertFalse(report['sump.power_cut'].margin.is_sharp)
        with self.assertRaises(tankwright.Cancelled):
            plan.assess(bands=True, progress=lambda done, of: True)
        with self.assertRaises(ZeroDivisionError):
            plan.assess(bands=True, progress=lambda done, of: 1 // 0)

    def test_what_would_hold_holds(self):
        plan = small()
        plan['plumbing.return[left].below_edge'] = '300 mm'
        self.assertEqual(plan.assess('sump.power_cut')['sump.power_cut'].verdict, 'does not hold')
        cures = plan.cures('sump.power_cut')
        self.assertTrue(cures)
        for cure in cures:
            other = plan.copy()
            other.apply(cure)
            self.assertEqual(other.assess('sump.power_cut', bands=True)['sump.power_cut'].verdict, 'holds', str(cure))

    def test_over_a_whole_list(self):
        plan = tankwright.demo()
        change = tankwright.report.Change('plumbing.return[].below_edge', '', '10 mm')
        plan.apply(tankwright.Cure('', (change,), 1.0, 0.0, (), ()))
        self.assertEqual([plan[f'plumbing.return[{i}].below_edge'] for i in (1, 2)], ['10 mm', '10 mm'])

    def test_text_and_page(self):
        plan = small()
        self.assertIn('sump', plan.text('us'))
        self.assertTrue(plan.page().rstrip().endswith('</html>'))
        with self.assertRaises(ValueError):
            plan.text('metric')

    def test_draws_where_matplotlib_is(self):
        try:
            import matplotlib
        except ImportError:
            with self.assertRaisesRegex(ImportError, 'matplotlib'):
                tankwright.demo().assess(figures=True)['sump.power_cut'].plot()
            return
        matplotlib.use('Agg')
        drawn = 0
        for finding in tankwright.demo().assess(figures=True):
            if finding.figures:
                axes = finding.plot()
                self.assertEqual(axes.get_title(), finding.figures[0]['title'])
                drawn += 1
        self.assertGreater(drawn, 3)


class BadInput(unittest.TestCase):
    def test_wrong_keys(self):
        plan = small()
        before = plan.to_toml()
        with self.assertRaises(tankwright.BadKey) as caught:
            plan['plumbing.retrun[left].bore'] = '50 mm'
        self.assertIsInstance(caught.exception, KeyError)
        self.assertIn('did you mean return?', str(caught.exception))
        self.assertEqual(caught.exception.path, 'plumbing.retrun[left].bore')
        with self.assertRaises(tankwright.BadValue) as caught:
            plan['plumbing.lift'] = '2 kg'
        self.assertEqual(caught.exception.data['text'], '2 kg')
        self.assertIn('a length', caught.exception.expected)
        with self.assertRaises(tankwright.BadValue):
            plan['plumbing.lift'] = 2  # of what?
        for key, value in ((3, 'x'), (None, 'x'), ('title', None), ('title', {}), ('title', b'x')):
            with self.assertRaises(TypeError):
                plan[key] = value
        with self.assertRaises(tankwright.BadValue):
            plan['title'] = 'a\0b'
        with self.assertRaises(tankwright.BadValue):
            plan['title'] = 'a\ud800b'
        with self.assertRaises(tankwright.BadValue):
            plan['title'] = 'a' * 10_000_000
        with self.assertRaises(tankwright.BadValue):
            plan.set_si('plumbing.lift', math.nan)
        self.assertEqual(plan.to_toml(), before)

    def test_wrong_plans(self):
        with self.assertRaises(tankwright.BadDocument) as caught:
            tankwright.read_text('title = ')
        self.assertEqual(caught.exception.line, 1)
        with self.assertRaises(tankwright.BadPlan) as caught:
            tankwright.read_text('[room]\nhighest_humidity = "60 kg"\nhumidty = 1\n')
        self.assertEqual([m.line for m in caught.exception.mistakes], [2, 3])
        self.assertEqual(caught.exception.mistakes[0].path, 'room.highest_humidity')
        with tempfile.NamedTemporaryFile(suffix='.toml') as picture:
            picture.write(b'\x89PNG\r\n\x1a\n\0\0\0\rIHDR')
            picture.flush()
            with self.assertRaises(tankwright.BadDocument):
                tankwright.read(picture.name)
        for wrong in (b'title = 1', None, 3):
            with self.assertRaises(TypeError):
                tankwright.read_text(wrong)
        with self.assertRaises(ValueError):
            tankwright.read_text('', 'yaml')

    def test_a_plan_that_contradicts_itself(self):
        plan = small()
        plan['plumbing.sump.running_level'] = '9 m'
        mistakes = plan.validate()
        self.assertEqual(mistakes[0].path, 'plumbing.sump.running_level')
        with self.assertRaises(tankwright.BadPlan) as caught:
            plan.assess()
        self.assertEqual(caught.exception.mistakes, mistakes)
        self.assertEqual(small().validate(), [])
        with self.assertRaisesRegex(tankwright.BadArgument, 'did you mean sump.power_cut'):
            small().assess('sump.powercut')

    def test_a_closed_plan(self):
        plan = small()
        plan.close()
        plan.close()
        for use in (plan.assess, plan.to_toml, plan.copy, plan.validate, lambda: plan['title'], lambda: len(plan)):
            with self.assertRaises(tankwright.BadHandle):
                use()
        self.assertIn('closed', repr(plan))

    def test_errors_can_be_pickled(self):
        with self.assertRaises(tankwright.BadKey) as caught:
            small()['plumbing.lft']
        again = pickle.loads(pickle.dumps(caught.exception))
        self.assertEqual((type(again), again.data, str(again)),
                         (tankwright.BadKey, caught.exception.data, str(caught.exception)))

    def test_threads_on_one_plan(self):
        plan, wrong = small(), []

        def work(number):
            try:
                for i in range(20):
                    plan['title'] = f'{number} {i}'
                    plan.assess('plumbing.flow')
                    plan.copy()
            except Exception as e:
                wrong.append(e)

        threads = [threading.Thread(target=work, args=(i,)) for i in range(4)]
        for t in threads:
            t.start()
        for t in threads:
            t.join()
        self.assertEqual(wrong, [])


if __name__ == '__main__':
    unittest.main()
