// SPDX-License-Identifier: BSL-1.0
// The calculators of the theory pages in a headless Chromium: `node check.mjs HANDBOOK ASK_FORMULA [PICTURES]`. HANDBOOK is the
// folder of run.sh; pages are opened from disk. What a number should be comes from the native program. With PICTURES, a
// page with its calculator is put there as PNG at 1280 and 390 px.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { browser, openPage, pause } from '../../examples/web/check/browser.mjs';

const [folder, ask] = process.argv.slice(2, 4).map((p) => resolve(p));
const pictures = process.argv[4];
const pages = JSON.parse(readFileSync(join(folder, 'calculators.json')));
const chromium = await browser();
let passed = 0;
let failed = 0;
const holds = (good, what) => {
  if (!good) throw new Error(what);
};
async function test(name, run) {
  try {
    await run();
    ++passed;
    console.log(`  ok    ${name}`);
  } catch (e) {
    ++failed;
    console.log(`  FAILS ${name}\n        ${e.message}`);
  }
  for (const context of chromium.browserContexts().slice(1)) await context.close().catch(() => {});
}
const native = (name, fields) => {
  try {
    return JSON.parse(execFileSync(ask, [name, JSON.stringify(fields)]));
  } catch (e) {
    return JSON.parse(e.stdout);
  }
};

const inside = (page, what, arg) => page.evaluateHandle(`(${what})(document.querySelector('.calculators > div').shadowRoot, ${JSON.stringify(arg ?? null)})`);
const shown = (page, selector) => page.waitForFunction((s) => document.querySelector('.calculators > div')?.shadowRoot.querySelector(s), { timeout: 60000 }, selector);
const open = async (name, options) => {
  const page = await openPage(chromium, join(folder, 'site', name.replace('.md', '.html')), { ...options, wait: false });
  return page;
};
const begin = async (page) => {
  await page.click('.calculators button');
  await shown(page, '.calculator');
};
async function fill(page, formula, fields) {
  if (await (await inside(page, (room) => room.querySelector('.which') !== null)).jsonValue()) {
    const menu = await inside(page, (room) => room.querySelector('.which'));
    await menu.select(formula);
  }
  for (const [name, text] of Object.entries(fields)) {
    const box = await inside(page, (room, id) => room.getElementById(id), `a-${name}`);
    await box.evaluate((e) => {
      e.focus();
      e.select();
    });
    await page.keyboard.type(text);
  }
}
const answerTo = async (page, formula, fields) => {
  await page.waitForFunction((n, f) => {
    const last = tankwrightCalculators.answers.at(-1);
    return last?.formula === n && Object.keys(last.fields).length === f;
  }, { timeout: 60000 }, formula, Object.keys(fields).length);
  await pause(100);
  return page.evaluate(() => tankwrightCalculators.answers.at(-1));
};

/** Every number of the native answer is in the page's, to 1e-12; how many there are. */
function compared(mine, theirs, where) {
  if (typeof theirs === 'number') {
    const off = Math.abs(mine - theirs) / Math.max(Math.abs(mine), Math.abs(theirs), 1e-300);
    holds(mine === theirs || off <= 1e-12, `${where}: ${mine} in the page, ${theirs} native`);
    return 1;
  }
  if (theirs !== null && typeof theirs === 'object') {
    return Object.keys(theirs).reduce((count, key) => count + compared(mine?.[key], theirs[key], `${where}.${key}`), 0);
  }
  holds(mine === theirs, `${where}: ${mine} in the page, ${theirs} native`);
  return 0;
}

