// SPDX-License-Identifier: BSL-1.0
// The state of the page and everything that changes it. The plan itself lives in the worker; here is what was last heard
// of it, what was typed and not accepted, and the way back.
import { Engine, lackOf } from './engine.js';
import { days } from './days.js';
import { whatIsIt } from './files.js';
import { givenAt, keyOf, ownPath, tablesOf, treeOf } from './plan_tree.js';
import { placeInWords } from './words.js';

const shelf = 'tankwright.plan';
const longestHistory = 200;
const quiet = 500; // ms without a touch before the bands are worked out

const wait = (ms) => new Promise((go) => setTimeout(go, ms));

export class Store {
  constructor(redraw) {
    this.redraw = redraw;
    this.engine = new Engine();
    this.state = {
      // 'starting', then 'waiting' (the form can be filled in, the calculations are on their way), 'ready'; or 'stopped' with `stopped`
      phase: 'starting',
      day: days[0].id,
      part: 'plan', // or 'formulas'
      formulas: null, // {state, list}
      formula: null, // name of the one chosen
      view: 'plan', // on a phone: 'plan' or 'answers'
      theme: 'system',
      drafts: {}, // path: {text, reason}: typed, and not accepted; without a reason: not answered yet
      mistakes: [],
      byPath: new Map(),
      report: null,
      open: null, // id of the finding that is unfolded
      cures: {}, // id: {state: 'asked' | 'known' | 'failed', cures, message}
      notice: null, // {words, kind}
      kept: true, // whether the browser keeps the plan
      progress: null,
      checked: false, // whether verdicts rest on the bands
      welcome: false,
      past: [],
      future: [],
    };
    this.touched = 0; // counts edits: an answer to an older plan is dropped
  }
  set(change) {
    Object.assign(this.state, change);
    if (change.notice?.kind === 'calm') {
      setTimeout(() => this.state.notice === change.notice && this.set({ notice: null }), 8000);
    }
    this.redraw();
  }

  // ---- begin ----

  readShelf() {
    try {
      return JSON.parse(localStorage.getItem(shelf) ?? 'null');
    } catch {
      return null;
    }
  }
  keep() {
    const { text, values, drafts, theme, day } = this.state;
    if (!text) return;
    try {
      localStorage.setItem(shelf, JSON.stringify({ text, values, drafts, theme, day }));
      if (!this.state.kept) this.set({ kept: true });
    } catch {
      if (this.state.kept) this.set({ kept: false });
    }
  }
  /** The form is there at once, from the list of keys in the page and what is kept; the calculations follow. */
  start(first) {
    const kept = this.readShelf();
    const s = this.state;
    if (kept?.theme) s.theme = kept.theme;
    if (kept?.day && days.some((d) => d.id === kept.day)) s.day = kept.day;
    s.lastKept = kept?.text ?? null;
    s.version = first.version;
    s.keys = first.keys;
    s.tables = tablesOf(first.keys);
    s.quantities = new Map(first.keys.quantities.map((q) => [q.name, q]));
    s.dayOfFinding = new Map(first.decisions.map((d) => [d.id, d.day]));
    const stopped = lackOf();
    if (stopped) {
      this.set({ phase: 'stopped', stopped });
      return;
    }
    this.engine.start();
    this.begun = this.openFirst(kept);
    this.begun.catch(() => {});
    s.drafts = kept?.drafts ?? {};
    const shown = !kept?.text ? first.demo : kept.values ? kept : null;
    if (shown) {
      this.hold(shown);
      s.phase = 'waiting';
      s.welcome = !kept?.text;
    }
    // What was typed and had no answer when the page was closed is asked again.
    for (const [path, { text, reason }] of Object.entries(s.drafts)) if (!reason) this.setText(path, text);
    this.redraw();
  }
  /** The plan in the worker: the kept one, else the demo. Until then every other question waits. */
  async openFirst(kept) {
    try {
      await this.engine.started;
      let heard = null;
      if (kept?.text) heard = await this.engine.ask('read', { text: kept.text, notation: 'json' }).catch(() => null);
      if (!heard) {
        heard = await this.engine.ask('begin', { with: 'demo' });
        this.state.welcome = true;
      }
      this.state.phase = 'ready';
      this.hear(heard);
    } catch (e) {
      this.set({ phase: 'stopped', stopped: e.message });
      throw e;
    }
  }

  // ---- what the worker says ----

