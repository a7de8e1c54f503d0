// SPDX-License-Identifier: BSL-1.0
// Types of tankwright. Behind what is written by hand, make_types.mjs puts those of plans, reports and formulas.

// ---- numbers -----------------------------------------------------------------------------------------------------------

/** A number of an answer, in SI. */
export interface Quantity<Name extends string = string> {
  /** null where it is not finite. */
  value: number | null;
  /** SI unit; empty for a pure number. */
  unit: string;
  quantity: Name;
  not_finite?: 'nan' | 'inf' | '-inf';
}

/** A number with its band, in SI. */
export interface Estimate<Name extends string = string> {
  low: number | null;
  central: number | null;
  high: number | null;
  unit: string;
  quantity: Name;
  /** Why the band is as wide as it is. */
  reason: string;
}

/** A result with its band, where it is more than a number. */
export interface Between<T> {
  low: T;
  central: T;
  high: T;
  reason: string;
}

/** A number in a unit: `{ value: 24, unit: 'degC' }`. */
export interface AmountInUnit {
  value: number | string;
  unit?: string;
  quantity?: string;
}

/** A number in SI, a text with its unit (`'2150 L'`), a number in a unit, the name of a constant, or a number of an answer. */
export type Amount = number | string | AmountInUnit | Quantity | Estimate;

/** From where to where a number may lie. */
export interface Band {
  low: Amount;
  central: Amount;
  high: Amount;
  unit?: string;
  quantity?: string;
  reason?: string;
}

/** Exactly one of these. */
export type OneOf<T> = { [K in keyof T]: { [P in K]: T[P] } & { [P in Exclude<keyof T, K>]?: never } }[keyof T];

// ---- errors ------------------------------------------------------------------------------------------------------------

/** One thing that is wrong with a plan. */
export interface Mistake {
  path: string;
  /** Reads on from the path. */
  reason: string;
  /** Of the text it was read from, from 1. */
  line?: number;
  pointer?: string;
  /** Path of the key that it cannot be true with. */
  clashes?: string;
}

/** Everything that is known about what went wrong. */
export interface ErrorData {
  code: number;
  name:
    | 'bad_handle' | 'bad_argument' | 'bad_document' | 'bad_plan' | 'bad_key' | 'bad_value' | 'invalid_input'
    | 'out_of_range' | 'no_convergence' | 'cancelled' | 'no_memory' | 'internal';
  message: string;
  path?: string;
  function?: string;
  argument?: string;
  value?: number | string;
  low?: number | string;
  high?: number | string;
  unit?: string;
  source?: string;
  text?: string;
  position?: number;
  reason?: string;
  expected?: string;
  field?: string;
  nearest?: string;
  line?: number;
  mistakes?: Mistake[];
}

/** What the library refused. */
export class LibraryError extends Error {
  readonly data: ErrorData;
}

// ---- plans -------------------------------------------------------------------------------------------------------------

export type Notation = 'toml' | 'json';
export type Units = 'si' | 'us';

export interface AssessOptions {
  /** Id of one decision, 'sump.power_cut'; without it all. */
  finding?: string;
  /** Everything doubtful varies, and verdicts go by their chance: takes seconds. In a page, do it in a worker. */
  bands?: boolean;
  /** Bands, what would hold, and what to measure first: takes longer still. */
  cures?: boolean;
  /** Pictures as data. */
  figures?: boolean;
  /**
   * Told now and then how far the whole report is; not asked for one finding. What is true stops it: a LibraryError
   * called 'cancelled'.
   */
  progress?: (done: number, of: number) => unknown;
}

/** What a plan holds at a path: a key with its text, and its number in SI where it is one; a table has its path alone. */
export interface PlanValue {
  path: string;
  text?: string;
  si?: number | null;
}

/** A plan: keys by their path, with the units they are written in. */
export class Plan {
  private constructor();
  /** What was given for a key; an empty text where nothing was. */
  get(path: KeyPath): string;
  /** Set a key as a file holds it: '35 mm +/- 5 mm'. Limits are the affair of `validate`. */
  set(path: KeyPath, text: string): void;
  /** The number of a key in SI, its default, or NaN. */
  si(path: KeyPath): number;
  /** Set the number of a key in SI; its unit and its doubt stay. */
  setSi(path: KeyPath, si: number): void;
  /** Take back a key, a table, a list or an element of one. */
  clear(path: KeyPath | TablePath): void;
  /** Add a table, or an element of a list of tables; its path. */
  add(path: TablePath): string;
  /** Every key that was given, each table before its keys. */
  values(): PlanValue[];
  /** All that is wrong; empty for a plan that can be assessed. */
  validate(): Mistake[];
  /** The report. Show the caution where you show the number. */
  assess(options?: AssessOptions): Report;
  /** What can still be changed so that a finding holds, the smallest change first. */
  cures(finding: string): Cure[];
  /** Change the plan as a cure says. */
  apply(cure: Cure): void;
  /** The plan as text; TOML has each key's sentence beside it. */
  write(notation?: Notation): string;
  /** The plan as data. */
  data(): PlanData;
  copy(): Plan;
  /** Free it now; otherwise it goes with the object. */
  free(): void;
}

/** A plan from a text, or from data. A LibraryError 'bad_plan' has all its mistakes with their lines. */
export function read(plan: string | PlanData, notation?: Notation): Promise<Plan>;
/** A plan in which nothing is given. */
export function create(): Promise<Plan>;
/** A short plan to begin with. */
export function starter(units?: Units): Promise<Plan>;
/** The plan of the invented lagoon that the documentation uses. */
export function demo(): Promise<Plan>;
/** Every key that a plan may have, their rules, and the units of every quantity: what a form is made of. */
export function keys(): Promise<{
  keys: Record<string, unknown>[];
  rules: Record<string, unknown>[];
  quantities: { name: string; unit: string; units: { symbol: string; name: string; size: number; zero: number }[] }[];
}>;
/** Every decision of the library, in the order of the job. */
export function decisions(): Promise<{ id: string; day: string; question: string; consequence: Consequence }[]>;
/** The version of the library. */
export function version(): Promise<string>;

// ---- formulas by name --------------------------------------------------------------------------------------------------

/** What a formula answers. Show the cautions where you show the numbers. */
export interface Answer<Result> {
  formula: string;
  result: Result;
  cautions: string[];
  source: string;
}

export interface Calculator {
  /** One formula: `call('water.density', { practical_salinity: 35, temperature: '25 degC' })`. */
  call<Name extends keyof Formulas>(name: Name, fields: Formulas[Name]['fields']): Answer<Formulas[Name]['result']>;
}
/** The formulas: a module of their own, loaded when it is first asked for. */
export function formulas(): Promise<Calculator>;

// ---- where the modules are ---------------------------------------------------------------------------------------------

export type Wasm = WebAssembly.Module | ArrayBuffer | Uint8Array | URL | string;
/** Where the modules come from, if not from beside index.mjs: before anything else is called. */
export function modules(from: { plan?: Wasm; formulas?: Wasm }): void;
