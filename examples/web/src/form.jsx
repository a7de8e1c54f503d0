// SPDX-License-Identifier: BSL-1.0
// The form of one day, made from the list of keys.
import { useEffect, useRef, useState } from 'preact/hooks';
import { dayOf, rootsOf } from './days.js';
import { Icon } from './icons.jsx';
import { nodeAt } from './plan_tree.js';
import { inPrint, nameOf, partsOf, unitInPrint } from './words.js';

const idOf = (path) => `k-${path.replace(/[^a-z0-9_]/gi, '-')}`;
const sentence = (means) => means[0].toUpperCase() + means.slice(1) + (/[.!?]$/.test(means) ? '' : '.');

/** All tables of a day. */
export function DayForm({ store, day }) {
  const { tables, root } = store.state;
  const roots = rootsOf(day, tables);
  // A table stands on the page where the one around it is there; what is missing is offered at the end.
  const there = [];
  const offered = [];
  for (const spec of roots) {
    const parentPath = spec.key.table;
    const parent = nodeAt(parentPath, root);
    const at = parentPath ? `${parentPath}.${spec.name}` : spec.name;
    const present = spec.kind === 'table' ? parent?.tables[spec.name] : parent?.lists[spec.name]?.length;
    (present ? there : offered).push({ spec, at, parent });
  }
  return (
    <div class="tables">
      {there.map(({ spec, at, parent }) =>
        spec.kind === 'table' ? (
          <Table key={at} store={store} spec={spec} node={parent.tables[spec.name]} level={3} />
        ) : (
          <List key={at} store={store} spec={spec} at={at} list={parent.lists[spec.name]} level={3} />
        ))}
      <Offers store={store} offered={offered} />
    </div>
  );
}

