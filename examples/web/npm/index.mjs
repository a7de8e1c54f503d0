// SPDX-License-Identifier: BSL-1.0
// The package: plans, their assessment and the formulas by name, over the two WebAssembly modules of the page. Thin: what
// is asked goes to the C library as it is. The types and what each function is for stand in public.d.ts.
import { Library, LibraryError } from '../src/library.js';

export { LibraryError };

const bands = 1;
const cures = 2;
const figures = 4;
const compact = 8;
const notations = { toml: 0, json: 1 };
const systems = { si: 0, us: 1 };

/** The number of a word; what is none is refused as the library would. */
function chosen(word, known, what) {
  if (Object.hasOwn(known, word)) return known[word];
  const message = `${what} is one of ${Object.keys(known).join(', ')}, not ${word}`;
  throw new LibraryError({ code: 2, name: 'bad_argument', message });
}

// ---- the modules -------------------------------------------------------------------------------------------------------

const places = {
  plan: new URL('./plan.wasm', import.meta.url),
  formulas: new URL('./formulas.wasm', import.meta.url),
};
const loaded = {};
let told = null; // who asked for the long call that is running

export function modules(from) {
  for (const [name, place] of Object.entries(from)) {
    if (!Object.hasOwn(places, name)) throw new TypeError(`there is no module called ${name}`);
    if (loaded[name]) throw new Error(`the module ${name} is loaded already`);
    places[name] = place;
  }
}

async function compiled(place) {
  if (place instanceof WebAssembly.Module) return place;
  if (typeof place !== 'string' && !(place instanceof URL)) return WebAssembly.compile(place);
  const url = new URL(place, import.meta.url);
  if (url.protocol === 'file:') {
    const { readFile } = await import(/* webpackIgnore: true */ /* @vite-ignore */ 'node:fs/promises');
    return WebAssembly.compile(await readFile(url));
  }
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url} answers ${answer.status}`);
  return WebAssembly.compile(await answer.arrayBuffer());
}

/** A module, once; where it did not come, the next call tries again. */
function library(name) {
  loaded[name] ??= compiled(places[name])
    .then((module) => Library.make(module, (done, of) => told?.(done, of) ?? 0))
    .catch((e) => {
      delete loaded[name];
      throw e;
    });
  return loaded[name];
}

// ---- plans -------------------------------------------------------------------------------------------------------------

let plans = null; // the library, from the first plan on
const left = new FinalizationRegistry((handle) => plans.own.tw_plan_free(handle));

export class Plan {
  #handle;
  /** Plans are made by read, create, starter, demo and copy. */
  constructor(handle) {
    if (typeof handle !== 'number') throw new TypeError('plans are made by read, create, starter and demo');
    this.#handle = handle;
    left.register(this, handle, this);
  }
  get(path) {
    return plans.call('tw_plan_get', [this.#handle, String(path)], 'text');
  }
  set(path, text) {
    plans.call('tw_plan_set', [this.#handle, String(path), String(text)]);
  }
  si(path) {
    return plans.call('tw_plan_get_si', [this.#handle, String(path)], 'number');
  }
  setSi(path, si) {
    plans.call('tw_plan_set_si', [this.#handle, String(path), Number(si)]);
  }
  clear(path) {
    plans.call('tw_plan_clear', [this.#handle, String(path)]);
  }
  add(path) {
    return plans.call('tw_plan_add', [this.#handle, String(path)], 'text');
  }
  values() {
    return plans.call('tw_plan_values', [this.#handle], 'json').values;
  }
  validate() {
    return plans.call('tw_plan_validate', [this.#handle], 'json').mistakes;
  }
  assess(options = {}) {
    const parts = (options.bands ? bands : 0) | (options.cures ? cures : 0) | (options.figures ? figures : 0) | compact;
    if (options.finding !== undefined) {
      // One decision: the library's own function, whose progress would have to be a pointer.
      return plans.call('tw_plan_assess', [this.#handle, String(options.finding), parts, 0, 0], 'json');
    }
    return this.#watched(options.progress, () => plans.call('page_assess', [this.#handle, parts], 'json'));
  }
  /** Call with a progress function; what it raises comes out here, not in the module. */
  #watched(progress, run) {
    if (!progress) return run();
    let raised = null;
    told = (done, of) => {
      try {
        return progress(done, of) ? 1 : 0;
      } catch (e) {
        raised = { e };
        return 1;
      }
    };
    try {
      return run();
    } catch (e) {
      throw raised ? raised.e : e;
    } finally {
      told = null;
    }
  }
  cures(finding) {
    return plans.call('tw_plan_cures', [this.#handle, String(finding)], 'json').cures;
  }
  apply(cure) {
    for (const { path, to } of cure.changes) {
      const [list, rest] = path.split('[]');
      if (rest === undefined) {
        this.set(path, to);
        continue;
      }
      const isElement = (v) => v.text === undefined && v.path.startsWith(`${list}[`) && v.path.endsWith(']')
        && !v.path.slice(list.length).includes('].');
      const count = this.values().filter(isElement).length;
      for (let i = 1; i <= count; ++i) this.set(`${list}[${i}]${rest}`, to);
    }
  }
  write(notation = 'toml') {
    return plans.call('tw_plan_write', [this.#handle, chosen(notation, notations, 'the notation')], 'text');
  }
  data() {
    return JSON.parse(this.write('json'));
  }
  copy() {
    return new Plan(plans.call('tw_plan_copy', [this.#handle], 'handle'));
  }
  free() {
    if (this.#handle === 0) return;
    left.unregister(this);
    plans.own.tw_plan_free(this.#handle);
    this.#handle = 0; // no handle: every call says so
  }
}

/** A plan that a function of the library makes. */
async function made(name, ...args) {
  plans = await library('plan');
  return new Plan(plans.call(name, args, 'handle'));
}

export async function read(plan, notation = 'toml') {
  if (typeof plan !== 'string') return made('tw_plan_read', { bytes: JSON.stringify(plan) }, notations.json);
  return made('tw_plan_read', { bytes: plan }, chosen(notation, notations, 'the notation'));
}
export const create = () => made('tw_plan_new');
export const starter = async (units = 'si') => made('tw_plan_starter', chosen(units, systems, 'the units'));
export const demo = () => made('tw_plan_demo');

export const keys = async () => (await library('plan')).call('tw_keys', [], 'json');
export const decisions = async () => (await library('plan')).call('tw_decisions', [], 'json').decisions;
export async function version() {
  const own = await library('plan');
  return own.text(own.own.tw_version());
}

// ---- formulas ----------------------------------------------------------------------------------------------------------

export async function formulas() {
  const own = await library('formulas');
  return { call: (name, fields) => own.call('tw_formula_call', [String(name), JSON.stringify(fields ?? {})], 'json') };
}
