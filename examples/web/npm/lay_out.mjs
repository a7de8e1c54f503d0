// SPDX-License-Identifier: BSL-1.0
// Lays the npm package out, ready for `npm pack`: build.mjs does it with --npm.
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { types } from './make_types.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '../../..');

/** What package.json says; its version is the library's. */
export function description() {
  const header = readFileSync(join(root, 'include/tankwright/version.hpp'), 'utf8');
  const [, version] = /TANKWRIGHT_VERSION "([0-9.]+)"/.exec(header);
  return {
    name: 'tankwright',
    version,
    description: 'Engineering calculations for people who build large saltwater displays by hand',
    license: 'BSL-1.0',
    type: 'module',
    sideEffects: false,
    engines: { node: '>=20' },
    types: './tankwright.d.ts',
    exports: {
      '.': { types: './tankwright.d.ts', default: './index.mjs' },
      './plan.wasm': './plan.wasm',
      './formulas.wasm': './formulas.wasm',
      './formulas.json': './formulas.json',
    },
    files: ['index.mjs', 'tankwright.d.ts', 'plan.wasm', 'formulas.wasm', 'formulas.json', 'licences'],
  };
}

/** index.mjs and what it imports of the page, as one readable file. */
async function program() {
  const made = await build({
    entryPoints: [join(here, 'index.mjs')], bundle: true, write: false, format: 'esm', platform: 'neutral', target: ['es2022'],
    external: ['node:*'], charset: 'utf8',
  });
  return made.outputFiles[0].text;
}

/** Takes away what an earlier one left; a folder with anything else in it stays as it is. */
function makeRoom(folder) {
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    const mine = join(folder, 'package.json');
    if (!existsSync(mine) || JSON.parse(readFileSync(mine, 'utf8')).name !== 'tankwright') {
      throw new Error(`${folder} holds something else: name a new folder`);
    }
    rmSync(folder, { recursive: true });
  }
  mkdirSync(join(folder, 'licences'), { recursive: true });
}

/** What needs no module: program, types, list, words and licences. */
export async function layOutTexts(folder) {
  makeRoom(folder);
  writeFileSync(join(folder, 'package.json'), `${JSON.stringify(description(), null, 2)}\n`);
  writeFileSync(join(folder, 'index.mjs'), await program());
  writeFileSync(join(folder, 'tankwright.d.ts'), types());
  const listed = JSON.parse(readFileSync(join(root, 'examples/formulas/formulas.json'), 'utf8'));
  writeFileSync(join(folder, 'formulas.json'), JSON.stringify(listed));
  copyFileSync(join(here, 'README.md'), join(folder, 'README.md'));
  copyFileSync(join(root, 'LICENSE'), join(folder, 'LICENSE'));
  for (const name of ['boost', 'emscripten', 'nlohmann-json', 'tomlplusplus']) {
    copyFileSync(join(here, `../licences/${name}.txt`), join(folder, `licences/${name}.txt`));
  }
}

/** The whole package. `modules` is the folder of page.wasm and formulas.wasm. */
export async function layOut(folder, modules) {
  await layOutTexts(folder);
  copyFileSync(join(modules, 'page.wasm'), join(folder, 'plan.wasm'));
  copyFileSync(join(modules, 'formulas.wasm'), join(folder, 'formulas.wasm'));
}
