// SPDX-License-Identifier: BSL-1.0
// Every formula of the library by itself: found by a word, filled in with units, answered with its source.
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Icon } from './icons.jsx';
import { inPrint, nameOf, unitInPrint } from './words.js';

const folders = [
  ['water', 'Water', 'what it is and how it is made'], ['vessel', 'Vessel', 'what holds it'], ['plumbing', 'Plumbing', 'what moves it'],
  ['room', 'Room', 'where it stands'], ['life', 'Life', 'what lives in it'],
];
const short = (name) => name.slice(name.lastIndexOf('.') + 1);
const sentence = (s) => (s ? s[0].toUpperCase() + s.slice(1) + (/[.!?:]$/.test(s) ? '' : '.') : '');

export function Formulas({ store }) {
  const { formulas, formula } = store.state;
  const [words, setWords] = useState('');
  useEffect(() => {
    if (!formulas) store.openFormulas();
  }, []);
  const found = useMemo(() => {
    if (!formulas?.list) return [];
    const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
    return formulas.list.formulas.filter((f) => {
      const all = `${f.name} ${f.name.replaceAll('_', ' ')} ${f.sentence} ${f.source}`.toLowerCase();
      return wanted.every((w) => all.includes(w));
    });
  }, [formulas, words]);
  if (!formulas || formulas.state === 'asked') return <main class="formulas"><p role="status">Unpacking the formulas…</p></main>;
  if (formulas.state === 'failed') return <main class="formulas"><p role="alert">The formulas did not start: {formulas.message}. The plan is not touched by that.</p></main>;
  const chosen = formulas.list.formulas.find((f) => f.name === formula);
  const choose = (name) => {
    store.set({ formula: name });
    requestAnimationFrame(() => requestAnimationFrame(() => {
      const sheet = document.querySelector('.calculator');
      if (sheet.getBoundingClientRect().top > 0.5 * innerHeight) sheet.scrollIntoView(); // on a phone it stands below the list
    }));
  };
  return (
    <main class="formulas" id="sheet" tabIndex={-1}>
      <section class="finder" aria-label="Find a formula">
        <label for="find-formula">Find a formula</label>
        <input id="find-formula" type="search" value={words} onInput={(e) => setWords(e.currentTarget.value)} placeholder="salt, evaporation, pump…" autocomplete="off" />
        <p class="fine" role="status">{found.length === formulas.list.formulas.length ? `All ${found.length}` : `${found.length} of ${formulas.list.formulas.length}`} formulas.</p>
        {folders.map(([id, name, about]) => {
          const some = found.filter((f) => f.folder === id);
          return some.length > 0 && (
            <details key={id} open={words !== '' || chosen?.folder === id}>
              <summary><b>{name}</b>, {about} <span class="fine">({some.length})</span></summary>
              <ul>
                {some.map((f) => (
                  <li key={f.name}>
                    <button type="button" aria-current={f.name === formula ? 'true' : undefined} onClick={() => choose(f.name)}>
                      <b>{nameOf(short(f.name))}</b><span>{f.sentence}</span>
                    </button>
                  </li>
                ))}
              </ul>
            </details>
          );
        })}
      </section>
      {chosen ? <Calculator key={chosen.name} store={store} formula={chosen} list={formulas.list} /> : (
        <section class="sheet"><h2>One formula at a time</h2><p>Choose one on the left. It takes numbers with their units, and says what it rests on, how good it is, and where it ends.</p></section>
      )}
    </main>
  );
}

/** The formulas that make a value of a type. */
const makersOf = (type, list) => list.formulas.filter((f) => f.result.type === type).map((f) => f.name);

