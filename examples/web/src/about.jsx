// SPDX-License-Identifier: BSL-1.0
// What this page is, what it keeps, and whose work is in it.
import { useEffect, useRef } from 'preact/hooks';

/* global PAGE_LICENCES */

export function About({ store, close }) {
  const dialog = useRef(null);
  useEffect(() => {
    dialog.current.showModal();
  }, []);
  return (
    <dialog class="about" ref={dialog} onClose={close} aria-labelledby="about-head">
      <h2 id="about-head">About this page</h2>
      <p>
        tankwright {store.state.version} is a calculator for people who build a large saltwater display by hand. This page is the whole of it in one
        file: keep it, copy it, open it where there is no network.
      </p>
      <p>
        <b>Nothing is sent anywhere.</b> Your plan is kept in this browser's own storage, so that it is there when you come back; whoever uses this
        browser account can see it. Save it as a file to have it for good: the program <code>commission</code> reads the same file.
      </p>
      <p>
        Every number has its source and its band. Results for panels, braces, lids and floors are a screening, not a design: have a licensed engineer
        check any site-built tank, a licensed electrician install what stands near water, and an aquatic veterinarian judge what concerns animals.
      </p>
      <h3>Keys</h3>
      <p><kbd>Ctrl</kbd> <kbd>Z</kbd> takes a step back, <kbd>Ctrl</kbd> <kbd>Shift</kbd> <kbd>Z</kbd> does it again, <kbd>Ctrl</kbd> <kbd>S</kbd> saves the plan, <kbd>Esc</kbd> gives a box back what it held.</p>
      <h3>Licences</h3>
      <p>tankwright is under the Boost Software License 1.0. In this page are also:</p>
      {PAGE_LICENCES.map((l) => (
        <details key={l.name}>
          <summary>{l.name} {l.version}, {l.licence}: {l.for}</summary>
          <pre tabIndex={0}>{l.text}</pre>
        </details>
      ))}
      <p><button type="button" class="main" onClick={() => dialog.current.close()}>Close</button></p>
    </dialog>
  );
}