  /** A new state of the plan. */
  hear({ values, mistakes, text, report }) {
    const s = this.state;
    this.hold({ values, text });
    s.mistakes = this.located(mistakes);
    s.byPath = new Map(s.mistakes.map((m) => [m.own, m]));
    if (report) s.report = { ...report, figures: s.report?.figures ?? [] };
    s.stale = !report; // the report is that of the last plan without mistakes
    s.checked = false;
    s.chances = null;
    s.cures = {};
    s.progress = null;
    ++this.touched;
    this.engine.stopThorough();
    this.keep();
    this.redraw();
    if (report) {
      this.draw(this.touched);
      this.checkSoon();
    }
  }
  /** What a plan says, before anything is made of it. */
  hold({ values, text }) {
    const s = this.state;
    s.values = values;
    s.root = treeOf(values, s.tables);
    s.text = text;
    s.us = s.root.given.units?.text === 'us';
  }
  /** The pictures of the plan, after its findings. */
  async draw(touched) {
    const figures = await this.engine.ask('figures').catch(() => null);
    if (figures && touched === this.touched) this.set({ report: { ...this.state.report, figures } });
  }
  located(mistakes) {
    const { root } = this.state;
    return mistakes.map((m) => ({
      ...m, own: ownPath(m.path, root), ownClash: m.clashes && ownPath(m.clashes, root),
      lacks: /^(is missing|needs one of|nothing to assess)/.test(m.reason), // nothing is wrong yet
    }));
  }
  checkSoon() {
    clearTimeout(this.soon);
    this.soon = setTimeout(() => this.check(), quiet);
  }
  /** Bands and verdicts by chance, when the hand is still. */
  async check() {
    const touched = this.touched;
    if (this.state.mistakes.length > 0 || Object.values(this.state.cures).some((c) => c.state === 'asked')) return;
    try {
      const report = await this.engine.askThorough('bands', { text: this.state.text }, (done, of) => {
        if (touched !== this.touched) return;
        // What is drawn for progress alone is drawn ten times a second at most.
        const now = performance.now();
        if (now - (this.lastProgress ?? 0) < 100) return;
        this.lastProgress = now;
        this.set({ progress: done / of });
      });
      if (touched !== this.touched) return;
      report.figures = this.state.report.figures;
      this.set({ report, checked: true, progress: null });
    } catch (e) {
      if (touched !== this.touched) return;
      if (e.data?.name === 'crashed' && e.message === 'stopped') return;
      this.set({ progress: null, notice: { kind: 'bad', words: `The bands could not be worked out: ${e.message}` } });
    }
  }

  /** Ask the quick worker; after a crash a new one gets the plan that was there, and the page says so. */
  async ask(op, args) {
    await this.begun;
    try {
      return await this.engine.ask(op, args);
    } catch (e) {
      if (e.data?.name !== 'crashed') throw e;
      await this.engine.revive();
      if (this.state.text) this.hear(await this.engine.ask('read', { text: this.state.text, notation: 'json' }));
      const memory = /memory|allocation/i.test(e.message);
      this.set({
        notice: {
          kind: 'bad',
          words: memory
            ? 'The calculations ran out of memory and were started again. Your plan is as it was before that step.'
            : `The calculations stopped and were started again (${e.message}). Your plan is as it was before that step.`,
        },
      });
      throw e;
    }
  }

  // ---- edits ----

  remember(label) {
    const s = this.state;
    s.past = [...s.past.slice(1 - longestHistory), { text: s.text, label }];
    s.future = [];
    s.welcome = false;
  }
  /** Some edits as one step that can be undone. `path` is where a refusal is shown, with what was typed. */
  async edit(edits, label, { path, typed } = {}) {
    if (this.sliding) await this.settle();
    if (path && this.state.phase === 'waiting') {
      this.state.drafts = { ...this.state.drafts, [path]: { text: typed } };
      this.keep();
      this.redraw();
    }
    try {
      const heard = await this.ask('edit', { edits });
      const before = this.state.text;
      if (path) delete this.state.drafts[path];
      if (heard.text !== before) this.remember(label);
      this.hear(heard);
      return true;
    } catch (e) {
      if (e.data?.name === 'crashed' || this.state.phase === 'stopped') return false;
      if (path) {
        this.state.drafts = { ...this.state.drafts, [path]: { text: typed, reason: this.reasonOf(e) } };
        this.keep();
        this.redraw();
      } else {
        this.set({ notice: { kind: 'bad', words: e.message } });
      }
      return false;
    }
  }
  reasonOf(e) {
    const { reason, expected, message } = e.data ?? {};
    if (reason) return expected ? `${reason}; expected ${expected}` : reason;
    return message ?? e.message;
  }
  setText(path, text) {
    const label = placeInWords(path);
    if (text.trim() === '') return this.edit([{ op: 'clear', path }], label, { path, typed: text });
    return this.edit([{ op: 'set', path, text }], label, { path, typed: text });
  }
  dropDraft(path) {
    const { [path]: _, ...drafts } = this.state.drafts;
    this.set({ drafts });
    this.keep();
  }
  addTable(path, label) {
    return this.edit([{ op: 'add', path }], label);
  }
  removeTable(path, label) {
    for (const draft of Object.keys(this.state.drafts)) {
      if (draft.startsWith(path)) delete this.state.drafts[draft];
    }
    return this.edit([{ op: 'clear', path }], label);
  }

