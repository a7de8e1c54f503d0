// SPDX-License-Identifier: BSL-1.0
// The page: its head, the days, the sheet of a day, where it stands.
import { useEffect, useRef, useState } from 'preact/hooks';
import { Answers, Numbers, tally } from './answers.jsx';
import { consequences, days, verdictWords } from './days.js';
import { DayForm } from './form.jsx';
import { Icon, Sign } from './icons.jsx';
import { About } from './about.jsx';
import { Formulas } from './formulas.jsx';
import { Picture } from './pictures.jsx';
import { inPrint } from './words.js';

export function App({ store, dark, printing }) {
  const { phase, view } = store.state;
  if (phase === 'stopped') return <Stopped store={store} />;
  if (phase === 'starting') {
    return (
      <div class="starting">
        <Sign /> <p role="status">Unpacking the calculations…</p>
      </div>
    );
  }
  return (
    <>
      <a class="skip" href="#sheet">To the sheet</a>
      <Head store={store} />
      {store.state.part === 'formulas' ? <Formulas store={store} /> : (
        <>
          <main class={`desk show-${view}`}>
            <Days store={store} />
            <Sheet store={store} dark={dark} />
            <Answers store={store} dark={dark} />
          </main>
          <Switch store={store} />
        </>
      )}
      {printing && <OnPaper store={store} />}
    </>
  );
}

/** Why nothing can be calculated here; what was kept can be taken along. */
function Stopped({ store }) {
  const { stopped, lastKept } = store.state;
  const save = () => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([lastKept], { type: 'application/json' }));
    link.download = 'plan.json';
    link.click();
  };
  return (
    <main class="stopped">
      <Sign />
      <h1>This page cannot calculate here</h1>
      <p>{stopped}</p>
      <p>Any browser of the last three years can: open this same file in one of those.</p>
      {lastKept ? (
        <>
          <p>The plan that you had here is still kept in this browser. Take it along:</p>
          <p><button type="button" class="main" onClick={save}><Icon name="save" /> Save the kept plan as a file</button></p>
        </>
      ) : <p>Nothing was lost: no plan had been begun in this browser.</p>}
    </main>
  );
}

