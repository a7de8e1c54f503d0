// SPDX-License-Identifier: BSL-1.0
// The days of the job, and which tables of a plan are filled on each. A table goes with the longest prefix here, so a new
// one has a place at once.

export const days = [
  { id: 'first-fill', words: 'First fill', about: 'The tank holds water for the first time: what it is made of, and whether the level stays.',
    tables: ['vessel', 'hold'] },
  { id: 'plumbing', words: 'Plumbing', about: 'Pump, pipes, overflow and drains: what flows, and how high the water stands.',
    tables: ['plumbing'] },
  { id: 'power-cut', words: 'Power-cut test', about: 'The pump stops. What runs down must find room in the sump, and the pump must start wet.',
    tables: ['plumbing.sump', 'plumbing.box', 'plumbing.pump_inlet'] },
  { id: 'bottom', words: 'Filling the bottom', about: 'Sand, rock and what stands among it: weights, and the water that is left.',
    tables: ['vessel.sand[]', 'vessel.rock[]', 'vessel.equipment[]', 'vessel.floor', 'vessel.view'] },
  { id: 'salting', words: 'Salting', about: 'How much salt, and whether the new water matches the old.', tables: ['water'] },
  { id: 'closing', words: 'Closing the top', about: 'Lids, braces, heat, damp: what the tank does to the room, and the room to the tank.',
    tables: ['vessel.brace[]', 'vessel.brace', 'vessel.lid[]', 'room'] },
  { id: 'moving-in', words: 'Moving in', about: 'Is the filter ready for these animals, and how long do they live if something fails?',
    tables: ['life'] },
  { id: 'running', words: 'Running', about: 'What drifts while nobody looks: top-off, power used, its price.',
    tables: ['room.top_off', 'room.appliance[]'] },
];

/** The day on which a table is filled. */
export function dayOf(table) {
  let best = null;
  let longest = -1;
  for (const day of days) {
    for (const prefix of day.tables) {
      const within = table === prefix || table.startsWith(`${prefix}.`) || table.startsWith(`${prefix}[`);
      if (within && prefix.length > longest) {
        best = day;
        longest = prefix.length;
      }
    }
  }
  return best;
}

/** The tables that a day begins with: those whose parent is filled on another day, or that stand at the top. */
export function rootsOf(day, tables) {
  const roots = [];
  for (const table of tables.values()) {
    if (table.path === '' || dayOf(table.path) !== day) continue;
    const parent = table.key.table;
    if (parent === '' || dayOf(parent) !== day) roots.push(table);
  }
  return roots;
}

/** The order of what can go wrong, and how the page calls it. */
export const consequences = [
  { id: 'injury', words: 'Injury' },
  { id: 'water on the floor', words: 'Water on the floor' },
  { id: 'animals', words: 'Animals' },
  { id: 'equipment', words: 'Equipment' },
  { id: 'comfort', words: 'Comfort' },
  { id: 'money', words: 'Money' },
];

const ranks = { 'does not hold': 0, 'not enough known': 1, 'thin margin': 2, holds: 3, 'for information': 4 };
export const rankOf = (verdict) => ranks[verdict] ?? 4;

const mild = {
  holds: 'as recommended', 'thin margin': 'close to what is recommended', 'does not hold': 'past what is recommended',
};
/** A verdict in words; of a recommendation in milder ones. */
export const verdictWords = (f) => (f.recommendation && mild[f.verdict]) || f.verdict;
