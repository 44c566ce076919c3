import type * as compute from '#compute';
import type { SourceId } from './sources.ts';

type Compute = typeof compute;

/** Name of a public function of the computation. */
export type ComputeFunction = {
  [Name in keyof Compute]: Compute[Name] extends (...given: never[]) => unknown ? Name : never;
}[keyof Compute];

/** Unit of a symbol as it is written; `1` for a pure number, `own` for the unit of the quantity at hand. */
export type FormulaUnit =
  | '1'
  | 'own'
  | '%'
  | 'dB'
  | 'dBm'
  | 'dBW'
  | 'dBV'
  | 'dBmV'
  | 'dBµV'
  | 'Np'
  | 'W'
  | 'V'
  | 'A'
  | 'Ω'
  | 'F'
  | 'Hz'
  | 'Hz/V'
  | 's'
  | 'min'
  | 'K'
  | '1/K'
  | '°C'
  | '°'
  | 'm'
  | 'mm'
  | 'µm';

/** One letter of a formula: how it is written, its unit, what it is. */
export interface FormulaSymbol {
  readonly tex: string;
  readonly unit: FormulaUnit;
  readonly words: string;
}

/** Where a formula is from. */
export interface FormulaSource {
  readonly of: SourceId;
  /** Clause, chapter or, for what is derived, from what. */
  readonly clause?: string;
}

/** Numbers of an example by the name of the symbol: one, or several where the symbol stands for several. */
export type ExampleNumbers = Readonly<Record<string, number | readonly number[]>>;

/** A worked instance: numbers by symbol, and the result by call. */
export interface FormulaExample {
  readonly given: ExampleNumbers;
  readonly result: () => number;
  /** The same with other numbers of the same names. @throws RangeError as the function does. */
  readonly compute: (given: ExampleNumbers) => number;
}

/** Names of a function's parameters: of the properties of its one object, or any where it takes plain numbers. */
type ParameterName<F> = F extends (...given: infer Given) => unknown
  ? Given extends [infer First, ...unknown[]]
    ? First extends number | string | readonly unknown[]
      ? string
      : (keyof First & string) | InnerName<First[keyof First]>
    : never
  : never;

/** Names of the properties of an object within the parameters. */
type InnerName<Value> = Value extends number | string | boolean | undefined | readonly unknown[]
  ? never
  : keyof Value & string;

/** Name of what comes out: `result`, or the properties of an object. */
type ResultName<F> = F extends (...given: never[]) => infer Result
  ? Result extends number | readonly unknown[] | ReadonlyMap<unknown, unknown>
    ? 'result'
    : (keyof Result & string) | 'result'
  : never;

/** One formula of the computation. */
export interface Formula<Name extends ComputeFunction = ComputeFunction> {
  readonly tex: string;
  /** Letters by the name of the parameter that they stand for, and `result` or the names of what comes out. */
  readonly symbols: Readonly<
    Partial<Record<ParameterName<Compute[Name]> | ResultName<Compute[Name]>, FormulaSymbol>>
  >;
  /** What it answers, in a sentence. */
  readonly words: string;
  readonly sources: readonly FormulaSource[];
  readonly example: FormulaExample;
}

/** A row of the sheet for a page to show: a formula with its id, which is the name of the function that computes it. */
export interface FormulaRow extends Omit<Formula, 'symbols'> {
  readonly id: ComputeFunction;
  readonly symbols: Readonly<Record<string, FormulaSymbol>>;
}

/** Formulas of one topic, by the name of the function that computes them. */
export type FormulaTopic = { readonly [Name in ComputeFunction]?: Formula<Name> };

/** A letter of a formula. */
export function letter(tex: string, unit: FormulaUnit, words: string): FormulaSymbol {
  return { tex, unit, words };
}

/** An example whose result is computed from the very numbers that it shows. */
export function example<const Given extends ExampleNumbers>(
  given: Given,
  result: (given: Given) => number,
): FormulaExample {
  // A page hands in numbers by the very names that `given` has.
  return { given, result: () => result(given), compute: (numbers) => result(numbers as Given) };
}

/** A number that an example needs and that may be missing for other numbers. @throws RangeError where it is. */
export function known(value: number | undefined): number {
  if (value === undefined)
    throw new RangeError('example: there must be a number for each of the others, and a result of them');
  return value;
}
