// SPDX-License-Identifier: BSL-1.0
// A program that tsc --strict accepts.
import { create, demo, formulas, LibraryError, read, starter, version } from 'tankwright';
import type { Cure, Finding, Formulas, KeyPath, PlanData, Quantity, Report, Verdict, returned, words } from 'tankwright';

const data: PlanData = { title: 'a box', units: 'si', vessel: { height: '0.7 m', water_level: '65 cm', shape: 'box', length: '2 m', width: 0.6 } };
const plan = await read(data);
plan.set('vessel.height', '70 cm');
plan.set('plumbing.return[left return].below_edge', '35 mm +/- 5 mm');
for (let i = 1; i < 3; ++i) plan.set(`plumbing.return[${i}].below_edge`, '35 mm');
plan.clear('plumbing.return[1]');
const path: KeyPath = 'plumbing.lift';
const lift: number = plan.si(path);

const report: Report = plan.assess({ bands: true, figures: true, progress: (done, of) => done > of / 2 });
const bad: Finding[] = report.findings.filter((f) => f.verdict === 'does not hold');
const verdict: Verdict | undefined = bad[0]?.verdict;
const cures: Cure[] = plan.cures('sump.power_cut');
for (const cure of cures) plan.apply(cure);

const { call } = await formulas();
const batch = call('water.salt_for_new_water', { volume: '2150 L', target: 35, temperature: { value: 24, unit: 'degC' }, mix_yield: 0.87 });
const mix: Quantity<'mass'> = batch.result.mix;
const again = call('water.density', { practical_salinity: 35, temperature: '25 degC', extrapolate: true }).result;
const what: words.Constituent = 'sodium';
call('water.concentration_of', { what, practical_salinity: 35, temperature: 298.15 });
call('vessel.filled_volume', { vessel: { box: { length: '2 m', width: '60 cm', height: '70 cm' } }, depth: '50 cm' });
call('water.free_ammonia_fraction', { ph_reading: { ph_nbs: 8.2 }, practical_salinity: 35, temperature: '25 degC' });
call('water.specific_gravity_from_hydrometer', { reading: 1.024, water: '25 degC', instrument: { scale: 'scale_25_25' } });
const corners: returned.Corner[] = call('vessel.inside_corners', { outer: [{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 1 }], thickness: '10 mm' }).result;
const least: Quantity<'length'> | null = call('vessel.least_thickness', { nominal: '10 mm' }).result;
const fields: Formulas['water.seawater']['fields'] = { practical_salinity: 35, temperature: again.value ?? 298.15 };

try {
  plan.set('vessel.height', 'banana');
} catch (e) {
  if (e instanceof LibraryError) console.log(e.data.name === 'bad_value', e.data.expected);
}
console.log(await version(), lift, verdict, mix.value, corners.length, least, fields, await create(), await starter('us'), await demo());
