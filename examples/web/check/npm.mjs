// SPDX-License-Identifier: BSL-1.0
// Tests of the npm package. `check/run.mjs` runs all of them; `node check/npm.mjs COMMISSION` lays the package out without
// its modules, runs those of the types alone, and says so.
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { layOutTexts } from '../npm/lay_out.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const plans = join(here, '../../commission');

export function same(actual, expected, what) {
  if (actual !== expected) throw new Error(`${what}: ${JSON.stringify(actual)}, not ${JSON.stringify(expected)}`);
}
export function holds(condition, what) {
  if (!condition) throw new Error(what);
}

/** A project that has the package installed. */
function project(folder) {
  const place = mkdtempSync(join(tmpdir(), 'tankwright-npm-'));
  cpSync(folder, join(place, 'node_modules/tankwright'), { recursive: true });
  writeFileSync(join(place, 'package.json'), '{ "type": "module" }\n');
  for (const file of ['typed.ts', 'mistyped.ts']) copyFileSync(join(here, file), join(place, file));
  return place;
}

/** What tsc says of one file of the project: the errors by their line. */
function refused(place, file) {
  const settings = JSON.parse(readFileSync(join(here, 'tsconfig.json'), 'utf8'));
  writeFileSync(join(place, 'tsconfig.json'), JSON.stringify({ ...settings, files: [file] }));
  const ran = spawnSync(join(here, '../node_modules/.bin/tsc'), ['-p', place, '--pretty', 'false'], { encoding: 'utf8' });
  if (ran.error) throw ran.error;
  const errors = new Map();
  let last;
  for (const line of ran.stdout.split('\n').filter(Boolean)) {
    const found = /^(.*)\((\d+),\d+\): error (.*)$/.exec(line);
    if (found) {
      holds(found[1].endsWith(file), line);
      last = Number(found[2]);
      errors.set(last, `${errors.get(last) ?? ''}${found[3]}`);
    } else {
      holds(last !== undefined && line.startsWith(' '), line);
      errors.set(last, `${errors.get(last)}\n${line}`);
    }
  }
  same(ran.status !== 0, errors.size > 0, `tsc ended with ${ran.status} ${ran.stderr}`);
  return errors;
}
const all = (errors) => [...errors].map(([line, what]) => `${line}: ${what}`).join('\n');

/** Data that must be of a type, as a program. */
function fits(place, rows) {
  const text = rows.map(([type, data], i) => `export const a${i}: ${type} = ${JSON.stringify(data)};\n`).join('');
  writeFileSync(join(place, 'fits.ts'), `import type { Formulas, PlanData, PlanValue, Report } from 'tankwright';\n${text}`);
  same(all(refused(place, 'fits.ts')), '', 'tsc says');
}

/** The program that the package's README shows. */
const shown = (folder) => /```js\n(.*?)```/s.exec(readFileSync(join(folder, 'README.md'), 'utf8'))[1];

/** Tests of the types, as [name, run]. */
export function typeTests(folder, commission) {
  const place = project(folder);
  const native = (plan) => JSON.parse(execFileSync(commission, [join(plans, plan), '--json', '--quick'], { maxBuffer: 1e8 }));
  return [
    ['npm: tsc accepts a program that uses the types', () => same(all(refused(place, 'typed.ts')), '', 'tsc says')],
    ['npm: tsc accepts the program of the README', () => {
      writeFileSync(join(place, 'shown.ts'), shown(folder));
      same(all(refused(place, 'shown.ts')), '', 'tsc says');
    }],
    ['npm: tsc refuses each mistake for its reason', () => {
      const expected = new Map(readFileSync(join(here, 'mistyped.ts'), 'utf8').split('\n')
        .map((line, i) => [i + 1, / \/\/ refused: (.*)/.exec(line)?.[1]]).filter(([, word]) => word));
      holds(expected.size >= 3, 'there are no mistakes to refuse');
      const found = refused(place, 'mistyped.ts');
      same([...found.keys()].join(), [...expected.keys()].join(), `lines that are refused:\n${all(found)}`);
      for (const [line, word] of expected) holds(found.get(line).includes(word), `${line}: ${found.get(line)}`);
    }],
    ['npm: a folder that holds something else is left alone, an earlier package is replaced', async () => {
      const other = mkdtempSync(join(tmpdir(), 'tankwright-npm-'));
      writeFileSync(join(other, 'mine.txt'), 'kept');
      const said = await layOutTexts(other).then(() => '', (e) => e.message);
      holds(said.includes('something else'), `says: ${said}`);
      same(readdirSync(other).join(), 'mine.txt', 'what is in the folder');
      const again = join(other, 'package');
      await layOutTexts(again);
      writeFileSync(join(again, 'old.txt'), 'of an earlier version');
      await layOutTexts(again);
      holds(!readdirSync(again).includes('old.txt'), 'an old file is left');
    }],
    ['npm: reports of the native program are of the type Report, and a spoilt one is not', () => {
      const reports = ['demo.toml', 'demo_us.toml', 'demo_flood.toml'].map(native);
      holds(reports.every((r) => r.findings.length > 10), 'a report without findings');
      fits(place, reports.map((r) => ['Report', r]));
      const spoilt = structuredClone(reports[0]);
      spoilt.findings[3].verdict = 'perhaps';
      let passed = true;
      try {
        fits(place, [['Report', spoilt]]);
      } catch (e) {
        passed = !e.message.includes('perhaps');
      }
      holds(!passed, 'a verdict that is none passes');
    }],
  ];
}