  // ---- sliders ----

  /** A slider moves: it stays where the hand is, and only its newest place is asked for. */
  slide(path, si) {
    const s = this.state;
    this.sliding ||= { path, before: s.text };
    clearTimeout(this.letting);
    clearTimeout(this.soon);
    this.engine.stopThorough();
    const held = givenAt(path, s.root);
    if (held) held.si = si;
    this.wanted = { path, si, at: performance.now() };
    this.asking ||= this.follow();
  }
  async follow() {
    try {
      while (this.wanted) {
        const { path, si, at } = this.wanted;
        this.wanted = null;
        const heard = await this.ask('slide', { path, si, open: this.state.open });
        ++this.touched;
        const s = this.state;
        const held = givenAt(path, s.root);
        if (held) held.text = heard.text;
        s.checked = false;
        s.progress = null;
        if (heard.findings) {
          s.mistakes = [];
          const whole = new Map(s.report?.findings.map((f) => [f.id, f]));
          s.report = { ...s.report, findings: heard.findings.map((f) => movedFinding(whole.get(f.id), f)) };
        } else {
          s.mistakes = this.located(heard.mistakes);
        }
        s.stale = !heard.findings;
        s.byPath = new Map(s.mistakes.map((m) => [m.own, m]));
        this.redraw();
        await new Promise((drawn) => requestAnimationFrame(drawn));
        this.lastSlide = performance.now() - at;
      }
    } catch {
      this.wanted = null; // said by `ask`
    } finally {
      this.asking = null;
    }
  }
  /** The hand lets go: when it stays away, one step to undo, pictures and bands anew. */
  letGo() {
    clearTimeout(this.letting);
    this.letting = setTimeout(() => this.settle(), 250);
  }
  async settle() {
    if (!this.sliding) return;
    await this.asking;
    if (!this.sliding) return; // settled meanwhile, by the hand that let go or by the next edit
    const { path, before } = this.sliding;
    this.sliding = null;
    const heard = await this.ask('state');
    if (this.sliding) {
      this.sliding.before = before; // it moves again, and it is one step
      return;
    }
    if (heard.text !== before) {
      this.state.text = before;
      this.remember(placeInWords(path));
    }
    this.hear(heard);
  }

  // ---- undo ----

  async undo() {
    if (this.sliding) await this.settle();
    const s = this.state;
    const step = s.past.at(-1);
    if (!step) return;
    const now = s.text;
    const heard = await this.ask('read', { text: step.text, notation: 'json' });
    s.past = s.past.slice(0, -1);
    s.future = [...s.future, { text: now, label: step.label }];
    this.hear(heard);
    this.set({ notice: { kind: 'calm', words: `Taken back: ${step.label}.` } });
  }
  async redo() {
    const s = this.state;
    const step = s.future.at(-1);
    if (!step) return;
    const now = s.text;
    const heard = await this.ask('read', { text: step.text, notation: 'json' });
    s.future = s.future.slice(0, -1);
    s.past = [...s.past, { text: now, label: step.label }];
    this.hear(heard);
    this.set({ notice: { kind: 'calm', words: `Done again: ${step.label}.` } });
  }

  // ---- whole plans ----

