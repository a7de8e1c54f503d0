// SPDX-License-Identifier: BSL-1.0
// Mistakes that tsc must refuse, each on its line and for its reason. Never run.
import { demo, formulas, read } from 'tankwright';

const plan = await demo();
const { call } = await formulas();
plan.set('vessel.heigth', '70 cm'); // refused: vessel.heigth
plan.assess().findings.filter((f) => f.verdict === 'fails'); // refused: fails
plan.assess({ band: true }); // refused: band
await read({ vessel: { height: '70 cm' } }); // refused: water_level
await read({ units: 'imperial' }); // refused: imperial
call('water.salt_for_new_watr', {}); // refused: salt_for_new_watr
call('water.seawater', { practical_salinity: 35, temprature: '25 degC' }); // refused: temprature
call('water.seawater', { practical_salinity: 35 }); // refused: temperature
call('water.concentration_of', { what: 'natrium', practical_salinity: 35, temperature: 298.15 }); // refused: natrium
call('water.seawater', { practical_salinity: 35, temperature: 298.15 }).result.densty; // refused: densty
call('water.seawater', { practical_salinity: [35], temperature: 298.15 }); // refused: number[]
