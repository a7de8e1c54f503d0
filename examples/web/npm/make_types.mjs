// SPDX-License-Identifier: BSL-1.0
// What an editor knows of the package: types of a plan and of a report from docs/*.schema.json, of each formula from
// examples/formulas/formulas.json. `node make_types.mjs FILE.d.ts` writes them behind public.d.ts; build.mjs calls `types()`.
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '../../..');
const json = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'));

const camel = (text) => text.split(/[._]/).map((w) => w.charAt(0).toUpperCase() + w.slice(1)).join('');
const short = (name) => name.slice(name.lastIndexOf('.') + 1);
const quoted = (text) => JSON.stringify(text);
const key = (name) => (/^[a-z_$][\w$]*$/i.test(name) ? name : quoted(name));
const union = (types) => [...new Set(types)].join(' | ');
const list = (type) => (/^[\w.]+$/.test(type) ? `${type}[]` : `(${type})[]`);

/** Sentences as a comment; nothing for none. */
function comment(sentences, indent) {
  const said = sentences.filter(Boolean).map((s) => s.replace(/\s+/g, ' ').replaceAll('*/', '* /').trim());
  if (said.length === 0) return '';
  if (said.length === 1) return `${indent}/** ${said[0]} */\n`;
  return `${indent}/**\n${said.map((s) => `${indent} * ${s}\n`).join(`${indent} *\n`)}${indent} */\n`;
}

// ---- plan and report ---------------------------------------------------------------------------------------------------

/** How the objects of a report are called, by their place in it; others, and those of a plan, are called by that place. */
const reportNames = {
  '': 'Report', doubts: 'Doubt', measure_first: 'Measurement', findings: 'Finding', 'findings.margin': 'DecidingMargin',
  'findings.numbers': 'FindingNumber', 'findings.places': 'FindingPlace', 'findings.places.numbers': 'FindingNumber',
  'findings.sources': 'Source', 'findings.would_hold': 'Cure', 'findings.would_hold.changes': 'Change',
  'findings.would_hold.better': 'Moved', 'findings.would_hold.worse': 'Moved', 'findings.shares': 'Shares',
  'findings.shares.doubts': 'Share', 'findings.verdict': 'Verdict', 'findings.consequence': 'Consequence',
  laws: 'Law', 'findings.why_none': 'NearestToHolding', 'findings.why_none.changes': 'Change',
  figures: 'Figure', 'figures.x_axis': 'Axis', 'figures.y_axis': 'Axis', 'figures.curves': 'Curve',
  'figures.rectangles': 'Rectangle', 'figures.marks': 'Mark',
};

class Schema {
  constructor(nameOf) {
    this.nameOf = nameOf;
    this.made = new Map();
  }
  type(schema, path) {
    if (schema.enum) {
      const words = union(schema.enum.map(quoted));
      const name = this.nameOf(path, schema);
      if (!name) return words;
      this.keep(name, `export type ${name} = ${words};\n`);
      return name;
    }
    if (schema.type === 'array') return list(this.type(schema.items, path));
    if (schema.type === 'object') return this.object(schema, path);
    const plain = { string: 'string', number: 'number', integer: 'number', boolean: 'boolean', null: 'null' };
    const types = [schema.type].flat().map((t) => plain[t]);
    if (types.length === 0 || types.includes(undefined)) throw new Error(`${path}: no type for ${JSON.stringify(schema)}`);
    return union(types);
  }
  object(schema, path) {
    const name = this.nameOf(path, schema);
    if (!name) throw new Error(`${path}: an object without a name`);
    const rows = Object.entries(schema.properties).map(([n, of]) => {
      const optional = schema.required.includes(n) ? '' : '?';
      return `${comment([of.description], '  ')}  ${key(n)}${optional}: ${this.type(of, path ? `${path}.${n}` : n)};\n`;
    });
    this.keep(name, `${comment([schema.description], '')}export interface ${name} {\n${rows.join('')}}\n`);
    return name;
  }
  keep(name, text) {
    const bare = (t) => t.replace(/^\/\*\*.*\*\/\n/, '');
    const before = this.made.get(name);
    if (before && bare(before) !== bare(text)) throw new Error(`two types are called ${name}`);
    this.made.set(name, before ?? text);
  }
  text() {
    return [...this.made.values()].join('\n');
  }
}

/** Paths of keys and of tables; an element of a list goes by its label or its number. */
function paths(schema, path, keys, tables) {
  for (const [name, of] of Object.entries(schema.properties)) {
    const here_ = path ? `${path}.${name}` : name;
    if (of.type === 'object') {
      tables.push(here_);
      paths(of, here_, keys, tables);
    } else if (of.type === 'array' && of.items.type === 'object') {
      tables.push(here_, `${here_}[\${string}]`);
      paths(of.items, `${here_}[\${string}]`, keys, tables);
    } else {
      keys.push(here_);
    }
  }
}