  async begin(what) {
    const heard = await this.ask('begin', { with: what, units: this.state.us ? 'us' : 'si' });
    this.remember('a new plan');
    Object.assign(this.state, { drafts: {}, report: null, open: null });
    this.hear(heard);
    const words = { demo: 'The demo plan is open.', starter: 'A short plan to fill in is open.', nothing: 'An empty plan is open.' };
    this.set({ notice: { kind: 'calm', words: `${words[what]} Undo brings the one before back.` } });
  }
  async openFile(file) {
    const bad = (words) => this.set({ notice: { kind: 'bad', words } });
    if (file.size > 4e6) return bad(`${file.name} is too large to be a plan: ${Math.round(file.size / 1e6)} MB. Your plan is unchanged.`);
    const bytes = new Uint8Array(await file.arrayBuffer());
    const other = whatIsIt(bytes);
    if (other) return bad(`${file.name} ${other}. A plan is a text file that ends in .toml or .json. Your plan is unchanged.`);
    const text = new TextDecoder().decode(bytes);
    const notation = /\.json$/i.test(file.name) || /^\s*\{/.test(text) ? 'json' : 'toml';
    try {
      const heard = await this.ask('read', { text, notation });
      this.remember(`opening ${file.name}`);
      Object.assign(this.state, { drafts: {}, report: null, open: null });
      this.hear(heard);
      const wrong = heard.read.filter((m) => m.line || m.pointer);
      this.set({
        notice: wrong.length === 0
          ? { kind: 'calm', words: `${file.name} is open. Undo brings the plan before back.` }
          : { kind: 'bad', words: `${file.name} is open, as far as it could be read:`,
              list: wrong.map((m) => `${m.line ? `line ${m.line}: ` : ''}${m.path ? `${m.path}: ` : ''}${m.reason}`) },
      });
    } catch (e) {
      if (e.data?.name === 'crashed') return undefined;
      const where = e.data?.line ? ` (line ${e.data.line})` : '';
      bad(`${file.name} cannot be read as a plan${where}: ${e.message}. Your plan is unchanged.`);
    }
    return undefined;
  }
  async saveFile() {
    const text = await this.ask('write', { notation: 'toml' });
    const title = this.state.root.given.title?.text ?? 'plan';
    const name = title.toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/g, '_').replace(/^_+|_+$/g, '').slice(0, 60) || 'plan';
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/toml' }));
    link.download = `${name}.toml`;
    document.body.append(link);
    link.click();
    link.remove();
    await wait(1000);
    URL.revokeObjectURL(link.href);
  }
  setUnits(us) {
    return this.edit([{ op: 'set', path: 'units', text: us ? 'us' : 'si' }], us ? 'US units' : 'metric units');
  }

  // ---- what would make it hold ----

  async askCures(id) {
    const touched = this.touched;
    const put = (answer) => {
      if (touched === this.touched) this.set({ cures: { ...this.state.cures, [id]: answer } });
    };
    put({ state: 'asked' });
    try {
      const { cures, why_none: why } = await this.engine.askThorough('cures', { text: this.state.text, finding: id });
      put({ state: 'known', cures, why });
    } catch (e) {
      put({ state: 'failed', message: e.message });
    }
    if (touched === this.touched && !this.state.checked) this.checkSoon();
  }
  /** Set what a cure says; "[]" means every element of the list. */
  applyCure(cure) {
    const edits = cure.changes.flatMap(({ path, to }) => this.everywhere(path).map((own) => ({ op: 'set', path: own, text: to })));
    return this.edit(edits, 'a remedy');
  }
  everywhere(path) {
    const at = path.indexOf('[]');
    if (at < 0) return [path];
    const steps = path.slice(0, at).split('.');
    const name = steps.pop();
    let node = this.state.root;
    for (const step of steps) node = node?.tables[step];
    return (node?.lists[name] ?? []).flatMap((e, i) => this.everywhere(`${path.slice(0, at)}[${i + 1}]${path.slice(at + 2)}`));
  }

  // ---- formulas ----

  async openFormulas() {
    this.set({ formulas: { state: 'asked' } });
    try {
      this.set({ formulas: { state: 'known', list: await this.engine.startFormulas() } });
    } catch (e) {
      this.set({ formulas: { state: 'failed', message: e.message } });
    }
  }
  callFormula(name, fields) {
    return this.engine.askFormula({ name, fields, us: this.state.us });
  }

  // ---- finding one's way ----

  go(day) {
    this.set({ day, view: 'plan' });
    this.keep();
  }
  keyAt(path) {
    return keyOf(path, this.state.tables);
  }
}

/** A finding of the report with what a slider has moved. */
function movedFinding(whole, moved) {
  if (!whole) return { question: moved.id, consequence: 'money', places: [], sources: [], measure_next: [], ...moved };
  const texts = new Map(moved.numbers.map((n) => [`${n.id} ${n.place}`, n.text]));
  const at = (place) => (n) => ({ ...n, text: texts.get(`${n.id} ${place}`) ?? n.text });
  return {
    ...whole,
    verdict: moved.verdict,
    happens: moved.happens,
    numbers: whole.numbers.map(at('')),
    places: whole.places.map((p) => ({ ...p, numbers: p.numbers.map(at(p.place)) })),
  };
}