function Head({ store }) {
  const { root, past, future, us, theme, notice, kept, welcome, part } = store.state;
  const file = useRef(null);
  const [about, setAbout] = useState(false);
  const [menu, setMenu] = useState(false);
  const title = store.state.drafts.title?.text ?? root.given.title?.text ?? '';
  const begin = (what) => {
    setMenu(false);
    store.begin(what);
  };
  const themes = { system: 'light', light: 'dark', dark: 'system' };
  const themeWords = { system: 'as your system', light: 'light', dark: 'dark' };
  return (
    <header class="head">
      <div class="head-line">
        <h1 class="brand"><Sign /> tankwright</h1>
        <div class="pair parts" role="group" aria-label="Part of the page">
          <button type="button" aria-pressed={part === 'plan'} onClick={() => store.set({ part: 'plan' })}>Plan</button>
          <button type="button" aria-pressed={part === 'formulas'} onClick={() => store.set({ part: 'formulas' })}>Formulas</button>
        </div>
        <input class="title" aria-label="Title of the plan" value={title} placeholder="A plan without a title"
          onChange={(e) => store.setText('title', e.currentTarget.value)} onKeyDown={(e) => e.key === 'Enter' && e.currentTarget.blur()} />
        <div class="tools" role="toolbar" aria-label="Plan">
          <button type="button" class="tool" disabled={past.length === 0} onClick={() => store.undo()} title={past.length ? `Undo: ${past.at(-1).label}` : 'Nothing to undo'} aria-label="Undo"><Icon name="undo" /></button>
          <button type="button" class="tool" disabled={future.length === 0} onClick={() => store.redo()} title={future.length ? `Redo: ${future.at(-1).label}` : 'Nothing to redo'} aria-label="Redo"><Icon name="redo" /></button>
          <span class="gap" />
          <div class="menu">
            <button type="button" class="tool wide" aria-label="New" aria-expanded={menu} onClick={() => setMenu(!menu)}><Icon name="page" /> <span>New</span></button>
            {menu && (
              <ul class="menu-list" onKeyDown={(e) => e.key === 'Escape' && setMenu(false)}>
                <li><button type="button" onClick={() => begin('starter')}><b>A short plan to fill in</b><span>The keys that matter most, with invented numbers.</span></button></li>
                <li><button type="button" onClick={() => begin('nothing')}><b>An empty plan</b><span>Add only what you have.</span></button></li>
                <li><button type="button" onClick={() => begin('demo')}><b>The demo</b><span>An invented lagoon with everything described.</span></button></li>
              </ul>
            )}
          </div>
          <button type="button" class="tool wide" aria-label="Open" onClick={() => file.current.click()}><Icon name="open" /> <span>Open</span></button>
          <input ref={file} type="file" class="unseen" tabIndex={-1} aria-label="A plan file" accept=".toml,.json,text/*"
            onChange={(e) => {
              if (e.currentTarget.files[0]) store.openFile(e.currentTarget.files[0]);
              e.currentTarget.value = '';
            }} />
          <button type="button" class="tool wide" aria-label="Save" onClick={() => store.saveFile()}><Icon name="save" /> <span>Save</span></button>
          <button type="button" class="tool print-tool" onClick={() => window.print()} aria-label="Print" title="Print"><Icon name="print" /></button>
          <span class="gap" />
          <div class="pair" role="group" aria-label="Units of the answers">
            <button type="button" aria-pressed={!us} onClick={() => us && store.setUnits(false)}>SI</button>
            <button type="button" aria-pressed={us} onClick={() => us || store.setUnits(true)}>US</button>
          </div>
          <button type="button" class="tool" onClick={() => store.set({ theme: themes[theme] }) ?? store.keep()} title={`Colours: ${themeWords[theme]}`}
            aria-label={`Colours: ${themeWords[theme]}. Change`}><Icon name="light" /></button>
          <button type="button" class="tool" onClick={() => setAbout(true)} aria-label="About this page" title="About this page"><Icon name="info" /></button>
        </div>
      </div>
      {!kept && <p class="notice bad">This browser keeps nothing for this page: save your plan as a file before you close it.</p>}
      {welcome && part === 'plan' && (
        <div class="notice welcome">
          <p>
            <b>This is the demo</b>, an invented lagoon. Change anything and watch where it stands; or begin your own. What you type stays in this
            browser and is sent nowhere.
          </p>
          <p class="welcome-do">
            <button type="button" class="main" onClick={() => begin('starter')}>Begin my own plan</button>{' '}
            <button type="button" class="quiet" onClick={() => store.set({ welcome: false })}>Look around first</button>
          </p>
        </div>
      )}
      {notice && (
        <div class={`notice ${notice.kind}`} role={notice.kind === 'bad' ? 'alert' : 'status'}>
          <p>{notice.words}</p>
          {notice.list && <ul>{notice.list.slice(0, 12).map((l, i) => <li key={i}>{inPrint(l)}</li>)}{notice.list.length > 12 && <li>and {notice.list.length - 12} more</li>}</ul>}
          <button type="button" class="quiet small" onClick={() => store.set({ notice: null })}>Understood</button>
        </div>
      )}
      {about && <About store={store} close={() => setAbout(false)} />}
    </header>
  );
}

