// SPDX-License-Identifier: BSL-1.0
// Makes the page: `node build.mjs MODULES PAGE.html [--npm FOLDER]`, where MODULES is the folder of page.wasm and formulas.wasm.
// Program, worker, modules, the list of formulas, styles and letters become one file. With --npm the package of the modules
// (npm/) is laid out in FOLDER as well, in place of what is there, ready for `npm pack`.
import { readFileSync, writeFileSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync, constants } from 'node:zlib';
import { build } from 'esbuild';
import { layOut } from './npm/lay_out.mjs';
import { Library } from './src/library.js';

const here = dirname(fileURLToPath(import.meta.url));
const [modules, page, option, folder] = process.argv.slice(2);
if (!modules || !page || (option && (option !== '--npm' || !folder))) {
  console.error('usage: node build.mjs MODULES PAGE.html [--npm FOLDER]');
  process.exit(2);
}
const read = (path) => readFileSync(join(here, path), 'utf8');

const common = { bundle: true, minify: true, write: false, target: ['es2022'], legalComments: 'none', charset: 'utf8' };
const bundle = async (entry, more = {}) =>
  (await build({ ...common, entryPoints: [join(here, entry)], ...more })).outputFiles[0].text;

const packages = [
  { name: 'preact', for: 'draws the page' },
  { name: 'uplot', for: 'draws curves' },
  { name: '@fontsource-variable/source-sans-3', for: 'the letters' },
];
const licences = packages.map(({ name, for: why }) => {
  const { version, license } = JSON.parse(read(`node_modules/${name}/package.json`));
  return { name, version, licence: license, for: why, text: read(`node_modules/${name}/LICENSE`) };
});
for (const [name, file, licence, why] of [
  ['Boost', 'boost.txt', 'BSL-1.0', 'units, roots and differential equations inside the module'],
  ['toml++', 'tomlplusplus.txt', 'MIT', 'reads plans'],
  ['nlohmann-json', 'nlohmann-json.txt', 'MIT', 'reads plans'],
  ['musl, libc++ and compiler-rt by way of Emscripten', 'emscripten.txt', 'MIT and Apache-2.0 with LLVM exception', 'the languages’ own libraries inside the module'],
]) {
  licences.push({ name, version: '', licence, for: why, text: read(`licences/${file}`) });
}

const packed = Object.entries({
  'module-page': readFileSync(join(modules, 'page.wasm')),
  'module-formulas': readFileSync(join(modules, 'formulas.wasm')),
  'formulas-list': Buffer.from(JSON.stringify(JSON.parse(read('../formulas/formulas.json')))),
}).map(([name, bytes]) => ({ name, size: bytes.length, gzip: gzipSync(bytes, { level: constants.Z_BEST_COMPRESSION }) }));
// What the form is made of before the module has been unpacked, from the module itself: the keys, and what the demo holds.
const library = await Library.make(await WebAssembly.compile(readFileSync(join(modules, 'page.wasm'))));
const demo = library.call('tw_plan_demo', [], 'handle');
const first = {
  version: library.text(library.own.tw_version()),
  keys: library.call('tw_keys', [], 'json'),
  decisions: library.call('tw_decisions', [], 'json').decisions,
  demo: { values: library.call('tw_plan_values', [demo], 'json').values, text: library.call('tw_plan_write', [demo, 1], 'text') },
};
const worker = await bundle('src/worker.js', { format: 'iife' });
const program = await bundle('src/main.jsx', {
  format: 'iife',
  jsx: 'automatic',
  jsxImportSource: 'preact',
  define: {
    PAGE_WORKER: JSON.stringify(worker),
    PAGE_LICENCES: JSON.stringify(licences),
  },
});

const face = (file, style) => {
  const data = readFileSync(join(here, `node_modules/@fontsource-variable/source-sans-3/files/${file}`)).toString('base64');
  return `@font-face{font-family:"Source Sans 3 Variable";font-style:${style};font-weight:200 900;font-display:block;src:url(data:font/woff2;base64,${data}) format("woff2")}`;
};
const css = (await build({ ...common, stdin: { contents: `${read('node_modules/uplot/dist/uPlot.min.css')}\n${read('src/style.css')}`, loader: 'css' } })).outputFiles[0].text;
const style = face('source-sans-3-latin-wght-normal.woff2', 'normal') + css;

// The same formulas for other pages: styles that stay within their own root, sizes by the handbook's larger rem.
const inRoot = css.replaceAll(':root[data-theme=dark]', ':host([data-theme=dark])').replaceAll(':root', ':host')
  .replace(/(\d*\.?\d+)rem/g, (_, size) => `${Number((0.8 * size).toFixed(4))}rem`)
  + ':host{display:block;font-size:.8rem;line-height:1.45;color:var(--ink);background:var(--sheet);border:1px solid var(--rule);border-radius:8px;padding:1rem}'
  + '.choose{display:flex;flex-wrap:wrap;gap:.5rem;justify-content:space-between;margin-bottom:1rem}.which{max-width:100%}.calculator.sheet{max-width:none;padding:0;background:none;box-shadow:none}';
const calculators = await bundle('src/calculators.jsx', {
  format: 'iife', jsx: 'automatic', jsxImportSource: 'preact',
  define: { PAGE_WORKER: JSON.stringify(worker), PAGE_STYLE: JSON.stringify(inRoot) },
});
const forFormulas = Object.fromEntries(packed.filter(({ name }) => name !== 'module-page').map(({ name, gzip }) => [name, gzip.toString('base64')]));

const html = read('src/page.html')
  .replace('/*STYLE*/', () => style)
  .replace('<!--PACKED-->', () => packed.map(({ name, gzip }) => `<script type="text/plain" id="${name}">${gzip.toString('base64')}</script>`).join('\n'))
  .replace('/*FIRST*/', () => JSON.stringify(first).replace(/</g, '\\u003c'))
  .replace('/*PROGRAM*/', () => program.replace(/<\/script/g, '<\\/script').replace(/<!--/g, '<\\!--'));
mkdirSync(dirname(page), { recursive: true });
writeFileSync(page, html);
writeFileSync(join(dirname(page), 'calculators.js'), `globalThis.tankwrightPacked=${JSON.stringify(forFormulas)};\n${calculators}`);
const kb = (n) => `${Math.round(n / 1000)} kB`;
console.log(`${page}: ${kb(html.length)}; in it, by gzip: ${packed.map((p) => `${p.name} ${kb(p.gzip.length)} (${kb(p.size)})`).join(', ')}`);
if (folder) {
  await layOut(folder, modules);
  console.log(`${folder}: the npm package; npm pack makes it one file`);
}