/** Tables that could be added, each with its sentence. */
function Offers({ store, offered }) {
  if (offered.length === 0) return null;
  return (
    <div class="offers">
      <p class="offers-head">Also on this day, if you have it:</p>
      <ul>
        {offered.map(({ spec, at }) => (
          <li key={at}>
            <button type="button" class="offer" onClick={() => store.addTable(at, nameOf(spec.name))}>
              <Icon name="plus" /> <span class="offer-name">{nameOf(spec.name)}</span>
              <span class="offer-means">{spec.key.means}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function List({ store, spec, at, list, level }) {
  return (
    <>
      {list.map((node, i) => (
        <Table key={node.path} store={store} spec={spec} node={node} level={level} number={list.length > 1 ? i + 1 : 0} />
      ))}
      <p class="another">
        <button type="button" class="quiet" onClick={() => store.addTable(at, `another ${nameOf(spec.name).toLowerCase()}`)}>
          <Icon name="plus" /> Another {nameOf(spec.name).toLowerCase()}
        </button>
      </p>
    </>
  );
}

/** One table with its keys: what is given and needed first, the rest folded away. */
function Table({ store, spec, node, level, number }) {
  const { tables, byPath, drafts } = store.state;
  const Heading = `h${Math.min(level, 6)}`;
  const own = node.given.label?.text ?? node.given.name?.text;
  const kind = nameOf(spec.name) + (number ? ` ${number}` : '');
  const at = (name) => `${node.path}.${name}`;

  const oneOf = spec.rules.filter((r) => r.kind !== 'together');
  const together = spec.rules.filter((r) => r.kind === 'together');
  const isGiven = (name) => name in node.given || at(name) in drafts || byPath.has(at(name));
  const openAlternatives = new Set(
    oneOf.filter((r) => r.kind === 'one_of' && !r.names.some(isGiven)).flatMap((r) => r.names));
  const begun = new Set(together.filter((r) => r.names.some(isGiven)).flatMap((r) => r.names));
  const columns = spec.keys.filter((k) => k.kind === 'numbers');
  const single = spec.keys.filter((k) => k.kind !== 'numbers');
  const shown = single.filter((k) => k.needed || isGiven(k.name) || openAlternatives.has(k.name) || begun.has(k.name));
  const folded = single.filter((k) => !shown.includes(k));
  const showColumns = columns.filter((k) => k.needed || isGiven(k.name));
  const foldedColumns = columns.filter((k) => !showColumns.includes(k));
  const inner = spec.tables.map((t) => ({ spec: t, at: at(t.name), node: node.tables[t.name], list: node.lists[t.name] }));
  const sameSheet = inner.filter(({ spec: t }) => sameDay(t.path, spec.path));
  const missing = sameSheet.filter(({ spec: t, node: n, list }) => (t.kind === 'table' ? !n : !list?.length));
  const alternatives = oneOf.filter((r) => r.names.length > 1);

  return (
    <div role="group" class={`card level-${level}`} aria-labelledby={idOf(`${node.path}-head`)}>
      <header>
        <Heading id={idOf(`${node.path}-head`)}>
          {own ? (
            <>
              {own} {own.toLowerCase() !== kind.toLowerCase() && <span class="kind">{kind}</span>}
            </>
          ) : kind}
        </Heading>
        <button type="button" class="quiet small" onClick={() => store.removeTable(node.path, `removing ${own ?? kind}`)}
          aria-label={`Remove ${own ?? kind}`}>
          <Icon name="minus" /> Remove
        </button>
      </header>
      {spec.key.means.replace(/^(the|each) /, '') !== spec.name.replaceAll('_', ' ') && <p class="means">{sentence(spec.key.means)}</p>}
      {byPath.has(node.path) && !byPath.get(node.path).lacks && <Mistake store={store} mistake={byPath.get(node.path)} id={idOf(`${node.path}-bad`)} />}
      {alternatives.filter((r) => openAlternatives.has(r.names[0])).map((r) => (
        <p class="rule" key={r.names.join()}>
          Give one of these: {r.names.map((n) => nameOf(n).toLowerCase()).join(', ')}.
        </p>
      ))}
      {shown.length > 0 && (
        <div class="fields">{shown.map((k) => <Field key={k.name} store={store} keyRow={k} path={at(k.name)} given={node.given[k.name]} />)}</div>
      )}
      {showColumns.length > 0 && <Columns store={store} keys={showColumns} node={node} />}
      {(folded.length > 0 || foldedColumns.length > 0) && (
        <More names={[...folded, ...foldedColumns].map((k) => k.name)}>
          {folded.length > 0 && (
            <div class="fields">{folded.map((k) => <Field key={k.name} store={store} keyRow={k} path={at(k.name)} given={undefined} />)}</div>
          )}
          {foldedColumns.length > 0 && <Columns store={store} keys={foldedColumns} node={node} />}
        </More>
      )}
      {sameSheet.map(({ spec: t, at: path, node: n, list }) =>
        t.kind === 'table'
          ? n && <Table key={path} store={store} spec={t} node={n} level={level + 1} />
          : list?.length > 0 && <List key={path} store={store} spec={t} at={path} list={list} level={level + 1} />)}
      {missing.length > 0 && (
        <ul class="chips" aria-label={`What can be added to ${own ?? kind}`}>
          {missing.map(({ spec: t, at: path }) => (
            <li key={path}>
              <button type="button" id={idOf(path)} class={`chip${t.key.needed ? ' now' : ''}`} title={sentence(t.key.means)} onClick={() => store.addTable(path, nameOf(t.name))}>
                <Icon name="plus" /> {nameOf(t.name)}{t.key.needed && <span class="needed"> needed</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function More({ names, children }) {
  const [open, setOpen] = useState(false);
  const count = names.filter((n) => n !== 'note').length;
  const words = count === 0 ? 'Add a remark' : count === 1 ? 'One more thing you may know' : `${count} more things you may know`;
  return (
    <details class="more" open={open} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>{words}</summary>
      {open && children}
    </details>
  );
}

function Mistake({ store, mistake, id }) {
  return (
    <p class="mistake" id={id}>
      <Icon name="does not hold" /> {inPrint(mistake.reason)}
      {mistake.ownClash && (
        <>
          {' '}<button type="button" class="link" onClick={() => showField(store, mistake.ownClash)}>See {inPrint(mistake.clashes)}</button>
        </>
      )}
    </p>
  );
}

/** Bring a field into view, on whatever day it is. */
export function showField(store, path) {
  const table = path.replace(/\[[^\]]*\]/g, '[]');
  const cut = table.lastIndexOf('.');
  store.go((dayOf(table) && store.state.tables.has(table) ? dayOf(table) : dayOf(table.slice(0, Math.max(cut, 0))))?.id ?? store.state.day);
  requestAnimationFrame(() => requestAnimationFrame(() => {
    const field = document.getElementById(idOf(path)) ?? document.getElementById(idOf(`${path}-head`));
    field?.closest('details')?.setAttribute('open', '');
    field?.scrollIntoView({ block: 'center' });
    field?.focus?.();
  }));
}

/** One key: its name, its sentence, what holds it, and what is wrong with it. */
function Field({ store, keyRow: key, path, given }) {
  const { drafts, byPath } = store.state;
  const id = idOf(path);
  const draft = drafts[path];
  const mistake = byPath.get(path)?.lacks ? undefined : byPath.get(path);
  const wrong = draft?.reason ?? mistake?.reason;
  const Control = controls[key.kind] ?? TextControl;
  return (
    <div class={`field ${key.kind}${wrong ? ' wrong' : ''}${given ? '' : ' blank'}`}>
      <label for={id}>
        {nameOf(key.name)}
        {key.needed && !given && <span class="needed"> needed</span>}
        {key.set_by === 'wanted' && <span class="tag">goal</span>}
      </label>
      <Control store={store} keyRow={key} path={path} id={id} given={given} draft={draft} wrong={wrong} />
      <p class="means" id={`${id}-means`}>
        {sentence(key.means)}{!given && key.default ? ` Without it: ${inPrint(key.default)}.` : ''}
      </p>
      {draft?.reason ? (
        <p class="mistake" id={`${id}-bad`} role="alert">
          <Icon name="does not hold" /> {inPrint(draft.reason)}{' '}
          {given && <button type="button" class="link" onClick={() => store.dropDraft(path)}>Back to {inPrint(given.text)}</button>}
        </p>
      ) : (
        mistake && <Mistake store={store} mistake={mistake} id={`${id}-bad`} />
      )}
    </div>
  );
}

const described = (id, wrong) => (wrong ? `${id}-means ${id}-bad` : `${id}-means`);

function WordControl({ store, keyRow: key, path, id, given, draft, wrong }) {
  return (
    <select id={id} aria-describedby={described(id, wrong)} aria-invalid={wrong ? 'true' : undefined} value={draft?.text ?? given?.text ?? ''}
      onChange={(e) => store.setText(path, e.currentTarget.value)}>
      <option value="">{key.default ? `not said (${key.default})` : 'not said'}</option>
      {key.words.map((w) => <option key={w} value={w}>{w}</option>)}
    </select>
  );
}

function FlagControl({ store, path, id, given, draft, wrong }) {
  return (
    <select id={id} aria-describedby={described(id, wrong)} value={draft?.text ?? given?.text ?? ''}
      onChange={(e) => store.setText(path, e.currentTarget.value)}>
      <option value="">not said</option>
      <option value="true">yes</option>
      <option value="false">no</option>
    </select>
  );
}

/** A text box whose content is handed over when it is left or Enter is pressed. */
function useTyped(text, commit) {
  const [typed, setTyped] = useState(null); // null: nothing that differs
  useEffect(() => setTyped(null), [text]);
  return {
    value: typed ?? text,
    'data-typing': typed === null ? undefined : 'yes',
    typed,
    onInput: (e) => setTyped(e.currentTarget.value),
    onChange: (e) => {
      if (e.currentTarget.value !== text) commit(e.currentTarget.value);
    },
    onKeyDown: (e) => {
      if (e.key === 'Enter') e.currentTarget.blur();
      if (e.key === 'Escape') setTyped(null);
    },
  };
}

function TextControl({ store, keyRow: key, path, id, given, draft, wrong }) {
  const { typed, ...box } = useTyped(draft?.text ?? given?.text ?? '', (text) => store.setText(path, text));
  return (
    <input id={id} type="text" {...box} placeholder={key.kind === 'rating' ? key.example : undefined} aria-describedby={described(id, wrong)}
      aria-invalid={wrong ? 'true' : undefined} autocomplete="off" />
  );
}

/** A number: box, unit menu, doubt; a slider where it can be chosen. */
function NumberControl({ store, keyRow: key, path, id, given, draft, wrong }) {
  const { quantities, us } = store.state;
  const quantity = quantities.get(key.quantity);
  const parts = partsOf(draft?.text ?? given?.text ?? '');
  const everyday = (us ? key.everyday?.us : key.everyday?.si) ?? '';
  const symbols = unitsFor(quantity, parts.unit || everyday, us);
  const own = tableSymbol(parts.unit || everyday, symbols);
  const [chosenUnit, setUnit] = useState(null);
  useEffect(() => setUnit(null), [given?.text]);
  const unit = chosenUnit ?? own;
  const [limit, setLimit] = useState(null);
  const plain = /^\s*[-−]?\s*(\d[\d ]*(\.\d*)?|\.\d+)(e[+-]?\d+)?\s*$/i;

  const compose = (number, doubt) => {
    if (number.trim() === '') return '';
    const value = plain.test(number) && unit ? `${number.trim().replace('−', '-')} ${unit}` : number.trim();
    const half = doubt.trim().replace('±', '').trim();
    if (!half) return value;
    const withUnit = plain.test(half) && unit ? `${half} ${stepUnit(unit)}` : half;
    return `${value} +/- ${withUnit}`;
  };
  const check = (number) => {
    const size = quantity?.units.find((u) => u.symbol === unit);
    if (!plain.test(number)) return setLimit(null);
    const si = Number(number.replace('−', '-').replaceAll(' ', '')) * (size?.size ?? 1) + (size?.zero ?? 0);
    if (si > key.high * (1 + 1e-12)) return setLimit(`At most ${inPrint(key.high_text)} can be.`);
    if (si < key.low - Math.abs(key.low) * 1e-12) return setLimit(`At least ${inPrint(key.low_text)} must be.`);
    return setLimit(null);
  };
  const number = useTyped(parts.number, (text) => {
    setLimit(null);
    store.setText(path, compose(text, /±|\+\/-/.test(text) ? '' : parts.doubt));
  });
  const doubt = useTyped(inPrint(parts.doubt), (text) => store.setText(path, compose(parts.number, text)));
  const changeUnit = async (to) => {
    setUnit(to);
    if (!given || draft) return;
    const text = await store.ask('inUnit', { quantity: key.quantity, unit: to, si: given.si });
    if (text) await store.setText(path, parts.doubt ? `${text} +/- ${parts.doubt}` : text);
  };
  const doubtful = parts.doubt || (key.set_by !== 'wanted' && key.doubt);
  const [openDoubt, setOpenDoubt] = useState(false);

  return (
    <>
      <div class="control">
        <input id={id} class="number" type="text" inputMode="decimal" value={number.value} autocomplete="off"
          onInput={(e) => {
            number.onInput(e);
            check(e.currentTarget.value);
          }}
          onChange={number.onChange} onKeyDown={number.onKeyDown}
          placeholder={key.default ? inPrint(partsOf(key.default).number) : ''}
          aria-describedby={described(id, wrong) + (limit ? ` ${id}-limit` : '')} aria-invalid={wrong ? 'true' : undefined} />
        {symbols.length > 1 ? (
          <select class="unit" aria-label={`Unit of ${nameOf(key.name).toLowerCase()}`} value={unit} onChange={(e) => changeUnit(e.currentTarget.value)}>
            {symbols.map((s) => <option key={s} value={s}>{unitInPrint(s)}</option>)}
          </select>
        ) : (
          symbols[0] && <span class="unit-alone">{unitInPrint(symbols[0])}</span>
        )}
        {given && (doubtful || openDoubt) && (
          <span class="doubt">
            <span aria-hidden="true">±</span>
            <input type="text" value={doubt.value} onInput={doubt.onInput} onChange={doubt.onChange} onKeyDown={doubt.onKeyDown}
              placeholder={usualDoubt(key)} aria-label={`${nameOf(key.name)}: give or take${key.doubt ? `; without it ${usualDoubt(key)}` : ''}`} autocomplete="off" />
          </span>
        )}
        {given && !doubtful && !openDoubt && key.set_by !== 'wanted' && (
          <button type="button" class="quiet tiny" onClick={() => setOpenDoubt(true)} aria-label={`Say how well ${nameOf(key.name).toLowerCase()} is known`}>±</button>
        )}
      </div>
      {limit && <p class="limit" id={`${id}-limit`} role="status">{limit}</p>}
      {(key.choose || key.sizes?.length > 0) && given && !draft && <Slider store={store} keyRow={key} path={path} id={id} given={given} />}
    </>
  );
}

/** How well a thing is usually known: "3 mm", "2 %", "factor 2". */
const usualDoubt = (key) => inPrint(key.doubt?.text ?? '').replace(/^(\+\/- |± )/, '').replace(/^within a factor of/, 'factor');

const stepUnit = (unit) => (unit === 'degC' || unit === '°C' ? 'K' : unit);

/** The units on a menu: the one in use and its system's first. */
function unitsFor(quantity, inUse) {
  const symbols = (quantity?.units ?? []).map((u) => u.symbol);
  if (symbols.length === 0) return inUse ? [inUse] : [];
  const own = tableSymbol(inUse, symbols);
  return own && !symbols.includes(own) ? [own, ...symbols] : symbols;
}
/** A unit in the spelling of the menu. */
function tableSymbol(unit, symbols) {
  if (!unit || symbols.includes(unit)) return unit || symbols[0] || '';
  return symbols.find((s) => unitInPrint(s) === unitInPrint(unit)) ?? unit;
}

/** A slider over what can be chosen, or over the sizes that are sold. */
function Slider({ store, keyRow: key, path, id, given }) {
  const sizes = key.sizes?.length > 0 ? key.sizes : null;
  const low = sizes ? 0 : Math.min(key.choose.low, given.si);
  const high = sizes ? sizes.length - 1 : Math.max(key.choose.high, given.si);
  const step = sizes ? 1 : key.choose.step || (high - low) / 200;
  const nearest = sizes ? sizes.reduce((best, s, i) => (Math.abs(s - given.si) < Math.abs(sizes[best] - given.si) ? i : best), 0) : given.si;
  const shown = useRef(null);
  const move = (e) => {
    const at = Number(e.currentTarget.value);
    store.slide(path, sizes ? sizes[at] : low === key.choose.low ? round(key.choose.low, at, step) : at);
  };
  return (
    <div class="slider">
      <input ref={shown} type="range" min={low} max={high} step={sizes ? 1 : step} value={nearest} onInput={move} onChange={() => store.letGo()} onBlur={() => store.letGo()}
        aria-label={`${nameOf(key.name)}, by a slider`} aria-valuetext={inPrint(given.text)} aria-describedby={`${id}-means`}
        style={{ '--part': `${(100 * (nearest - low)) / (high - low || 1)}%` }} />
      <output>{inPrint(partsOf(given.text).number)} {unitInPrint(partsOf(given.text).unit)}</output>
    </div>
  );
}
/** A place on the slider as the nearest step, without the dust of binary fractions. */
const round = (low, at, step) => Number((low + Math.round((at - low) / step) * step).toPrecision(12));

/** Lists of numbers that belong together, as columns: readings over time, points of a curve. */
function Columns({ store, keys, node }) {
  const lists = keys.map((k) => ({
    key: k, path: `${node.path}.${k.name}`,
    cells: (node.given[k.name]?.text ?? '').split(',').map((c) => c.trim()).filter(Boolean),
  }));
  const wrongWith = (path) => {
    const mistake = store.state.byPath.get(path);
    return store.state.drafts[path]?.reason ?? (mistake?.lacks ? undefined : mistake?.reason);
  };
  const draftOf = (path) => store.state.drafts[path]?.text.split(',').map((c) => c.trim());
  const rows = Math.max(0, ...lists.map((l) => (draftOf(l.path) ?? l.cells).length)) + 1;
  const commit = (list, row, text) => {
    const cells = [...(draftOf(list.path) ?? list.cells)];
    const { us } = store.state;
    const unit = partsOf(cells[0] ?? '').unit || (us ? list.key.everyday?.us : list.key.everyday?.si) || '';
    const pasted = text.split(/[\t\n;]+/).map((c) => c.trim()).filter(Boolean);
    const withUnit = (c) => (/^[-−]?[\d. ]+$/.test(c) && unit ? `${c.replace('−', '-')} ${unit}` : c);
    if (pasted.length === 0) cells.splice(row, 1);
    else cells.splice(row, pasted.length, ...pasted.map(withUnit));
    store.setText(list.path, cells.join(', '));
  };
  return (
    <div class="columns" role="group" aria-label={keys.map((k) => nameOf(k.name)).join(', ')}>
      <table>
        <thead>
          <tr>
            <th scope="col"><span class="unseen">Number</span></th>
            {lists.map(({ key: k }) => (
              <th key={k.name} scope="col">
                {nameOf(k.name)}{k.needed && !node.given[k.name] && <span class="needed"> needed</span>} <span class="means">{sentence(k.means)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: rows }, (_, row) => (
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {lists.map((list) => (
                <td key={list.path}>
                  <Cell id={row === 0 ? idOf(list.path) : undefined} text={(draftOf(list.path) ?? list.cells)[row] ?? ''} label={`${nameOf(list.key.name)}, number ${row + 1}`}
                    wrong={wrongWith(list.path)} commit={(text) => commit(list, row, text)} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {lists.map(({ key: k, path }) => {
        const wrong = wrongWith(path);
        return wrong && (
          <p class="mistake" key={path} role="alert">
            <Icon name="does not hold" /> {nameOf(k.name)}: {inPrint(wrong)}{' '}
            {store.state.drafts[path] && <button type="button" class="link" onClick={() => store.dropDraft(path)}>Back to what it was</button>}
          </p>
        );
      })}
    </div>
  );
}

function Cell({ id, text, label, wrong, commit }) {
  const { typed, ...box } = useTyped(inPrint(text), commit);
  const paste = (e) => {
    const data = e.clipboardData.getData('text');
    if (!/[\t\n;]/.test(data.trim())) return;
    e.preventDefault();
    commit(data);
  };
  return <input id={id} type="text" inputMode="decimal" {...box} onPaste={paste} aria-label={label} aria-invalid={wrong ? 'true' : undefined} autocomplete="off" />;
}

const controls = { number: NumberControl, word: WordControl, flag: FlagControl, text: TextControl, rating: TextControl };

/** Tables that are filled on the same day stand together. */
const sameDay = (a, b) => dayOf(a) === dayOf(b);
