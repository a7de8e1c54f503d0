// SPDX-License-Identifier: BSL-1.0
// Random states of moist air with the properties that PsychroLib gives. Usage: room_moist_air.mjs OUTPUT_DIRECTORY
// The npm package is pinned, and installed below the output directory when it is not there yet.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';

const PACKAGE = 'psychrolib';
const VERSION = '1.1.1';  // of the npm package; it holds PsychroLib 2.5.0
const SEED = 20260802;
const STATES = 2500;

const out = resolve(process.argv[2]);
const prefix = join(out, 'npm', PACKAGE);
const home = join(prefix, 'node_modules', PACKAGE);
if (!existsSync(join(home, 'package.json'))) {
  mkdirSync(prefix, { recursive: true });
  const run = spawnSync('npm', ['install', '--prefix', prefix, '--no-save', '--no-audit', '--no-fund',
    '--ignore-scripts', `${PACKAGE}@${VERSION}`], { stdio: 'inherit' });
  if (run.status !== 0) throw new Error(`npm could not install ${PACKAGE}@${VERSION}`);
}
const require = createRequire(join(home, 'package.json'));
const found = require('./package.json').version;
if (found !== VERSION) throw new Error(`${home} holds version ${found}, not ${VERSION}`);
const psy = require('./');
psy.SetUnitSystem(psy.SI);
console.log(`seed ${SEED}, ${PACKAGE} ${VERSION}`);

// mulberry32
let state = SEED;
function random() {
  state = (state + 0x6D2B79F5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
}
const between = (low, high) => low + (high - low) * random();

let count = 0;
let ambiguous = 0;
let text = 'id,function,inputs,value,unit,tolerance,source,kind,note\n';
const source = `PsychroLib 2.5.0 (npm ${PACKAGE} ${VERSION}), ${STATES} random states`;
function row(name, inputs, value, unit, tolerance) {
  const given = Object.entries(inputs).map(([k, v]) => `${k}=${v}`).join('; ');
  text += `${++count},tankwright::room::${name},${given},${value},${unit},${tolerance},"${source}",library,\n`;
}

for (let i = 0; i < STATES; ++i) {
  const t = i % 5 === 0 ? between(-20, 5) : between(5, 50);
  const h = between(0.02, 1.0);
  const P = between(70000, 106000);
  const given = { t, RH: h * 100, P };
  const rh = given.RH / 100;  // as the test will read it
  const W = psy.GetHumRatioFromRelHum(t, rh, P);
  const dew = psy.GetTDewPointFromRelHum(t, rh);
  row('saturation_pressure', { t }, psy.GetSatVapPres(t), 'Pa', 'rel 1e-12');
  row('vapour_pressure', given, psy.GetVapPresFromRelHum(t, rh), 'Pa', 'rel 1e-12');
  row('humidity_ratio_of', given, W, '', 'rel 1e-9');
  row('dew_point', given, dew, 'C', '0.002');
  row('specific_volume_of', given, psy.GetMoistAirVolume(t, W, P), 'm3/kg', 'rel 1e-6');
  row('moist_air_density', given, psy.GetMoistAirDensity(t, W, P), 'kg/m3', 'rel 1e-6');
  row('enthalpy', given, psy.GetMoistAirEnthalpy(t, W), 'J/kg', `${1e-9 * Math.max(1000, Math.abs(psy.GetMoistAirEnthalpy(t, W)))}`);
  row('air_from', { by: 'W', t, W, P }, psy.GetRelHumFromHumRatio(t, W, P), '', 'rel 1e-9');
  row('air_from', { by: 'dew', t, dew, P }, psy.GetRelHumFromTDewPoint(t, dew), '', 'rel 1e-9');
  // Near freezing a wet and an iced wick can both satisfy the equations; which one a bisection meets is chance.
  if (t > 0 && W >= psy.GetHumRatioFromTWetBulb(t, 0, P) && W < psy.GetHumRatioFromTWetBulb(t, -1e-9, P)) {
    ++ambiguous;
  } else {
    const wb = psy.GetTWetBulbFromRelHum(t, rh, P);
    row('wet_bulb', given, wb, 'C', '0.005');
    row('air_from', { by: 'wb', t, wb, P }, psy.GetRelHumFromTWetBulb(t, wb, P), '', '1e-9');
  }
  const z = between(-500, 4000);
  row('pressure_at_altitude', { z }, psy.GetStandardAtmPressure(z), 'Pa', 'rel 1e-12');
}
const path = join(out, 'room_moist_air.csv');
writeFileSync(path + '.part', text);
renameSync(path + '.part', path);
console.log(`${path}: ${count} rows; ${ambiguous} states with two wet bulbs left out of the comparison of wet bulbs`);
