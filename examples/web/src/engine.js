// SPDX-License-Identifier: BSL-1.0
// The workers and what goes to and fro. The page asks `quick` for every touch; `thorough` takes its time, and is stopped
// when the plan has changed meanwhile.

/* global PAGE_WORKER */

/** Why the page cannot calculate, in a sentence for its reader. */
export class CannotCalculate extends Error {}

export class Refused extends Error {
  constructor(data) {
    super(data.message ?? data.name);
    this.data = data;
  }
}

class Helper {
  constructor(source, module, started, as = 'start') {
    this.waiting = new Map();
    this.next = 1;
    this.busy = false;
    this.worker = new Worker(source);
    this.worker.onmessage = ({ data }) => this.hear(data);
    this.worker.onerror = (e) => {
      e.preventDefault?.();
      this.die(e.message || 'the worker ended');
    };
    this.ready = this.ask(as, { module }).then(started);
    this.ready.catch(() => {});
  }
  ask(op, args, progress) {
    if (this.dead) return Promise.reject(new Refused({ name: 'crashed', message: this.dead }));
    return new Promise((resolve, reject) => {
      const id = this.next++;
      this.waiting.set(id, { resolve, reject, progress });
      this.worker.postMessage({ id, op, args });
    });
  }
  hear({ id, result, error, progress }) {
    const asked = this.waiting.get(id);
    if (!asked) return;
    if (progress) {
      asked.progress?.(...progress);
      return;
    }
    this.waiting.delete(id);
    if (!error) asked.resolve(result);
    else {
      asked.reject(new Refused(error));
      if (error.name === 'crashed') this.die(error.message);
    }
  }
  die(why) {
    if (this.dead) return;
    this.dead = why || 'ended';
    this.worker.terminate();
    for (const { reject } of this.waiting.values()) reject(new Refused({ name: 'crashed', message: this.dead }));
    this.waiting.clear();
  }
}

/** What build.mjs has packed into the page under a name, unpacked. */
function unpacked(name) {
  const packed = Uint8Array.from(atob(document.getElementById(name).textContent), (c) => c.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip')));
}

async function moduleFromPage(name) {
  if (typeof WebAssembly !== 'object' || typeof WebAssembly.compile !== 'function') {
    throw new CannotCalculate('This browser has no WebAssembly, which the calculations need.');
  }
  if (typeof DecompressionStream !== 'function') {
    throw new CannotCalculate('This browser is too old to unpack the calculations; one from 2023 or later can.');
  }
  try {
    return await WebAssembly.compile(await unpacked(name).arrayBuffer());
  } catch (e) {
    throw new CannotCalculate(
      e instanceof WebAssembly.CompileError
        ? 'This browser cannot run the calculations: its WebAssembly lacks exceptions, which browsers have had since 2022.'
        : 'There is not enough memory for the calculations. Closing other pages may help.');
  }
}

export class Engine {
  async start(heard) {
    this.module = await moduleFromPage('module-page');
    try {
      this.source = URL.createObjectURL(new Blob([PAGE_WORKER], { type: 'text/javascript' }));
      this.quick = new Helper(this.source, this.module, heard);
      await this.quick.ready;
    } catch (e) {
      throw e instanceof CannotCalculate
        ? e
        : new CannotCalculate(`The calculations did not start in this browser (${e.message}).`);
    }
    setTimeout(() => this.thorough ?? this.prepareThorough(), 400); // not while the page is being drawn
  }
  prepareThorough() {
    this.thorough = new Helper(this.source, this.module, () => {}, 'load');
  }
  /** After a crash: a new worker. Its plan is what the caller reads into it next. */
  async revive() {
    this.quick.die('replaced');
    this.quick = new Helper(this.source, this.module, () => {}, 'load');
    await this.quick.ready;
  }
  ask(op, args) {
    return this.quick.ask(op, args);
  }
  /** A long question. What still runs is stopped first. */
  async askThorough(op, args, progress) {
    if (!this.thorough || this.thorough.busy || this.thorough.dead) {
      this.thorough?.die('stopped');
      this.prepareThorough();
    }
    const helper = this.thorough;
    helper.busy = true;
    try {
      await helper.ready;
      return await helper.ask(op, args, progress);
    } finally {
      helper.busy = false;
    }
  }
  stopThorough() {
    if (!this.thorough?.busy) return;
    this.thorough.die('stopped');
    this.prepareThorough();
  }
  /** The formulas: a worker of their own, begun when somebody looks. Gives their list. */
  async startFormulas() {
    const list = await unpacked('formulas-list').json();
    const module = await moduleFromPage('module-formulas');
    this.formulas = new Helper(this.source, module, () => {}, 'load');
    await this.formulas.ready;
    return list;
  }
  async askFormula(args) {
    if (this.formulas.dead) await this.startFormulas();
    return this.formulas.ask('formula', args);
  }
}