function planAndReport() {
  const plan = new Schema((path, schema) => (schema.enum ? '' : path ? `Plan${camel(path)}` : 'PlanData'));
  const schema = json('docs/plan.schema.json');
  plan.type(schema, '');
  const report = new Schema((path, of) => reportNames[path] ?? (of.enum ? '' : `Report${camel(path)}`));
  report.type(json('docs/report.schema.json'), '');
  const keys = [];
  const tables = [];
  paths(schema, '', keys, tables);
  const all = (name, said, of) => `/** ${said} */\nexport type ${name} =\n${of.map((p) => `  | \`${p}\``).join('\n')};\n`;
  return [
    plan.text(), report.text(),
    all('KeyPath', 'Path of a key. An element of a list goes by its label or its number from 1.', keys),
    all('TablePath', 'Path of a table, of a list of tables, or of an element of one.', tables),
  ].join('\n');
}

// ---- formulas ----------------------------------------------------------------------------------------------------------

const plain = { integer: 'number', flag: 'boolean', text: 'string', caution: 'string' };

class Formulas {
  constructor(listed) {
    this.listed = listed;
    this.names = new Map();
    const shorts = Object.keys(listed.types).map(short);
    for (const label of Object.keys(listed.types)) {
      this.names.set(label, camel(shorts.filter((s) => s === short(label)).length > 1 ? label : short(label)));
    }
    /** Names a formula goes by: its own, and the one it shares with others that its fields tell apart. */
    this.byName = new Map();
    const add = (name, row) => {
      const rows = this.byName.get(name) ?? [];
      if (!rows.includes(row)) this.byName.set(name, [...rows, row]);
    };
    for (const row of listed.formulas) add(row.name, row);
    for (const row of listed.formulas) {
      const common = row.function.replace('tankwright::', '').replaceAll('::', '.');
      if (common !== row.name) {
        if (!listed.formulas.some((other) => other.name === common && other.function !== row.function)) add(common, row);
      }
    }
    this.makers = new Map();
    for (const [name, rows] of this.byName) {
      for (const { result } of rows) {
        if (result.kind !== 'fields' && result.kind !== 'value') continue;
        const known = this.makers.get(result.type) ?? new Map();
        known.set(name, name);
        const brief = short(name);
        const sharing = [...this.byName.keys()].filter((n) => short(n) === brief);
        if (sharing.length === 1) known.set(brief, name);
        this.makers.set(result.type, known);
      }
    }
  }
  oneNumber(label) {
    const shows = this.listed.types[label].shows ?? [];
    return shows.length === 1 && shows[0].kind === 'quantity';
  }
  given(of) {
    switch (of.kind) {
      case 'quantity': return 'Amount';
      case 'word': return `words.${this.names.get(of.type)}`;
      case 'list': return `readonly ${list(this.given(of.of))}`;
      case 'optional': return union([this.given(of.of), 'null']);
      case 'estimate': return union([this.given(of.of), 'Band']);
      case 'one_of': return `OneOf<{ ${of.options.map((o) => `${key(short(o.type))}: ${this.given(o)}`).join('; ')} }>`;
      case 'fields': case 'value': return `given.${this.names.get(of.type)}`;
      default: return plain[of.kind];
    }
  }
  returned(of) {
    switch (of.kind) {
      case 'quantity': return `Quantity<${quoted(of.quantity)}>`;
      case 'word': return `words.${this.names.get(of.type)}`;
      case 'list': return list(this.returned(of.of));
      case 'optional': return union([this.returned(of.of), 'null']);
      case 'estimate':
        if (of.of.kind === 'quantity') return `Estimate<${quoted(of.of.quantity)}>`;
        if (of.of.kind === 'value' && this.oneNumber(of.of.type)) return `Estimate<${quoted(short(of.of.type))}>`;
        return `Between<${this.returned(of.of)}>`;
      case 'one_of': return `OneOf<{ ${of.options.map((o) => `${key(short(o.type))}: ${this.returned(o)}`).join('; ')} }>`;
      case 'value': if (this.oneNumber(of.type)) return `Quantity<${quoted(short(of.type))}>`;
      // fall through
      case 'fields': return `returned.${this.names.get(of.type)}`;
      default: return plain[of.kind];
    }
  }
  static said(field) {
    const unit = field.unit ? `[${field.unit}]` : '';
    const sentence = (field.sentence ?? '').replace(/^\[1\]\s*/, '');
    return `${sentence.startsWith('[') ? '' : unit} ${sentence}`.trim();
  }
  fields(rows, indent) {
    return rows.map((f) => {
      const type = this.given(f);
      const row = f.required ? `${key(f.name)}: ${type}` : `${key(f.name)}?: ${union([type, 'null'])}`;
      return `${comment([Formulas.said(f)], indent)}${indent}${row};\n`;
    }).join('');
  }
  /** What an argument of a type may be: its fields or its ways, a constant, or the formula that makes it. */
  givenType(label, known) {
    const name = this.names.get(label);
    const ways = [];
    let fields = '';
    if (known.kind === 'fields') {
      fields = `  interface ${name}Fields {\n${this.fields(known.fields, '    ')}  }\n`;
      ways.push(`${name}Fields`);
    } else if (known.as) {
      ways.push(this.given(known.as));
    } else if (known.parts) {
      ways.push(`{ ${known.parts.map((p) => `${key(p.name)}: ${this.given(p)}`).join('; ')} }`);
    } else if (known.ways.length > 0) {
      ways.push(`OneOf<{ ${known.ways.map((w) => `${key(w.name)}: ${this.given(w)}`).join('; ')} }>`);
      const numbers = known.ways.filter((w) => w.kind === 'quantity');
      const lists = known.ways.filter((w) => w.kind === 'list');
      if (lists.length === 1 && numbers.length === 1) ways.push(this.given(numbers[0]), this.given(lists[0]));
    }
    const makers = this.makers.get(label);
    if (makers) {
      ways.push(`OneOf<{ ${[...makers].map(([n, full]) => `${key(n)}: Formulas[${quoted(full)}]['fields']`).join('; ')} }>`);
    }
    if (known.constants && !known.as) ways.push(...known.constants.map(quoted));
    return `${fields}${comment([known.sentence], '  ')}  type ${name} = ${union(ways)};\n`;
  }
  returnedType(label, known) {
    const rows = (known.fields ?? known.shows).map((p) =>
      `${comment([Formulas.said(p)], '    ')}    ${key(p.name)}: ${this.returned(p)};\n`);
    return `${comment([known.sentence], '  ')}  interface ${this.names.get(label)} {\n${rows.join('')}  }\n`;
  }
  formula(name, rows) {
    const [first] = rows;
    const told = [first.sentence, first.formula && `Formula: ${first.formula}`, first.accuracy && `Accuracy: ${first.accuracy}`,
      `Source: ${first.source}`, ...(first.cautions ?? []).map((c) => `Caution: ${c}`)];
    const fields = rows.map((row) => {
      const more = row.extrapolates ? '      /** Goes past the published ranges. */\n      extrapolate?: boolean;\n' : '';
      return `{\n${this.fields(row.fields, '      ')}${more}    }`;
    });
    return `${comment(told, '  ')}  ${quoted(name)}: {\n    fields: ${union(fields)};\n` +
      `    result: ${union(rows.map((r) => this.returned(r.result)))};\n  };\n`;
  }
  text() {
    const types = Object.entries(this.listed.types);
    const space = (name, said, body) => `/** ${said} */\nexport namespace ${name} {\n${body}}\n`;
    const words = types.filter(([, t]) => t.kind === 'word').map(([label, t]) =>
      `${comment([t.sentence, ...t.words.filter((w) => w.sentence).map((w) => `${w.word}: ${w.sentence}`)], '  ')}` +
      `  type ${this.names.get(label)} = ${union(t.words.map((w) => quoted(w.word)))};\n`);
    return [
      space('words', 'What is chosen from a list.', words.join('')),
      space('given', 'What formulas are given.', types.filter(([, t]) => t.given).map(([l, t]) => this.givenType(l, t)).join('')),
      space('returned', 'What formulas give.', types.filter(([, t]) => t.returned).map(([l, t]) => this.returnedType(l, t)).join('')),
      `/** Every formula by its name: what it is given and what it gives. */\nexport interface Formulas {\n` +
        `${[...this.byName].map(([name, rows]) => this.formula(name, rows)).join('')}}\n`,
    ].join('\n');
  }
}

/** The text of tankwright.d.ts. */
export function types() {
  return [readFileSync(join(here, 'public.d.ts'), 'utf8'), planAndReport(),
    new Formulas(json('examples/formulas/formulas.json')).text()].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.length !== 3) {
    console.error('usage: node make_types.mjs FILE.d.ts');
    process.exit(2);
  }
  writeFileSync(process.argv[2], types());
}
