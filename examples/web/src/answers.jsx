// SPDX-License-Identifier: BSL-1.0
// What the plan comes to: the first screen by consequence, each row with what happens, and what is behind it.
import { consequences, rankOf, verdictWords } from './days.js';
import { showField } from './form.jsx';
import { Icon } from './icons.jsx';
import { Picture } from './pictures.jsx';
import { inPrint, placeInWords } from './words.js';

const allNumbers = (f) => [...f.numbers, ...(f.places ?? []).flatMap((p) => p.numbers.map((n) => ({ ...n, place: p.place })))];

/** The number that a row shows: its answer, else its deciding margin. */
function headlineOf(f) {
  const all = allNumbers(f);
  return all.find((n) => n.role === 'answer')
    ?? (f.margin && all.find((n) => n.id === f.margin.id && (n.place ?? '') === (f.margin.place ?? '')));
}

const sentence = (text) => text && text[0].toUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? '' : '.');
const firstSentence = (text) => /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;

/** How many of each verdict. */
export function tally(findings) {
  const count = {};
  for (const f of findings) {
    const kind = f.recommendation && f.verdict === 'does not hold' ? 'thin margin' : f.verdict;
    count[kind] = (count[kind] ?? 0) + 1;
  }
  return count;
}

const summaryWords = [
  ['does not hold', (n) => (n === 1 ? 'does not hold' : 'do not hold')],
  ['not enough known', () => 'not known enough'],
  ['thin margin', () => 'with a thin margin'],
  ['holds', (n) => (n === 1 ? 'holds' : 'hold')],
];

