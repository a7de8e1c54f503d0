// SPDX-License-Identifier: BSL-1.0
// The workers and what goes to and fro. The page asks `quick` for every touch; `thorough` takes its time, and is stopped
// when the plan has changed meanwhile. A module is unpacked and compiled in the worker that needs it first, while the page
// is used already.

import { unpacked } from './packed.js';

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
  constructor(source, given) {
    this.waiting = new Map();
    this.next = 1;
    this.busy = false;
    this.worker = new Worker(source);
    this.worker.onmessage = ({ data }) => this.hear(data);
    this.worker.onerror = (e) => {
      e.preventDefault?.();
      this.die(e.message || 'the worker ended');
    };
    this.ready = Promise.resolve(given).then((module) => this.ask('load', module));
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
      if (error.name === 'crashed' || error.name === 'cannot_run') this.die(error.message);
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

/** What build.mjs has packed into the page under a name: behind the program, so the page may still be on its way. The
 *  calculators of the handbook bring it along as a text. */
async function packed(name) {
  if (globalThis.tankwrightPacked) return globalThis.tankwrightPacked[name];
  if (document.readyState === 'loading') {
    await new Promise((parsed) => document.addEventListener('DOMContentLoaded', parsed, { once: true }));
  }
  return document.getElementById(name).textContent;
}

/** What this browser lacks for any calculation, in a sentence; null where it lacks nothing that can be seen from here. */
export function lackOf() {
  if (typeof WebAssembly !== 'object' || typeof WebAssembly.compile !== 'function') {
    return 'This browser has no WebAssembly, which the calculations need.';
  }
  if (typeof DecompressionStream !== 'function') {
    return 'This browser is too old to unpack the calculations; one from 2023 or later can.';
  }
  return null;
}

const cannotStart = async (e) => {
  throw new CannotCalculate(e.data?.name === 'cannot_run' ? e.message : `The calculations did not start in this browser (${e.message}).`);
};

export class Engine {
  /** Begins the worker; `started` says when it can be asked. */
  start() {
    try {
      this.source = URL.createObjectURL(new Blob([PAGE_WORKER], { type: 'text/javascript' }));
      this.quick = new Helper(this.source, packed('module-page').then((text) => ({ packed: text })));
      this.started = this.quick.ready.then(({ module }) => {
        this.module = module;
        setTimeout(() => this.thorough ?? this.prepareThorough(), 400); // not while the page is being drawn
      }, cannotStart);
    } catch (e) {
      this.started = cannotStart(e);
    }
    this.started.catch(() => {});
  }
  prepareThorough() {
    this.thorough = new Helper(this.source, { module: this.module });
  }
  /** After a crash: a new worker. Its plan is what the caller reads into it next. */
  async revive() {
    this.quick.die('replaced');
    this.quick = new Helper(this.source, { module: this.module });
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
    this.source ??= URL.createObjectURL(new Blob([PAGE_WORKER], { type: 'text/javascript' }));
    this.formulas = new Helper(this.source, { packed: await packed('module-formulas') });
    const list = await unpacked(await packed('formulas-list')).json();
    await this.formulas.ready;
    return list;
  }
  async askFormula(args) {
    if (this.formulas.dead) await this.startFormulas();
    return this.formulas.ask('formula', args);
  }
}
