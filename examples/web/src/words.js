// SPDX-License-Identifier: BSL-1.0
// Names of keys and tables as people read them.

const special = {
  ph: 'pH', ph_scale: 'pH scale', kla: 'kLa', price_per_kwh: 'Price per kWh', view: 'View through the front',
  'price': 'Price', hold: 'Hold test', vessel: 'The display', plumbing: 'Pipes and pump', water: 'The water', room: 'The room',
  life: 'The animals and their water', 'return': 'Return', 'box': 'Overflow box', floor: 'Floor below',
  planned: 'Planned hold test', now: 'The new water now', trunk: 'Shared pipe', start_up: 'Start-up',
  rock: 'Rock', sand: 'Sand', panel: 'Panel', lid: 'Lid', trial_batch: 'Trial batch', display: 'Surface of the display',
};

export function nameOf(name) {
  if (special[name]) return special[name];
  const words = name.replaceAll('_', ' ');
  return words[0].toUpperCase() + words.slice(1);
}

const superscripts = { 2: '²', 3: '³', 4: '⁴' };

/** A symbol of the unit table as it is printed: "m2" is "m²". */
export function unitInPrint(symbol) {
  return symbol
    .replace(/degC/g, '°C').replace(/degF/g, '°F').replace(/\bdeg\b/g, '°')
    .replace(/\bu(?=m\b|g\b|S\b|mol\b)/g, 'µ')
    .replace(/([a-z])([234])(?![0-9])/g, (_, letter, power) => letter + superscripts[power]);
}

/** A text of the library ("3 m2 +/- 5 %") as it is printed. */
export function inPrint(text) {
  return unitInPrint(text ?? '').replace(/\d+\.\d{10,}/g, (x) => String(Number(Number(x).toPrecision(9)))).replace(/ \+\/- /g, ' ± ').replace(/(^|[^\w])-(?=\d)/g, '$1−');
}

/** "35 mm +/- 5 mm" as {number: "35", unit: "mm", doubt: "5 mm"}; other texts as {number}. */
export function partsOf(text) {
  const [value, doubt = ''] = text.split(/\s*(?:\+\/-|±)\s*/);
  const match = /^(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?|-?\.\d+(?:e[+-]?\d+)?)\s*(.*)$/i.exec(value.trim());
  return match ? { number: match[1], unit: match[2], doubt } : { number: value.trim(), unit: '', doubt };
}

/** Where a path leads, for people: "Left return, below edge". */
export function placeInWords(path) {
  const steps = path.split('.');
  const name = nameOf(steps.pop());
  const around = steps
    .map((s) => {
      const list = /^(.*)\[(.*)\]$/.exec(s);
      if (!list) return nameOf(s);
      if (list[2] === '') return `each ${nameOf(list[1]).toLowerCase()}`;
      return /^\d+$/.test(list[2]) ? `${nameOf(list[1])} ${list[2]}` : list[2];
    })
    .slice(-1);
  return around.length ? `${around[0]}, ${name[0].toLowerCase() + name.slice(1)}`.replace(', pH', ', pH') : name;
}
