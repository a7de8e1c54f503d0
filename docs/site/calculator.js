// SPDX-License-Identifier: BSL-1.0
// The calculators of the theory pages: a button for each page; what it needs is loaded when it is pressed, by a script, which
// works from disk too.
(() => {
  const here = document.currentScript.src;
  const whole = () => new Promise((loaded, failed) => {
    if (globalThis.tankwrightCalculators) return loaded();
    const script = document.createElement('script');
    script.src = new URL('calculators.js', here);
    script.onload = loaded;
    script.onerror = () => failed(new Error('calculators.js is missing beside this site'));
    return document.head.append(script);
  });
  const dark = () => (document.body.dataset.mdColorScheme === 'slate' ? 'dark' : 'light');
  for (const box of document.querySelectorAll('.calculators')) {
    const button = box.querySelector('button');
    button.hidden = false;
    button.addEventListener('click', async () => {
      button.disabled = true;
      button.textContent = 'Unpacking…';
      const place = document.createElement('div');
      try {
        await whole();
        box.append(place);
        tankwrightCalculators.mount(place, box.dataset.formulas.split(' '), dark());
        button.remove();
        new MutationObserver(() => { place.dataset.theme = dark(); }).observe(document.body, { attributeFilter: ['data-md-color-scheme'] });
      } catch (e) {
        button.textContent = e.message;
      }
    });
  }
})();
