// SPDX-License-Identifier: BSL-1.0
// The C library inside the WebAssembly module: texts in, texts and numbers out, its errors as exceptions with their data.

/** What the library refused, with the data of its error. */
export class LibraryError extends Error {
  constructor(data) {
    super(data.message || data.name || 'the library gave no reason');
    this.data = data;
  }
}

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** What was left out of the module, because the page never calls it. */
const missing = (name) => () => {
  throw new WebAssembly.RuntimeError(`the module was built without ${name}`);
};

/** Everything that the module asks of its surroundings: a place for its last words, and who is told how far it is. */
function surroundings(module, memory, progress) {
  const given = {
    proc_exit(code) {
      throw new WebAssembly.RuntimeError(`the module ended itself (${code})`);
    },
    fd_write(_file, parts, count, written) {
      const view = new DataView(memory().buffer);
      let all = 0;
      for (let i = 0; i < count; ++i) all += view.getUint32(parts + 8 * i + 4, true);
      view.setUint32(written, all, true);
      return 0;
    },
    environ_sizes_get(count, size) {
      const view = new DataView(memory().buffer);
      view.setUint32(count, 0, true);
      view.setUint32(size, 0, true);
      return 0;
    },
    page_progress: (done, of) => progress(done, of),
    clock_time_get(_clock, _precision, at) {
      new DataView(memory().buffer).setBigUint64(at, BigInt(Math.round(performance.now() * 1e6)), true);
      return 0;
    },
  };
  const imports = {};
  for (const { module: from, name } of WebAssembly.Module.imports(module)) {
    (imports[from] ||= {})[name] = given[name] ?? (from === 'env' && name.startsWith('_Z') ? missing(name) : () => 0);
  }
  return imports;
}

export class Library {
  static async make(module, progress = () => 0) {
    const made = new Library();
    const memory = () => made.own.memory;
    made.own = (await WebAssembly.instantiate(module, surroundings(module, memory, progress))).exports;
    made.own._initialize?.();
    made.outs = made.own.malloc(16);
    return made;
  }

  /** A text in the module's memory, which the caller frees. */
  put(text) {
    const bytes = encoder.encode(text);
    const at = this.own.malloc(bytes.length + 1);
    if (at === 0) throw new LibraryError({ name: 'no_memory', message: 'There is not enough memory for this.' });
    const memory = new Uint8Array(this.own.memory.buffer);
    memory.set(bytes, at);
    memory[at + bytes.length] = 0;
    return [at, bytes.length];
  }
  text(at) {
    const memory = new Uint8Array(this.own.memory.buffer);
    return at === 0 ? '' : decoder.decode(memory.subarray(at, memory.indexOf(0, at)));
  }

  /**
   * Call a function of tankwright.h. Texts among `args` go in as pointers; `{bytes}` as a pointer and a length. `gives`
   * names what its results are ('text', 'json', 'handle', 'number'), before its last argument, the error.
   */
  call(name, args, ...gives) {
    const own = this.own;
    const borrowed = [];
    const passed = [];
    for (const arg of args) {
      if (typeof arg === 'number') {
        passed.push(arg);
        continue;
      }
      const [at, length] = this.put(arg.bytes ?? arg);
      borrowed.push(at);
      passed.push(at);
      if (typeof arg === 'object') passed.push(length);
    }
    const outs = own.malloc(8 * gives.length + 8);
    const fault = outs + 8 * gives.length;
    const clear = new DataView(own.memory.buffer);
    for (let at = outs; at <= fault; at += 8) clear.setFloat64(at, 0, true);
    const status = own[name](...passed, ...gives.map((_, i) => outs + 8 * i), fault);
    for (const at of borrowed) own.free(at);
    const view = new DataView(own.memory.buffer);
    if (status !== 0) {
      const at = view.getUint32(fault, true);
      const said = this.text(at);
      own.free(at);
      own.free(outs);
      throw new LibraryError(said ? JSON.parse(said) : { code: status, name: 'no_memory', message: 'There is not enough memory for this.' });
    }
    const results = gives.map((kind, i) => {
      if (kind === 'number') return view.getFloat64(outs + 8 * i, true);
      const at = view.getUint32(outs + 8 * i, true);
      if (kind === 'handle') return at;
      const text = this.text(at);
      own.free(at); // what tw_free does; the module of the formulas has no tw_free
      return kind === 'json' ? JSON.parse(text) : text;
    });
    own.free(outs);
    return results.length === 1 ? results[0] : results;
  }

  // ---- numbers as people read them: module/page.cpp ----

  /** A short name (a quantity, a unit), put into the module's memory once. */
  word(name) {
    this.words ||= new Map();
    if (!this.words.has(name)) this.words.set(name, this.put(name)[0]);
    return this.words.get(name);
  }
  amount(n, us) {
    if (n.central === null) return 'not known';
    const low = n.low ?? n.central;
    return this.text(this.own.page_amount(this.word(n.quantity), low, n.central, n.high ?? n.central, us ? 1 : 0));
  }
  /** Set a number and see what moves: {findings} or {mistakes}. */
  slide(plan, path, si, open, us) {
    const said = this.text(this.own.page_slide(plan, this.word(path), si, this.word(open), us ? 1 : 0));
    if (!said) throw new LibraryError({ name: 'bad_key', path, message: `${path} holds no number` });
    return JSON.parse(said);
  }
  everydayUnit(quantity, si, us) {
    return this.text(this.own.page_unit(this.word(quantity), si, us ? 1 : 0));
  }
  numberIn(quantity, unit, si) {
    return this.own.page_number(this.word(quantity), this.word(unit), si);
  }
  written(quantity, unit, si) {
    return this.text(this.own.page_written(this.word(quantity), this.word(unit), si));
  }
}
