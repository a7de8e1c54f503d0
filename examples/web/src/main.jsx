// SPDX-License-Identifier: BSL-1.0
import { render } from 'preact';
import { App } from './app.jsx';
import { Store } from './store.js';

const place = document.getElementById('page');
const system = matchMedia('(prefers-color-scheme: dark)');
let printing = false;
let asked = false;
let usable = null;
const times = { usable: null, ready: null }; // ms from opening to a form that takes what is typed, and to its first answers

const draw = () => {
  asked = false;
  const { theme } = store.state;
  const dark = !printing && (theme === 'dark' || (theme === 'system' && system.matches));
  document.documentElement.dataset.theme = dark ? 'dark' : 'light';
  document.title = `${store.state.root?.given.title?.text ?? 'A plan'} · tankwright`;
  render(<App store={store} dark={dark} printing={printing} />, place);
  if (store.state.root) usable ??= requestAnimationFrame(() => setTimeout(() => times.usable = performance.now())); // it has been painted
  if (store.state.phase === 'ready') times.ready ??= performance.now();
};
const store = new Store(() => {
  if (asked) return;
  asked = true;
  queueMicrotask(draw);
});

addEventListener('beforeprint', () => {
  printing = true;
  draw();
});
addEventListener('afterprint', () => {
  printing = false;
  draw();
});
system.addEventListener('change', () => store.redraw());

addEventListener('keydown', (e) => {
  if (!store.state.root || store.state.phase === 'stopped' || !(e.ctrlKey || e.metaKey) || e.altKey) return;
  const key = e.key.toLowerCase();
  if (key === 's') {
    e.preventDefault();
    document.activeElement?.blur?.();
    store.saveFile();
  }
  const box = e.target;
  const typing = box.matches?.('input[type=text], input.title') && box.dataset.typing === 'yes';
  if ((key === 'z' || key === 'y') && !typing) {
    e.preventDefault();
    if (key === 'y' || e.shiftKey) store.redo();
    else store.undo();
  }
});

// A plan may be dropped anywhere on the page.
addEventListener('dragover', (e) => e.preventDefault());
addEventListener('drop', (e) => {
  e.preventDefault();
  const file = e.dataTransfer?.files[0];
  if (file && store.state.root && store.state.phase !== 'stopped') store.openFile(file);
});

globalThis.tankwright = { store, times }; // for the tests, and for whoever is curious
store.start(JSON.parse(document.getElementById('first').textContent));
draw();