export function Calculator({ store, formula: f, list }) {
  const [fields, setFields] = useState({});
  const [answer, setAnswer] = useState(null);
  const asked = useRef(0);
  const us = store.state.us;
  const calculate = async (with_) => {
    const mine = ++asked.current;
    const said = await store.callFormula(f.name, with_).then((result) => ({ result }), (e) => ({ refused: e.data ?? { message: e.message } }));
    if (mine === asked.current) setAnswer(said);
  };
  const missing = f.fields.filter((x) => x.required && (fields[x.name] === undefined || fields[x.name] === ''));
  const ready = missing.length === 0;
  useEffect(() => {
    if (!ready) return setAnswer(null);
    const soon = setTimeout(() => calculate(fields), 250);
    return () => clearTimeout(soon);
  }, [fields, us]);
  return (
    <section class="sheet calculator" aria-label={nameOf(short(f.name))}>
      <h2>{nameOf(short(f.name))}</h2>
      <p>{f.sentence}</p>
      {f.formula && <pre class="law" tabIndex={0}>{f.formula}</pre>}
      <form onSubmit={(e) => e.preventDefault()}>
        <Args fields={f.fields} list={list} id="a" value={fields} depth={0} set={(name, v) => setFields((old) => prune({ ...old, [name]: v }))} />
      </form>
      <section class="answer" aria-label="Answer" role="status">
        {!ready && <p class="fine">Still needed: {missing.map((x) => nameOf(x.name).toLowerCase()).join(', ')}.</p>}
        {ready && answer?.refused && <p class="mistake"><Icon name="does not hold" /> {answer.refused.field ? `${nameOf(answer.refused.field)}: ` : ''}{inPrint(answer.refused.message ?? '')}</p>}
        {ready && answer?.result && (
          <>
            <h3>Answer</h3>
            <table class="numbers"><tbody><Result name={sentence(f.result.sentence ?? '') || 'It is'} value={answer.result.result} /></tbody></table>
            {answer.result.cautions?.map((c) => <p class="caution" key={c}><b>Caution.</b> {c}</p>)}
          </>
        )}
      </section>
      <dl class="basis">
        {f.accuracy && <><dt>How good</dt><dd>{sentence(f.accuracy)}</dd></>}
        {f.source && <><dt>Source</dt><dd>{sentence(f.source)}</dd></>}
        <dt>In C++</dt><dd><code>{f.function}</code></dd>
      </dl>
    </section>
  );
}

/** A result: numbers in words, structs and lists row by row. */
function Result({ name, value }) {
  if (value === null || value === undefined) return <tr><th scope="row">{name}</th><td>none</td></tr>;
  if (typeof value !== 'object') return <tr><th scope="row">{name}</th><td>{String(value)}</td></tr>;
  if (value.text !== undefined && (value.quantity !== undefined || value.central !== undefined)) {
    return <tr><th scope="row">{name}{value.reason ? <span class="fine"> ({value.reason})</span> : ''}</th><td>{inPrint(value.text)}</td></tr>;
  }
  if (Array.isArray(value)) {
    if (value.length === 0) return <tr><th scope="row">{name}</th><td>none</td></tr>;
    return <>{value.slice(0, 60).map((v, i) => <Result key={i} name={`${name} ${i + 1}`} value={v} />)}{value.length > 60 && <tr><th>…</th><td>{value.length - 60} more</td></tr>}</>;
  }
  return (
    <>
      <tr class="place"><th scope="rowgroup" colSpan="2">{name}</th></tr>
      {Object.entries(value).map(([k, v]) => <Result key={k} name={nameOf(k)} value={v} />)}
    </>
  );
}

/** What is said below a box: its sentence, and what is taken without it. */
const told = (spec) => {
  const taken = typeof spec.default === 'number' ? `${spec.default}${spec.unit ? ` ${unitInPrint(spec.unit)}` : ''}` : typeof spec.default === 'boolean' ? (spec.default ? 'yes' : 'no') : spec.default;
  const without = typeof taken === 'string' && taken !== '' ? `Without it: ${inPrint(taken)}.` : '';
  return [spec.sentence && sentence(inPrint(spec.sentence)), !spec.required && without].filter(Boolean).join(' ');
};

/** Arguments: what must be given first, the rest folded away. */
function Args({ fields, list, id, value, set, depth }) {
  const arg = (x) => <Arg key={x.name} spec={x} list={list} id={`${id}-${x.name}`} label={nameOf(x.name)} value={value?.[x.name]} depth={depth} set={(v) => set(x.name, v)} />;
  const needed = fields.filter((x) => x.required);
  const rest = fields.filter((x) => !x.required);
  return (
    <>
      {needed.length > 0 && <div class="fields">{needed.map(arg)}</div>}
      {rest.length > 0 && (needed.length === 0 ? <div class="fields">{rest.map(arg)}</div> : <Rest count={rest.length}>{() => <div class="fields">{rest.map(arg)}</div>}</Rest>)}
    </>
  );
}
function Rest({ count, children }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="more" onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>{count === 1 ? 'One more that may be left out' : `${count} more that may be left out`}</summary>
      {open && children()}
    </details>
  );
}