/** The days of the job, each with what is open on it. */
function Days({ store }) {
  const { day, report, dayOfFinding } = store.state;
  const strip = useRef(null);
  useEffect(() => {
    const now = strip.current?.querySelector('[aria-current]');
    now?.parentElement.parentElement.scrollTo?.({ left: now.offsetLeft - 40 });
  }, [day]);
  return (
    <nav class="days" aria-label="Days of the job" ref={strip}>
      <ol>
        {days.map((d, i) => {
          const count = tally((report?.findings ?? []).filter((f) => (f.day ?? dayOfFinding.get(f.id)) === d.words));
          const open = [['does not hold', 'not holding'], ['not enough known', 'not known'], ['thin margin', 'thin']].filter(([v]) => count[v]);
          return (
            <li key={d.id}>
              <button type="button" aria-current={d.id === day ? 'page' : undefined} onClick={() => store.go(d.id)}>
                <span class="day-number" aria-hidden="true">{i + 1}</span>
                <span class="day-words">{d.words}</span>
                <span class="day-marks">
                  {open.length === 0 && count.holds > 0 && <span class="mark holds"><Icon name="holds" /><span class="unseen">all hold</span></span>}
                  {open.map(([v, words]) => (
                    <span key={v} class={`mark ${v.replaceAll(' ', '-')}`}><Icon name={v} /> {count[v]}<span class="unseen"> {words}</span></span>
                  ))}
                </span>
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

function Sheet({ store, dark }) {
  const { day: id, report } = store.state;
  const day = days.find((d) => d.id === id);
  const next = days[days.indexOf(day) + 1];
  const ids = new Set((report?.findings ?? []).filter((f) => f.day === day.words).map((f) => f.id));
  const figures = (report?.figures ?? []).filter((f) => ids.has(f.id));
  const top = useRef(null);
  useEffect(() => {
    if (top.current && top.current.getBoundingClientRect().top < 0) top.current.scrollIntoView();
  }, [id]);
  return (
    <section class="sheet" id="sheet" aria-label={`The plan: ${day.words}`} tabIndex={-1} ref={top}>
      <div class="sheet-head">
        <h2>{day.words}</h2>
        <p>{day.about}</p>
      </div>
      {figures.map((f, i) => <Picture key={f.id + i} figure={f} dark={dark} />)}
      <DayForm store={store} day={day} key={day.id} />
      {next && (
        <p class="onwards"><button type="button" class="quiet" onClick={() => store.go(next.id)}>Next day: {next.words} <Icon name="arrow" /></button></p>
      )}
    </section>
  );
}

/** On a phone: the plan, or where it stands. */
function Switch({ store }) {
  const { view, report, checked } = store.state;
  const count = tally(report?.findings ?? []);
  return (
    <nav class="switch" aria-label="Show">
      <button type="button" aria-pressed={view === 'plan'} onClick={() => store.set({ view: 'plan' })}>The plan</button>
      <button type="button" aria-pressed={view === 'answers'} onClick={() => store.set({ view: 'answers' })}>
        Where it stands
        {['does not hold', 'thin margin'].filter((v) => count[v]).map((v) => (
          <span key={v} class={`mark ${v.replaceAll(' ', '-')}${checked ? '' : ' unchecked'}`}><Icon name={v} /> {count[v]}</span>
        ))}
      </button>
    </nav>
  );
}

/** Everything, for paper: by day, each finding with its numbers, caution and sources. */
function OnPaper({ store }) {
  const { report, root, checked, mistakes } = store.state;
  return (
    <section class="paper">
      <h1>{root.given.title?.text ?? 'A plan'}</h1>
      <p>{checked ? 'Bands hold 95 % of what the doubts allow; verdicts by chance.' : 'By central values: the doubts have not been checked.'}</p>
      {mistakes.length > 0 && <p>The plan has mistakes; these answers are those of the plan before.</p>}
      {consequences.map((c) => {
        const some = (report?.findings ?? []).filter((f) => f.consequence === c.id && (f.verdict === 'does not hold' || f.verdict === 'thin margin' || f.verdict === 'not enough known'));
        return some.length > 0 && (
          <section key={c.id}>
            <h2>{c.words}</h2>
            <ul>{some.map((f) => <li key={f.id}><b>{verdictWords(f)}</b>: {f.happens || f.question}</li>)}</ul>
          </section>
        );
      })}
      {days.map((d) => {
        const some = (report?.findings ?? []).filter((f) => f.day === d.words);
        return some.length > 0 && (
          <section key={d.id}>
            <h2>{d.words}</h2>
            {some.map((f) => (
              <article key={f.id}>
                <h3><Icon name={f.verdict} /> {f.question}{f.verdict !== 'for information' && <span> {verdictWords(f)}</span>}</h3>
                {f.happens && <p>{f.happens}</p>}
                <Numbers f={f} />
                {f.note && <p>{f.note}</p>}
                {report.figures?.filter((p) => p.id === f.id).map((p, i) => <Picture key={i} figure={p} printed />)}
                {f.caution && <p class="caution"><b>Caution.</b> {f.caution}</p>}
              </article>
            ))}
          </section>
        );
      })}
    </section>
  );
}
