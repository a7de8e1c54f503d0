// SPDX-License-Identifier: BSL-1.0
// Random circuits with the flows that EPANET finds in them. Usage: plumbing_circuit.mjs OUTPUT_DIRECTORY
//
// EPANET comes from npm (epanet-js, pinned); it is installed into the output directory when it is not there.
import { execFileSync } from 'node:child_process';
import { existsSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';

const VERSION = '0.9.0';
const SEED = 20260802;
const CIRCUITS = 250;
const LOOPED = 150;  // of them further on: loops, pipes side by side, check valves, pumps in series, outlets fed twice

const directory = resolve(process.argv[2]);
const require = createRequire(join(directory, 'require.js'));
if (!existsSync(join(directory, 'node_modules', 'epanet-js'))) {
  const wanted = ['install', '--no-save', '--no-audit', '--no-fund', '--prefix', directory, `epanet-js@${VERSION}`];
  execFileSync('npm', wanted, { stdio: ['ignore', 'ignore', 'inherit'] });
}
const { Project, Workspace } = require('epanet-js');

let state = SEED;
function random() {  // xorshift32: the same numbers everywhere
  state ^= state << 13;
  state ^= state >>> 17;
  state ^= state << 5;
  return (state >>> 0) / 4294967296;
}
const between = (low, high, digits) => Number((low + random() * (high - low)).toFixed(digits));
const below = (n) => Math.floor(random() * n);

// A display's plumbing: short runs, several fittings, pumps of 3 to 20 m^3/h and 3 to 9 m, each behind a check valve.
function randomCircuit(looped) {
  const junctions = 1 + below(6);
  const pumps = [], runs = [], outlets = [];
  const ends = new Array(junctions).fill(0);
  const run = (from, to) => {
    const label = `R${runs.length}`;
    const check = looped && random() < 0.2 ? 1 : 0;
    runs.push({ label, from, to, length: between(0.2, 3, 2), bore: between(20, 62, 1), k: between(2, 12, 2), check });
  };
  for (let j = 1; j < junctions; ++j) {
    const from = below(j);
    run(`J${from}`, `J${j}`);
    ++ends[from];
    ++ends[j];
  }
  for (let p = 0; p < 1 + below(3); ++p) {
    const to = p === 0 ? 0 : below(junctions);
    const q2 = between(6, 20, 2), h0 = between(3, 9, 2);
    const part = (whole, low, high) => Number((whole * between(low, high, 3)).toFixed(3));
    const q1 = part(q2, 0.45, 0.65), h1 = part(h0, 0.75, 0.9), h2 = part(h0, 0.02, 0.3);
    const speed = random() < 0.7 ? 1 : between(0.6, 1.15, 2);
    const booster = looped && p > 0 && junctions > 1 && random() < 0.4;
    const from = booster ? `J${(to + 1 + below(junctions - 1)) % junctions}` : 'SUMP';
    pumps.push({ label: `P${p}`, from, to: `J${to}`, h0, q1, h1, q2, h2, speed });
    ++ends[to];
  }
  for (let j = 0; j < junctions; ++j) {
    if (ends[j] > 1 && random() < 0.6 && outlets.length > 0) continue;
    const label = `T${outlets.length}`;
    outlets.push({ label, level: between(0.3, 2.8, 2), open: random() < 0.5 });
    run(`J${j}`, label);
  }
  for (let extra = looped ? 1 + below(4) : 0; extra > 0; --extra) {
    const from = below(junctions), to = below(junctions + outlets.length);
    if (to >= junctions) run(`J${from}`, outlets[to - junctions].label);  // a second run into an outlet
    else if (to !== from) run(`J${from}`, `J${to}`);
  }
  return { junctions, pumps, runs, outlets };
}

function inputFile(c) {
  const lines = ['[TITLE]', 'random', '[JUNCTIONS]'];
  for (let j = 0; j < c.junctions; ++j) lines.push(`J${j} 0 0`);
  lines.push('[RESERVOIRS]', 'SUMP 0', ...c.outlets.map((o) => `${o.label} ${o.level}`), '[PIPES]');
  for (const r of c.runs) {
    const open = c.outlets.some((o) => o.label === r.to && o.open);
    lines.push(`${r.label} ${r.from} ${r.to} ${r.length} ${r.bore} 0.0015 ${r.k} ${open || r.check ? 'CV' : 'OPEN'}`);
  }
  lines.push('[PUMPS]', ...c.pumps.map((p) => `${p.label} ${p.from} ${p.to} HEAD C${p.label} SPEED ${p.speed}`), '[CURVES]');
  for (const p of c.pumps) {
    lines.push(...[[0, p.h0], [p.q1, p.h1], [p.q2, p.h2]].map(([q, h]) => `C${p.label} ${q} ${h}`));
  }
  lines.push('[OPTIONS]', 'UNITS CMH', 'HEADLOSS D-W', 'ACCURACY 0.000001', 'TRIALS 500', 'VISCOSITY 1.0',
             '[TIMES]', 'DURATION 0', '[REPORT]', 'STATUS NO', '[END]');
  return lines.join('\n') + '\n';
}

// The circuit in one word, as the test reads it.
function word(c) {
  return [...c.pumps.map((p) => `P ${p.label} ${p.from} ${p.to} ${p.h0} ${p.q1} ${p.h1} ${p.q2} ${p.h2} ${p.speed}`),
          ...c.runs.map((r) => `R ${r.label} ${r.from} ${r.to} ${r.length} ${r.bore} ${r.k} ${r.check}`),
          ...c.outlets.map((o) => `O ${o.label} ${o.level} ${o.open ? 'open' : 'submerged'}`)].join('|');
}

const EN_FLOW = 8, EN_RELATIVE_ERROR = 1;
console.warn = () => {};  // a pump that lifts nothing is part of the test
const workspace = new Workspace();
await workspace.loadModule();
const rows = [];
let made = 0, tried = 0, left = 0;
while (made < CIRCUITS + LOOPED) {
  ++tried;
  const looped = made >= CIRCUITS;
  const circuit = randomCircuit(looped);
  const model = new Project(workspace);
  workspace.writeFile('net.inp', inputFile(circuit));
  model.open('net.inp', 'report.rpt', 'out.bin');
  model.solveH();
  const flow = (label) => model.getLinkValue(model.getLinkIndex(label), EN_FLOW);
  const flows = new Map([...circuit.pumps, ...circuit.runs].map((x) => [x.label, flow(x.label)]));
  const error = model.getStatistic(EN_RELATIVE_ERROR);
  model.close();
  // Past its last point a pump has no curve here, where EPANET goes on: such circuits have no common answer.
  const past = circuit.pumps.some((p) => flows.get(p.label) > 0.999 * p.q2 * p.speed);
  const total = circuit.pumps.reduce((sum, p) => sum + flows.get(p.label), 0);
  if (past || total < 0.5 || !(error < 1e-5)) {
    ++left;
    continue;
  }
  ++made;
  // With EPANET's law and constants the flows must be its own; with ours they differ by what the laws do. Where water
  // runs back, small differences of large flows remain, and only the first comparison is sharp.
  // The same where a loop turns the water round in a run.
  const backwards = circuit.runs.some((r) => flows.get(r.label) < 0 && (looped || r.to.startsWith('T')));
  for (const [label, value] of flows) {
    const both = [['epanet', 3e-5], ['colebrook', looped ? 2e-3 : 1e-3]];
    for (const [law, share] of backwards ? both.slice(0, 1) : both) {
      const source = `"EPANET 2.3 through epanet-js, random circuits, ${law === 'epanet' ? 'its own' : 'our'} law"`;
      rows.push([`${made}-${label}-${law}`, 'tankwright::plumbing::operating_point',
                 `circuit=${made}; law=${law}; link=${label}; net=${word(circuit)}`, value, 'm3/h', share * total,
                 source, 'library', ''].join(','));
    }
  }
}
const path = join(directory, 'plumbing_circuit.csv');
writeFileSync(path + '.part', 'id,function,inputs,value,unit,tolerance,source,kind,note\n' + rows.join('\n') + '\n');
renameSync(path + '.part', path);
console.log(`seed ${SEED}, epanet-js ${VERSION}: ${made} circuits, ${rows.length} rows; ${left} of ${tried} left out`);