/** One argument, whatever it is. */
function Arg({ spec, list, id, label, value, set, depth }) {
  const kind = spec.kind;
  const type = list.types[spec.type];
  if (kind === 'optional') return <Arg spec={{ ...spec.of, name: spec.name, sentence: spec.sentence, required: false }} list={list} id={id} label={label} value={value} set={set} depth={depth} />;
  if (kind === 'estimate') return <Arg spec={{ ...spec.of, name: spec.name, sentence: spec.sentence, required: spec.required, default: spec.default?.central }} list={list} id={id} label={label} value={value} set={set} depth={depth} />;
  if (kind === 'quantity') return <Simple id={id} label={label} spec={spec}><Quantity id={id} spec={spec} units={list.units[spec.quantity] ?? []} value={value} set={set} label={label} /></Simple>;
  if (kind === 'integer') {
    return <Simple id={id} label={label} spec={spec}><input id={id} type="text" inputMode="numeric" value={value ?? ''} onInput={(e) => set(e.currentTarget.value === '' ? undefined : Number(e.currentTarget.value))} /></Simple>;
  }
  if (kind === 'text') return <Simple id={id} label={label} spec={spec}><input id={id} type="text" value={value ?? ''} onInput={(e) => set(e.currentTarget.value || undefined)} /></Simple>;
  if (kind === 'flag') {
    return (
      <Simple id={id} label={label} spec={spec}>
        <select id={id} value={value === undefined ? '' : String(value)} onChange={(e) => set(e.currentTarget.value === '' ? undefined : e.currentTarget.value === 'true')}>
          <option value="">not said</option><option value="true">yes</option><option value="false">no</option>
        </select>
      </Simple>
    );
  }
  if (kind === 'word') {
    return (
      <Simple id={id} label={label} spec={spec}>
        <select id={id} value={value ?? ''} onChange={(e) => set(e.currentTarget.value || undefined)}>
          <option value="">not said</option>
          {type.words.map((w) => <option key={w.word} value={w.word}>{w.word.replaceAll('_', ' ')}{w.sentence ? `: ${w.sentence}` : ''}</option>)}
        </select>
      </Simple>
    );
  }
  if (kind === 'list') {
    const items = value ?? [];
    return (
      <fieldset class="group-of">
        <legend>{label}</legend>
        {told(spec) && <p class="means">{told(spec)}</p>}
        {items.map((v, i) => (
          <div key={i} class="item">
            <Arg spec={{ ...spec.of, required: true }} list={list} id={`${id}-${i}`} label={`${label} ${i + 1}`} value={v} depth={depth + 1}
              set={(n) => set(items.map((old, k) => (k === i ? n : old)))} />
            <button type="button" class="quiet small" onClick={() => set(items.filter((_, k) => k !== i))} aria-label={`Remove ${label} ${i + 1}`}><Icon name="minus" /> Remove</button>
          </div>
        ))}
        <button type="button" class="chip" onClick={() => set([...items, spec.of.kind === 'fields' ? {} : undefined])}><Icon name="plus" /> Add one</button>
      </fieldset>
    );
  }
  return <Compound spec={spec} type={type} list={list} id={id} label={label} value={value} set={set} depth={depth} />;
}

