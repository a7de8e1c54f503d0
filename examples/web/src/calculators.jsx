// SPDX-License-Identifier: BSL-1.0
// The formulas inside another page: the handbook's. `tankwrightCalculators.mount(place, names)` puts them there, one at a
// time, walled off from that page's styles. What the module is packed in comes with this file.
import { render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Engine, lackOf } from './engine.js';
import { Calculator } from './formulas.jsx';
import { nameOf } from './words.js';

/* global PAGE_STYLE */

const engine = new Engine();
let list = null; // begun once, by the first calculator of the page
const answers = []; // what was answered, for the tests and for whoever is curious

const start = () => (list ??= lackOf() ? Promise.reject(new Error(lackOf())) : engine.startFormulas());

const short = (name) => nameOf(name.slice(name.lastIndexOf('.') + 1));

function Calculators({ names }) {
  const [state, set] = useState({});
  const [name, choose] = useState(names[0]);
  const [us, setUs] = useState(false);
  useEffect(() => {
    start().then((known) => set({ known }), (e) => set({ failed: e.message }));
  }, []);
  if (state.failed) return <p role="alert">The formulas did not start: {state.failed}</p>;
  if (!state.known) return <p role="status">Unpacking the formulas…</p>;
  const store = {
    state: { us },
    async callFormula(formula, fields) {
      const answer = await engine.askFormula({ name: formula, fields, us });
      answers.push({ formula, fields, answer });
      return answer;
    },
  };
  const formula = state.known.formulas.find((f) => f.name === name);
  return (
    <>
      <div class="choose">
        {names.length > 1 && (
          <select class="which" aria-label="Formula" value={name} onChange={(e) => choose(e.currentTarget.value)}>
            {names.map((n) => <option key={n} value={n}>{short(n)}</option>)}
          </select>
        )}
        <div class="pair" role="group" aria-label="Units of the answer">
          <button type="button" aria-pressed={!us} onClick={() => setUs(false)}>SI</button>
          <button type="button" aria-pressed={us} onClick={() => setUs(true)}>US</button>
        </div>
      </div>
      <Calculator key={name} store={store} formula={formula} list={state.known} />
    </>
  );
}

/** Put the formulas of these names into an element, in the colours 'light' or 'dark'. */
function mount(place, names, colours) {
  const room = place.attachShadow({ mode: 'open' });
  const style = document.createElement('style');
  style.textContent = PAGE_STYLE;
  const inside = document.createElement('div');
  room.append(style, inside);
  place.dataset.theme = colours;
  // The surrounding page takes what is typed in here for its shortcuts: a decimal point would turn the page.
  for (const kind of ['keydown', 'keypress', 'keyup']) place.addEventListener(kind, (e) => e.stopPropagation());
  render(<Calculators names={names} />, inside);
}

globalThis.tankwrightCalculators = { mount, answers };