/** Tests of the package with its modules, as [name, run]; `compare` holds two reports against each other. */
export async function moduleTests(folder, commission, compare) {
  const place = project(folder);
  const tw = await import(pathToFileURL(join(place, 'node_modules/tankwright/index.mjs')));
  const refusal = async (run) => {
    try {
      await run();
    } catch (e) {
      if (e instanceof tw.LibraryError) return e.data;
      throw e;
    }
    throw new Error('was not refused');
  };
  const edge = 'plumbing.return[1].below_edge';
  return [
    ['npm: npm pack takes what the package needs', () => {
      const how = { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] };
      const said = JSON.parse(execFileSync('npm', ['pack', '--dry-run', '--json'], how));
      const files = [said].flat()[0].files.map((f) => f.path);
      for (const file of ['index.mjs', 'tankwright.d.ts', 'plan.wasm', 'formulas.wasm', 'formulas.json', 'README.md', 'LICENSE',
        'licences/boost.txt']) {
        holds(files.includes(file), `${file} is not packed`);
      }
    }],
    ['npm: the program of the README runs', async () => {
      writeFileSync(join(place, 'shown.mjs'), shown(folder));
      const said = [];
      const { log } = console;
      console.log = (...words) => said.push(words.join(' '));
      try {
        await import(pathToFileURL(join(place, 'shown.mjs')));
      } finally {
        console.log = log;
      }
      holds(said.some((s) => /^sump\.power_cut (holds|thin margin|does not hold) /.test(s)), said.join('\n'));
      holds(/^\d+\.\d+ kg \S/.test(said.at(-1)), said.at(-1));
    }],
    ['npm: every number of three plans is that of the native program', async () => {
      for (const name of ['demo.toml', 'demo_us.toml', 'demo_flood.toml']) {
        const path = join(plans, name);
        const theirs = JSON.parse(execFileSync(commission, [path, '--json', '--quick'], { maxBuffer: 1e8 }));
        const plan = await tw.read(readFileSync(path, 'utf8'));
        const { count } = compare(plan.assess(), theirs);
        holds(count > 50, `only ${count} numbers were compared`);
        plan.free();
      }
    }],
    ['npm: keys are set, read, taken back, and a plan is written and read again', async () => {
      const plan = await tw.demo();
      plan.set(edge, '35 mm +/- 5 mm');
      same(plan.get(edge), '35 mm +/- 5 mm', 'the text');
      same(plan.si(edge), 0.035, 'the number');
      plan.setSi(edge, 0.04);
      same(plan.get(edge), '40 mm +/- 5 mm', 'the text after the number');
      const copy = plan.copy();
      plan.clear(edge);
      same(plan.get(edge), '', 'after it is taken back');
      same(copy.get(edge), '40 mm +/- 5 mm', 'the copy');
      for (const again of [await tw.read(copy.write()), await tw.read(copy.data()), await tw.read(copy.write('json'), 'json')]) {
        same(again.write(), copy.write(), 'read again');
      }
      same(copy.add('plumbing.return').startsWith('plumbing.return['), true, 'the path of what is added');
      plan.free();
      same((await refusal(() => plan.get(edge))).name, 'bad_handle', 'a plan that is freed');
    }],
    ['npm: what is wrong is said with what is known about it', async () => {
      const plan = await tw.demo();
      same((await refusal(() => plan.set('plumbing.lft', '1 m'))).name, 'bad_key', 'a key that is none');
      same((await refusal(() => plan.set('plumbing.lift', 'banana'))).name, 'bad_value', 'a text that is no length');
      same((await refusal(() => plan.write('yaml'))).name, 'bad_argument', 'a notation that is none');
      const bad = await refusal(() => tw.read('[vessel]\nheight = "banana"\n'));
      same(bad.name, 'bad_plan', 'a plan with a mistake');
      same(bad.mistakes.find((m) => m.path === 'vessel.height')?.line, 2, 'the line of the mistake');
      same((await refusal(() => tw.read('= ='))).name, 'bad_document', 'no TOML');
      plan.set(edge, '99 m');
      holds(plan.validate().length > 0, 'a limit that is passed');
      same((await refusal(() => plan.assess())).name, 'bad_plan', 'its assessment');
    }],
    ['npm: bands, progress, and stopping', async () => {
      const plan = await tw.demo();
      let calls = 0;
      same((await refusal(() => plan.assess({ bands: true, progress: () => ++calls > 1 }))).name, 'cancelled', 'a progress that stops');
      holds(calls >= 2, 'the progress was not told');
      let mine;
      try {
        plan.assess({ bands: true, progress: () => { throw new RangeError('mine'); } });
      } catch (e) {
        mine = e;
      }
      holds(mine instanceof RangeError, 'what the progress throws does not come out');
      same(plan.assess({ finding: 'sump.power_cut' }).findings.map((f) => f.id).join(), 'sump.power_cut', 'one finding');
      holds(plan.assess({ figures: true }).figures.length > 0, 'no figures');
    }],
    ['npm: formulas by name', async () => {
      const { call } = await tw.formulas();
      // UNESCO 44 (1983): 1023.343 at S = 35, 25 degC; TEOS-10 lies within 0.01 of it there.
      const { result } = call('water.density', { practical_salinity: 35, temperature: '25 degC' });
      holds(Math.abs(result.value - 1023.343) < 0.01 && result.unit === 'kg/m3', `density ${JSON.stringify(result)}`);
      const batch = call('water.salt_for_new_water', { volume: '2150 L', target: 35, temperature: '24 degC', mix_yield: '87 %' });
      // Conservation of mass: what is poured in comes out.
      const { finished_mass: all_, mix, fresh_water_mass: fresh } = batch.result;
      holds(Math.abs(all_.value - mix.value - fresh.value) < 1e-9, 'mass is not conserved');
      holds(batch.cautions.length > 0 && batch.source, 'no caution');
      const tooSalty = { practical_salinity: 80, temperature: '25 degC' };
      same((await refusal(() => call('water.density', tooSalty))).name, 'out_of_range', 'too salty');
      same((await refusal(() => call('water.densty', {}))).name, 'bad_argument', 'no formula');
    }],
    ['npm: what plans and formulas give is of their types', async () => {
      const { call } = await tw.formulas();
      const asked = [
        ['water.salt_for_new_water', { volume: '2150 L', target: 35, temperature: '24 degC', mix_yield: '87 %' }],
        ['water.changes_to_leave', { part: '20 %', left: 0.5 }],
        ['water.looks_like_a_gravity', { practical_salinity: 1.025 }],
        ['vessel.least_thickness', { nominal: '10 mm' }],
        ['vessel.inside_corners', { outer: [{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 1 }, { x: 0, y: 1 }], thickness: '10 mm' }],
        ['water.free_ammonia_fraction', { ph_reading: { ph_nbs: 8.2 }, practical_salinity: 35, temperature: '25 degC' }],
        ['water.specific_gravity_from_hydrometer', { reading: 1.024, water: '25 degC', instrument: { scale: 'scale_25_25' } }],
        ['vessel.box', { length: '2 m', width: '60 cm', height: '70 cm' }],
      ];
      const plan = await tw.demo();
      fits(place, [['PlanData', plan.data()], ['PlanValue[]', plan.values()], ['Report', plan.assess({ figures: true })],
        ...asked.flatMap(([name, fields]) => [
          [`Formulas['${name}']['fields']`, fields], [`Formulas['${name}']['result']`, call(name, fields).result]])]);
    }],
    ['npm: version, keys and decisions', async () => {
      const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
      same(await tw.version(), version, 'the version');
      holds((await tw.keys()).keys.length > 300 && (await tw.decisions()).length > 30, 'keys and decisions');
    }],
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = join(mkdtempSync(join(tmpdir(), 'tankwright-npm-')), 'package');
  await layOutTexts(folder);
  let passed = 0;
  let failed = 0;
  for (const [name, run] of typeTests(folder, resolve(process.argv[2]))) {
    try {
      await run();
      ++passed;
      console.log(`  ok    ${name}`);
    } catch (e) {
      ++failed;
      console.log(`  FAILS ${name}\n        ${e.message.replaceAll('\n', '\n        ')}`);
    }
  }
  console.log(`types alone, without the modules: ${passed} passed, ${failed} failed`);
  process.exit(failed > 0 ? 1 : 0);
}