/** A struct, a value that is given in one of several ways, or one of several things; any of them may come from a formula. */
function Compound({ spec, type, list, id, label, value, set, depth }) {
  const ways = [];
  if (spec.kind === 'one_of') for (const o of spec.options) ways.push({ name: short(o.type), spec: o });
  else if (type?.fields || type?.parts) ways.push({ name: '', words: 'given here', fields: type.fields ?? type.parts });
  else if (type?.as) ways.push({ name: '', words: 'as a number', spec: { ...type.as, required: true } });
  for (const w of type?.ways ?? []) ways.push({ name: w.name, spec: w });
  for (const c of type?.constants ?? []) ways.push({ constant: c, name: `constant ${c}`, words: nameOf(c) });
  if (depth < 3 && spec.type) for (const m of makersOf(spec.type, list)) ways.push({ name: m, maker: m, words: `worked out: ${nameOf(short(m)).toLowerCase()}` });
  const [chosen, setChosen] = useState(0);
  const way = ways[Math.min(chosen, ways.length - 1)];
  if (!way) return <Simple id={id} label={label} spec={spec}><input id={id} type="text" value={value ?? ''} onInput={(e) => set(e.currentTarget.value || undefined)} /></Simple>;
  const choose = (i) => {
    setChosen(i);
    set(ways[i].constant);
  };
  const wrap = (v) => set(v === undefined ? undefined : way.name && !way.constant ? { [way.name]: v } : v);
  const inner = way.name && !way.constant ? value?.[way.name] : value;
  const fields = way.maker ? list.formulas.find((f) => f.name === way.maker).fields : way.fields;
  const menu = ways.length > 1 && (
    <select class="way" aria-label={`How ${label.toLowerCase()} is given`} value={chosen} onChange={(e) => choose(Number(e.currentTarget.value))}>
      {ways.map((w, i) => <option key={i} value={i}>{w.words ?? nameOf(w.name).toLowerCase()}</option>)}
    </select>
  );
  if (way.constant) return <div class="field"><label for={id}>{label}</label>{menu}</div>;
  if (!fields && way.spec.kind !== 'fields' && way.spec.kind !== 'value') {
    return <div class="with-way"><Arg spec={{ ...way.spec, name: spec.name, sentence: spec.sentence, required: spec.required }} list={list} id={id} label={label} value={inner} set={wrap} depth={depth + 1} />{menu}</div>;
  }
  return (
    <fieldset class="group-of">
      <legend>{label}</legend>
      {(spec.sentence || type?.sentence) && <p class="means">{sentence(inPrint(spec.sentence ?? type.sentence))}</p>}
      {menu}
      {fields ? (
        <Args fields={fields} list={list} id={id} value={inner} depth={depth + 1} set={(name, v) => wrap(prune({ ...inner, [name]: v }))} />
      ) : <Arg spec={{ ...way.spec, required: true }} list={list} id={id} label={nameOf(way.name)} value={inner} set={wrap} depth={depth + 1} />}
    </fieldset>
  );
}
const prune = (object) => Object.fromEntries(Object.entries(object).filter(([, v]) => v !== undefined && v !== ''));

function Simple({ id, label, spec, children }) {
  return (
    <div class="field">
      <label for={id}>{label}{spec.required === false ? '' : <span class="needed"> needed</span>}</label>
      {children}
      {told(spec) && <p class="means">{told(spec)}</p>}
    </div>
  );
}

/** A number with a unit menu; a text with its own unit ("7 ft 10 in") goes as it is. */
function Quantity({ id, spec, units, value, set, label }) {
  const symbols = units.map((u) => u.unit).filter(Boolean);
  const first = symbols.includes('degC') ? 'degC' : symbols.includes('%') ? '%' : spec.limits?.unit && symbols.includes(spec.limits.unit) ? spec.limits.unit : (spec.unit || symbols[0] || '');
  const [unit, setUnit] = useState(first);
  const [text, setText] = useState('');
  const give = (t, u) => {
    const plain = /^\s*[-−]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?\s*$/i.test(t);
    if (t.trim() === '') return set(undefined);
    const number = t.trim().replace('−', '-');
    return set(plain && symbols.length === 0 ? Number(number) : plain ? `${number} ${u}` : t.trim());
  };
  return (
    <div class="control">
      <input id={id} class="number" type="text" inputMode="decimal" autocomplete="off" value={text} onInput={(e) => {
        setText(e.currentTarget.value);
        give(e.currentTarget.value, unit);
      }} />
      {symbols.length > 0 && (
        <select class="unit" aria-label={`Unit of ${label.toLowerCase()}`} value={unit} onChange={(e) => {
          setUnit(e.currentTarget.value);
          give(text, e.currentTarget.value);
        }}>{(symbols.includes(unit) ? symbols : [unit, ...symbols]).map((s) => <option key={s} value={s}>{unitInPrint(s)}</option>)}</select>
      )}
    </div>
  );
}
