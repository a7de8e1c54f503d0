// SPDX-License-Identifier: BSL-1.0
// The worker: it holds the plan and asks the library. One answers every touch at once, another takes its time with
// bands and cures; both run this file.
import { Library, LibraryError } from './library.js';
import { unpacked } from './packed.js';

const bands = 1;
const figures = 4;
const compact = 8;
const toml = 0;
const json = 1;

let library = null;
let plan = 0;
let told = null; // who asked for the long call that is running

function hold(handle) {
  if (plan !== 0) library.own.tw_plan_free(plan);
  plan = handle;
}

const inUs = () => library.call('tw_plan_get', [plan, 'units'], 'text') === 'us';

/** Beside each number of a finding its text. */
function putIntoWords(findings, us) {
  for (const f of findings) {
    for (const n of f.numbers) n.text = library.amount(n, us);
    for (const p of f.places ?? []) for (const n of p.numbers) n.text = library.amount(n, us);
  }
}

/** A picture's curves in the units people use, one for each axis. */
function drawInUnits(figure, us) {
  if (!figure.curves) return figure;
  const largest = (lists) => {
    let most = 0;
    for (const list of lists) for (const x of list ?? []) if (Math.abs(x) > Math.abs(most)) most = x;
    return most;
  };
  const convert = (axis, lists) => {
    const unit = library.everydayUnit(axis.quantity, largest(lists.map(([c, name]) => c[name])), us);
    axis.symbol = unit;
    for (const [c, name] of lists) {
      if (c[name]) c[name] = c[name].map((x) => (x === null ? null : library.numberIn(axis.quantity, unit, x)));
    }
  };
  convert(figure.x_axis, figure.curves.map((c) => [c, 'x']));
  convert(figure.y_axis, figure.curves.flatMap((c) => ['y', 'low', 'high'].map((name) => [c, name])));
  return figure;
}

/** A picture's rectangles with their heights in words. */
function drawToScale(figure, us) {
  for (const r of figure.rectangles ?? []) {
    const top = r.bottom + r.height;
    r.top_text = library.amount({ quantity: 'length', low: top, central: top, high: top }, us);
  }
  return figure;
}

function report(parts) {
  const us = inUs();
  const all = library.call('page_assess', [plan, parts | compact], 'json');
  putIntoWords(all.findings, us);
  all.figures = (all.figures ?? []).map((f) => drawToScale(drawInUnits(f, us), us));
  return all;
}

/** What the page shows of a plan. Central values alone; a plan with mistakes has no report. */
function state() {
  const values = library.call('tw_plan_values', [plan], 'json').values;
  const mistakes = library.call('tw_plan_validate', [plan], 'json').mistakes;
  const text = library.call('tw_plan_write', [plan, json], 'text');
  return { values, mistakes, text, report: mistakes.length === 0 ? report(0) : null };
}

function apply({ op, path, text, si, unit, quantity }) {
  if (op === 'set') return library.call('tw_plan_set', [plan, path, text]);
  if (op === 'set_si') return library.call('tw_plan_set_si', [plan, path, si]);
  if (op === 'clear') return library.call('tw_plan_clear', [plan, path]);
  if (op === 'add') return library.call('tw_plan_add', [plan, path], 'text');
  throw new Error(`no edit is called ${op}`);
}

async function compile(packed) {
  try {
    return await WebAssembly.compileStreaming(unpacked(packed, 'application/wasm'));
  } catch (e) {
    const message = e instanceof WebAssembly.CompileError
      ? 'This browser cannot run the calculations: its WebAssembly lacks exceptions, which browsers have had since 2022.'
      : 'There is not enough memory for the calculations. Closing other pages may help.';
    throw new LibraryError({ name: 'cannot_run', message });
  }
}

const operations = {
  /** The module, or what it is packed in; that is given back compiled, for the next worker. */
  async load({ module, packed }) {
    const compiled = module ?? (await compile(packed));
    library = await Library.make(compiled, (done, of) => {
      postMessage({ id: told, progress: [done, of] });
      return 0;
    });
    return { module: module ? undefined : compiled };
  },
  /** One formula by its name; its numbers with their words. */
  formula({ name, fields, us }) {
    const answer = library.call('tw_formula_call', [name, JSON.stringify(fields)], 'json');
    const put = (node) => {
      if (node === null || typeof node !== 'object') return;
      if (node.quantity !== undefined) {
        node.text = library.amount('central' in node ? node : { quantity: node.quantity, low: node.value, central: node.value, high: node.value }, us);
      } else {
        Object.values(node).forEach(put);
      }
    };
    put(answer.result);
    return answer;
  },
  begin({ with: what, units }) {
    if (what === 'demo') hold(library.call('tw_plan_demo', [], 'handle'));
    if (what === 'starter') hold(library.call('tw_plan_starter', [units === 'us' ? 1 : 0], 'handle'));
    if (what === 'nothing') hold(library.call('tw_plan_new', [], 'handle'));
    return state();
  },
  /** A plan from a text; what could be read of it, with all that is wrong and its lines. */
  read({ text, notation }) {
    const [handle, wrong] = library.call(
      'tw_plan_read_what_can_be', [{ bytes: text }, notation === 'json' ? json : toml], 'handle', 'json');
    hold(handle);
    return { ...state(), read: wrong.mistakes };
  },
  write({ notation }) {
    return library.call('tw_plan_write', [plan, notation === 'json' ? json : toml], 'text');
  },
  /** Some edits, all or none; `kept` brings the plan back where one is refused. */
  edit({ edits }) {
    const before = library.call('tw_plan_copy', [plan], 'handle');
    try {
      for (const e of edits) apply(e);
    } catch (refused) {
      hold(before);
      throw refused;
    }
    library.own.tw_plan_free(before);
    return state();
  },
  /** A slider moves: nothing but what can be seen of the findings. */
  slide({ path, si, open }) {
    const moved = library.slide(plan, path, si, open ?? '', inUs());
    return { ...moved, text: library.call('tw_plan_get', [plan, path], 'text') };
  },
  state,
  /** The pictures, after the findings are on the screen. */
  figures: () => report(figures).figures,
  /** The same number in another unit, as a text that gives it back. */
  inUnit({ quantity, unit, si }) {
    return library.written(quantity, unit, si);
  },
  amounts({ amounts, us }) {
    return amounts.map((n) => library.amount(n, us));
  },
  /** The report with its bands: seconds. */
  bands({ text }) {
    hold(library.call('tw_plan_read', [{ bytes: text }, json], 'handle'));
    return report(bands);
  },
  cures({ text, finding }) {
    hold(library.call('tw_plan_read', [{ bytes: text }, json], 'handle'));
    return library.call('tw_plan_cures', [plan, finding], 'json');
  },
};

onmessage = async ({ data: { id, op, args } }) => {
  told = id;
  try {
    postMessage({ id, result: await operations[op](args ?? {}) });
  } catch (e) {
    const data = e instanceof LibraryError ? e.data : { name: 'crashed', message: String(e?.message ?? e) };
    postMessage({ id, error: data });
  }
};