export function Answers({ store, dark }) {
  const { report, mistakes, stale, checked, progress } = store.state;
  const waiting = store.state.phase === 'waiting' && <p class="checking" role="status">The calculations are being unpacked. What you fill in is kept.</p>;
  if (!report) return <section class="answers" aria-label="Where it stands"><h2>Where it stands</h2>{waiting}<Mend store={store} /></section>;
  const count = tally(report.findings);
  return (
    <section class="answers" aria-label="Where it stands">
      <div class="answers-head">
        <h2>Where it stands</h2>
        <p class="summary" role="status">
          {summaryWords.filter(([v]) => count[v]).map(([v, words]) => (
            <span key={v} class={`sum ${v.replaceAll(' ', '-')}`}><Icon name={v} /> <b>{count[v]}</b> {words(count[v])}</span>
          ))}
        </p>
        <p class="checking">
          {stale ? 'These answers are those of the plan before; see below.'
            : checked ? 'Checked with everything doubtful moving: bands hold 95 %.'
            : progress === null ? 'By central values; the doubts are checked when your hand is still.'
            : `Checking with everything doubtful moving: ${Math.round(100 * progress)} %.`}
        </p>
        <div class="progress" aria-hidden="true"><div style={{ width: `${checked ? 100 : 100 * (progress ?? 0)}%` }} /></div>
      </div>
      {mistakes.length > 0 && <Mend store={store} />}
      {report.findings.length === 0 && <p class="empty">Nothing is described yet that could be judged. Each day's sheet asks for what it needs.</p>}
      {consequences.map((c) => (
        <Group key={c.id} store={store} consequence={c} findings={report.findings.filter((f) => f.consequence === c.id)} dark={dark} />
      ))}
      {report.measure_first?.length > 0 && checked && (
        <section class="measure">
          <h3>Measure first</h3>
          <ol>
            {report.measure_first.map((m) => (
              <li key={m.id + m.measure}>
                <button type="button" class="link" onClick={() => openFinding(store, m.id)}>{inPrint(sentence(m.measure))}</button>
              </li>
            ))}
          </ol>
        </section>
      )}
      <p class="fine">
        A screening, not a design. Where it could hurt people, follow local codes and licensed practice.
      </p>
    </section>
  );
}

export function openFinding(store, id) {
  store.set({ open: id, view: 'answers' });
  requestAnimationFrame(() => requestAnimationFrame(() => {
    const row = document.getElementById(`f-${id}`);
    for (let d = row?.closest('details'); d; d = d.parentElement.closest('details')) d.open = true;
    row?.scrollIntoView({ block: 'nearest' });
    row?.querySelector('button')?.focus();
  }));
}

/** What keeps the plan from being judged: what is wrong, and what is not there yet. */
function Mend({ store }) {
  const wrong = store.state.mistakes.filter((m) => !m.lacks);
  const lacking = store.state.mistakes.filter((m) => m.lacks);
  const list = (some) => (
    <ul>
      {some.map((m, i) => (
        <li key={i}>
          {m.own && <button type="button" class="link" onClick={() => showField(store, m.own)}>{placeInWords(m.path)}</button>}
          {m.own ? ': ' : ''}{m.reason.startsWith('nothing to assess') ? 'Nothing is described yet. Begin on any day; each sheet asks for what it needs.' : inPrint(m.reason.replace(/^is missing: /, ''))}
        </li>
      ))}
    </ul>
  );
  return (
    <>
      {wrong.length > 0 && (
        <section class="mend">
          <h3><Icon name="does not hold" /> {wrong.length === 1 ? 'One thing to mend first' : `${wrong.length} things to mend first`}</h3>
          {list(wrong)}
        </section>
      )}
      {lacking.length > 0 && (
        <section class="mend lacking">
          <h3><Icon name="not enough known" /> Needed before it can be judged</h3>
          {list(lacking)}
        </section>
      )}
    </>
  );
}

/** One consequence: what needs a hand, then what holds and what is merely known, folded. */
function Group({ store, consequence, findings, dark }) {
  if (findings.length === 0) return null;
  const advice = (f) => f.recommendation && (f.verdict === 'does not hold' || f.verdict === 'thin margin');
  const act = findings.filter((f) => rankOf(f.verdict) < 3).sort((a, b) => (advice(a) - advice(b)) || rankOf(a.verdict) - rankOf(b.verdict));
  const rest = findings.filter((f) => rankOf(f.verdict) >= 3).sort((a, b) => rankOf(a.verdict) - rankOf(b.verdict));
  const holding = rest.filter((f) => f.verdict === 'holds').length;
  const known = rest.length - holding;
  const words = [holding && `${holding} ${holding === 1 ? 'holds' : 'hold'}`, known && `${known} to know`].filter(Boolean).join(', ');
  const said = new Set();
  const row = (f) => {
    const isNew = f.caution && !said.has(f.caution);
    said.add(f.caution);
    return <Row key={f.id} store={store} f={f} caution={isNew} dark={dark} />;
  };
  return (
    <section class="group">
      <h3>{consequence.words}{act.length === 0 && <span class="all-well"> {words}</span>}</h3>
      {act.length > 0 && <ul class="rows">{act.map(row)}</ul>}
      {rest.length > 0 && (
        <details class="rest" open={rest.some((f) => f.id === store.state.open) || undefined}>
          <summary>{act.length > 0 ? words : 'Show them'}<span class="unseen">: {consequence.words.toLowerCase()}</span></summary>
          <ul class="rows">{rest.map(row)}</ul>
        </details>
      )}
    </section>
  );
}

function Row({ store, f, caution, dark }) {
  const { open, checked, stale } = store.state;
  const isOpen = open === f.id;
  const number = headlineOf(f);
  const judged = f.verdict !== 'for information';
  const acts = rankOf(f.verdict) < 3;
  return (
    <li class={`row ${f.verdict.replaceAll(' ', '-')}${f.recommendation ? ' advice' : ''}${checked || !judged ? '' : ' unchecked'}`} id={`f-${f.id}`}>
      <button type="button" class="row-head" aria-expanded={isOpen} onClick={() => store.set({ open: isOpen ? null : f.id })}>
        <Icon name={f.verdict} />
        <span class="row-words">
          <span class="row-says">{sentence(f.happens) || f.question}</span>
          <span class="row-facts">
            {judged && <span class="verdict">{verdictWords(f)}{checked || stale ? '' : <em> (being checked)</em>}</span>}
            {number && <span class="headline">{number.label}{number.place ? ` (${number.place})` : ''}: <b>{inPrint(number.text)}</b></span>}
          </span>
        </span>
      </button>
      {caution && acts && !isOpen && <p class="row-caution">{firstSentence(f.caution)}</p>}
      {isOpen && <Behind store={store} f={f} dark={dark} />}
    </li>
  );
}

/** What is behind a row. */
function Behind({ store, f, dark }) {
  const figures = (store.state.report.figures ?? []).filter((p) => p.id === f.id);
  const chance = f.chance ?? f.margin?.chance;
  return (
    <div class="behind">
      {f.happens && <p class="question">{f.question}</p>}
      <Numbers f={f} />
      {typeof chance === 'number' && <p class="chance">The margin is positive in {chanceInWords(chance)} of all cases within the doubts.</p>}
      {f.shares?.doubts.length > 0 && (
        <p class="fine">
          What makes the band: {f.shares.doubts.slice(0, 4).map((d) => `${d.path ? placeInWords(d.path) : d.law} ${Math.round(100 * d.part)} %`).join('; ')}.
        </p>
      )}
      {f.note && <p>{inPrint(f.note)}</p>}
      {figures.map((p, i) => <Picture key={i} figure={p} dark={dark} />)}
      <Cures store={store} f={f} />
      {f.caution && <p class="caution"><b>Caution.</b> {f.caution}</p>}
      {f.measure_next?.length > 0 && (
        <div class="next"><b>To know it better:</b><ul>{f.measure_next.map((m, i) => <li key={i}>{inPrint(sentence(m))}</li>)}</ul></div>
      )}
      {f.sources?.length > 0 && <Sources sources={f.sources} />}
    </div>
  );
}

export function chanceInWords(chance) {
  const percent = 100 * chance;
  if (percent >= 99.95) return 'more than 99.9 %';
  if (percent <= 0.05) return 'fewer than 0.1 %';
  return `${percent.toFixed(1)} %`;
}

export function Numbers({ f }) {
  const line = (n) => (
    <tr key={n.id} class={n.role}><th scope="row">{n.label}{n.role === 'limit' ? ' (limit)' : ''}</th><td>{inPrint(n.text)}</td></tr>
  );
  return (
    <table class="numbers">
      {f.numbers.length > 0 && <tbody>{f.numbers.map(line)}</tbody>}
      {(f.places ?? []).map((p) => (
        <tbody key={p.place}>
          <tr class="place"><th scope="rowgroup" colSpan="2">{p.place}</th></tr>
          {p.numbers.map(line)}
        </tbody>
      ))}
    </table>
  );
}

export function Sources({ sources }) {
  return (
    <details class="sources">
      <summary>{sources.length === 1 ? 'Its source' : `Its ${sources.length} sources`}</summary>
      <ul>
        {sources.map((s, i) => (
          <li key={i}>{[s.authors, s.year || null].filter(Boolean).join(' ')}{s.title ? `. ${s.title}` : ''}{s.where ? `, ${s.where}` : ''} ({s.read_as}).</li>
        ))}
      </ul>
    </details>
  );
}

/** What would make it hold: asked when wanted, set by a button. */
function Cures({ store, f }) {
  if (!f.margin || (f.verdict !== 'does not hold' && f.verdict !== 'thin margin')) return null;
  const answer = store.state.cures[f.id] ?? (f.would_hold ? { state: 'known', cures: f.would_hold } : null);
  if (!answer) {
    return (
      <p class="cures">
        <button type="button" class="main" onClick={() => store.askCures(f.id)}>What would make it hold?</button>
      </p>
    );
  }
  if (answer.state === 'asked') return <p class="cures" role="status">Looking through everything you can still choose…</p>;
  if (answer.state === 'failed') return <p class="cures" role="status">That could not be worked out: {answer.message}</p>;
  if (answer.cures.length === 0) {
    const why = store.state.us || !answer.why ? 'Nothing that you can still choose makes it hold.' : inPrint(sentence(answer.why));
    return <p class="cures" role="status">{why}</p>;
  }
  const questions = new Map(store.state.report.findings.map((g) => [g.id, g.question]));
  const others = (list) => (list ?? []).filter((m) => m.id !== f.id).map((m) => `${questions.get(m.id) ?? m.id} (${m.after})`);
  return (
    <div class="cures">
      <p><b>It would hold with:</b></p>
      <ul>
        {answer.cures.map((cure, i) => {
          const better = others(cure.better ?? cure.changes_elsewhere?.better);
          const worse = others(cure.worse ?? cure.changes_elsewhere?.worse);
          return (
            <li key={i}>
              <button type="button" class="cure" onClick={() => store.applyCure(cure.changes ? cure : { changes: [cure] })}>
                {cure.do && !store.state.us ? <span class="change">{inPrint(sentence(cure.do))}</span> : (cure.changes ?? [cure]).map((c, k) => (
                  <span key={k} class="change">
                    {placeInWords(c.path)}: {c.from ? `${inPrint(c.from)} ` : 'nothing '}<Icon name="arrow" /><span class="unseen"> becomes </span> <b>{inPrint(c.to)}</b>
                  </span>
                ))}
                <span class="set-it">Set it</span>
              </button>
              <p class="fine">
                {typeof cure.chance === 'number' && `Then it holds in ${chanceInWords(cure.chance)} of cases. `}
                {better.length > 0 && `Also better: ${better.join('; ')}. `}
                {worse.length > 0 && `Worse: ${worse.join('; ')}.`}
              </p>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
