// SPDX-License-Identifier: BSL-1.0
// A browser for the tests: pages opened from disk, keys pressed as a person presses them.
import { mkdtempSync, readFileSync, readdirSync, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
export const pause = (ms) => new Promise((go) => setTimeout(go, ms));

export async function browser() {
  const path = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);
  if (!path) throw new Error('there is no Chromium here');
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : []; // Chromium refuses its sandbox to root
  return puppeteer.launch({ executablePath: path, headless: true, args: [...sandbox, '--disable-gpu'] });
}

/** A page in a context of its own (with nothing in its storage), and what went wrong in it. */
export async function openPage(chromium, file, { width = 1280, height = 900, dark = false, before, wait = true } = {}) {
  const context = await chromium.createBrowserContext();
  const page = await context.newPage();
  page.faults = [];
  page.asked = [];
  page.on('pageerror', (e) => page.faults.push(String(e.stack ?? e)));
  page.on('console', (m) => m.type() === 'error' && page.faults.push(m.text()));
  page.on('request', (r) => page.asked.push(r.url()));
  await page.setViewport({ width, height, deviceScaleFactor: 1, isMobile: width < 500, hasTouch: width < 500 });
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }]);
  page.downloads = mkdtempSync(join(tmpdir(), 'tankwright-page-'));
  const session = await page.createCDPSession();
  await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: page.downloads, browserContextId: context.id });
  if (before) await page.evaluateOnNewDocument(before);
  await page.goto(`file://${file}`);
  if (wait) await ready(page);
  return page;
}

export const ready = (page) => page.waitForFunction(() => globalThis.tankwright?.store.state.phase === 'ready', { timeout: 60000 });
export const checked = (page) => page.waitForFunction(() => tankwright.store.state.checked, { timeout: 240000, polling: 100 });
/** Nothing is under way: the edit before has been answered and drawn. An answer may lead to one more question. */
export async function settled(page) {
  await pause(30);
  await page.evaluate(async () => {
    for (let i = 0; i < 2; ++i) {
      await tankwright.store.ask('state');
      await new Promise((heard) => setTimeout(heard, 0));
    }
    await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 0)));
  });
}

/** Press Tab until the focus is on what `matches` (a function of the page) says; how often. */
export async function tabTo(page, matches, arg, most = 600) {
  for (let presses = 0; presses <= most; ++presses) {
    if (await page.evaluate(`(${matches})(document.activeElement, ${JSON.stringify(arg ?? null)})`)) return presses;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the Tab key does not lead there: ${matches} ${arg ?? ''}`);
}
export const focusedId = (page) => page.evaluate(() => document.activeElement.id);

/** Type into the box in focus, over what is in it, and leave it. */
export async function typeOver(page, text) {
  await page.keyboard.down('Control');
  await page.keyboard.press('a');
  await page.keyboard.up('Control');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await settled(page);
}

/** What axe-core finds, by all its rules or by those that are named. */
export async function violations(page, rules) {
  await page.evaluate(axe);
  const runOnly = rules ? { type: 'rule', values: rules } : ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations: found } = await page.evaluate((only) => axe.run(document, { runOnly: only, resultTypes: ['violations'] }), runOnly);
  return found.map((v) => `${v.id}: ${v.nodes.slice(0, 4).map((n) => `${n.target} ${n.any[0]?.message ?? n.all[0]?.message ?? n.none[0]?.message ?? ''}`).join(' | ')}`);
}

/** What the page has saved, when it is there. */
export async function downloaded(page) {
  for (let i = 0; i < 100; ++i) {
    const names = readdirSync(page.downloads).filter((n) => !n.endsWith('.crdownload'));
    if (names.length > 0) return join(page.downloads, names.at(-1));
    await pause(50);
  }
  throw new Error('nothing was saved');
}
