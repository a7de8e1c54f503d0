// SPDX-License-Identifier: BSL-1.0
// The keys as a tree of tables, and what a plan holds laid over it. Paths within the page name the elements of lists by
// their number, so that renaming one leaves its path alone.

/** "plumbing.return[left].below_edge" as [{name, selector}]. */
export function stepsOf(path) {
  const steps = [];
  let rest = path;
  while (rest) {
    const stop = rest.search(/[.[]/);
    const name = stop < 0 ? rest : rest.slice(0, stop);
    rest = stop < 0 ? '' : rest.slice(stop);
    let selector = null;
    if (rest.startsWith('[')) {
      const close = rest.indexOf(']');
      selector = rest.slice(1, close);
      rest = rest.slice(close + 1);
    }
    if (rest.startsWith('.')) rest = rest.slice(1);
    steps.push({ name, selector });
  }
  return steps;
}

/** Tables by their path: each with its keys, the tables in it and the rules among its keys. */
export function tablesOf({ keys, rules }) {
  const tables = new Map([['', { path: '', name: '', kind: 'table', keys: [], tables: [], rules: [] }]]);
  for (const key of keys) {
    const parent = tables.get(key.table);
    if (key.kind === 'table' || key.kind === 'tables') {
      const own = { path: key.path, name: key.name, kind: key.kind, key, keys: [], tables: [], rules: [] };
      tables.set(key.path, own);
      parent.tables.push(own);
    } else {
      parent.keys.push(key);
    }
  }
  for (const rule of rules) tables.get(rule.table)?.rules.push(rule);
  return tables;
}

const emptyNode = (path, selector) => ({ path, selector, given: {}, tables: {}, lists: {} });

/** What a plan holds, from the values of the library. */
export function treeOf(values, tables) {
  const root = emptyNode('', null);
  for (const { path, text, si } of values) {
    let node = root;
    let spec = '';
    const steps = stepsOf(path);
    steps.forEach(({ name, selector }, i) => {
      const inTable = spec ? `${spec}.${name}` : name;
      const last = i === steps.length - 1;
      if (tables.has(inTable)) {
        spec = inTable;
        node = node.tables[name] ||= emptyNode(node.path ? `${node.path}.${name}` : name, null);
      } else if (tables.has(`${inTable}[]`)) {
        spec = `${inTable}[]`;
        const list = (node.lists[name] ||= []);
        if (selector === null) return; // the list itself
        let element = list.find((e) => e.selector === selector);
        if (!element) {
          const at = node.path ? `${node.path}.${name}` : name;
          element = emptyNode(`${at}[${list.length + 1}]`, selector);
          list.push(element);
        }
        node = element;
      } else if (last) {
        node.given[name] = { text, si };
      }
    });
  }
  return root;
}

/** The path that the page uses for one that the library names. */
export function ownPath(path, root) {
  let node = root;
  let own = '';
  for (const { name, selector } of stepsOf(path)) {
    own += (own ? '.' : '') + name;
    const list = node?.lists[name];
    if (selector !== null) {
      const at = list ? list.findIndex((e) => e.selector === selector) : -1;
      const number = at >= 0 ? at + 1 : Number(selector) || 1;
      own += `[${number}]`;
      node = list?.[number - 1];
    } else {
      node = node?.tables[name];
    }
  }
  return own;
}

/** The key of a path, as `tables` has it. */
export function keyOf(path, tables) {
  const plain = path.replace(/\[[^\]]*\]/g, '[]');
  const cut = plain.lastIndexOf('.');
  const table = tables.get(cut < 0 ? '' : plain.slice(0, cut));
  const name = cut < 0 ? plain : plain.slice(cut + 1);
  return table?.keys.find((k) => k.name === name) ?? tables.get(plain)?.key;
}

export function nodeAt(path, root) {
  let node = root;
  for (const { name, selector } of stepsOf(path)) {
    node = selector === null ? node?.tables[name] : node?.lists[name]?.[Number(selector) - 1];
  }
  return node;
}

/** What was given for a key, or undefined. */
export function givenAt(path, root) {
  const cut = path.lastIndexOf('.');
  return nodeAt(cut < 0 ? '' : path.slice(0, cut), root)?.given[cut < 0 ? path : path.slice(cut + 1)];
}