const asked = [
  ['theory/density.md', 'water.density_with_practical_salinity', { practical_salinity: '35', temperature: '25' }],
  ['theory/heat.md', 'water.specific_heat', { practical_salinity: '33.5', temperature: '24' }],
  ['theory/moist-air.md', 'room.saturation_pressure', { temperature: '21.5' }],
  ['theory/panel.md', 'vessel.hydrostatic_pressure', { depth: '1.2', water_density: '1024' }],
  ['theory/oxygen.md', null, { practical_salinity: '35', temperature: '26' }],
  ['theory/space.md', 'life.swim_clearance', { animal: '0.3', run: '2.4', width: '0.9', speed: '0.5' }],
];
for (const [name, wanted, fields] of asked) {
  const formula = wanted ?? pages[name][0];
  await test(`${name}: ${formula} gives what the native program gives`, async () => {
    holds(pages[name]?.includes(formula), 'the page has no calculator for it');
    const page = await open(name);
    holds(page.url().startsWith('file://'), 'is not opened from disk');
    await begin(page);
    await fill(page, formula, fields);
    const { fields: given, answer } = await answerTo(page, formula, fields);
    const count = compared(answer.result, native(formula, given).result, formula);
    holds(count > 0, 'no number was compared');
    await shown(page, '.answer .numbers');
    const text = await (await inside(page, (room) => room.querySelector('.answer .numbers').textContent)).jsonValue();
    if (typeof answer.result.value === 'number' && answer.result.text) holds(text.replaceAll(' ', ' ').includes(answer.result.text.split(' ')[0]), `shows ${text}`);
    const elsewhere = page.asked.filter((u) => !/^(file|blob|data):/.test(u));
    holds(elsewhere.length === 0, `asked of the network: ${elsewhere}`);
    // The theme asks for its search index, which a browser does not hand to a page from disk.
    const faults = page.faults.filter((f) => !/search_index|net::ERR_FAILED|Failed to fetch/.test(f));
    holds(faults.length === 0, faults.join('\n'));
  });
}

await test('the density of the published example is shown, and what lies outside the range is refused in a sentence', async () => {
  const page = await open('theory/density.md');
  await begin(page);
  await fill(page, 'water.density_with_practical_salinity', { practical_salinity: '35', temperature: '25' });
  await shown(page, '.answer .numbers');
  // UNESCO 44 (1983): 1023.343 kg/m3 at S = 35, 25 degC; TEOS-10 lies within 0.01 of it there.
  const said = async (selector) => (await inside(page, (room, s) => room.querySelector(s).textContent, selector)).jsonValue();
  holds(/1023\.3/.test(await said('.answer .numbers')), await said('.answer .numbers'));
  await fill(page, 'water.density_with_practical_salinity', { practical_salinity: '80' });
  await shown(page, '.answer .mistake');
  holds(/42/.test(await said('.answer .mistake')), `says: ${await said('.answer .mistake')}`);
});

await test('every theory page that names a formula has its calculator, and loads nothing before it is asked for', async () => {
  const page = await open('theory/density.md');
  holds(await page.$eval('.calculators button', (b) => !b.hidden), 'the button is hidden');
  holds(!(await page.evaluate(() => 'tankwrightPacked' in globalThis)), 'the module is loaded already');
  for (const [name, formulas] of Object.entries(pages)) {
    const html = readFileSync(join(folder, 'site', name.replace('.md', '.html')), 'utf8');
    holds(html.includes(`data-formulas="${formulas.join(' ')}"`), `${name} has none`);
  }
  holds(Object.keys(pages).length > 50, `only ${Object.keys(pages).length} pages have one`);
});

for (const width of [1280, 390]) {
  await test(`a page with its calculator is no wider than ${width} px`, async () => {
    for (const name of ['theory/density.md', 'theory/panel.md', 'theory/power_cut.md']) {
      const page = await open(name, { width, height: width < 500 ? 844 : 900 });
      await begin(page);
      if (name === 'theory/density.md') {
        await fill(page, 'water.density_with_practical_salinity', { practical_salinity: '35', temperature: '25' });
        await shown(page, '.answer .numbers');
        await page.$eval('.calculators', (e) => e.scrollIntoView());
        if (pictures) await page.screenshot({ path: join(pictures, `calculator_${width}.png`) });
      }
      const wide = await page.evaluate(() => document.querySelector('.calculators').scrollWidth - document.querySelector('.calculators').clientWidth);
      holds(wide <= 0, `${name}: ${wide} px beyond its column`);
      const beyond = await page.evaluate(() => document.scrollingElement.scrollWidth - innerWidth);
      holds(beyond <= 0, `${name}: ${beyond} px beyond the screen`);
      await page.browserContext().close();
    }
  });
}

await chromium.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
