import {
  compareMethods,
  type MeanOfMethods,
  type MethodsCompared,
  meanOfMethods,
  type Propagation,
  propagate,
  type SumModel,
} from '#compute';
import { sheetAt } from '../sheet/at-point.ts';
import { COVERAGE_PROBABILITY } from '../sheet/coverage.ts';
import type { Measurement } from '../sheet/measurement.ts';
import { outcomeOf } from '../sheet/to-model.ts';
import type { CompareEntries } from './entries.ts';
import { type Decode, outOfRangeProblem, type RowRead, type RowSheet, readRow } from './read-row.ts';
import { type Candidate, candidatesOf, withCauses } from './shared.ts';

/** One sheet with its result. Levels in dBm. */
export interface RowResult extends RowSheet {
  readonly model: SumModel;
  readonly levelDbm: number;
  readonly propagation: Propagation;
}

/** Two sheets against each other. */
export interface Pair {
  readonly first: RowResult;
  readonly second: RowResult;
  readonly compared: MethodsCompared;
}

/** What the page shows. */
export interface Comparison {
  /** In the order of the form: a result, or a sentence on why there is none. */
  readonly rows: readonly (RowRead & { readonly id: string; readonly result: RowResult | undefined })[];
  readonly candidates: readonly Candidate[];
  readonly pairs: readonly Pair[];
  /** What they say together; undefined for fewer than two results. */
  readonly mean: MeanOfMethods | undefined;
  /** Why there is no sum of what is marked as shared, in the words of the sums. */
  readonly refused: string | undefined;
  /** Whether every pair agrees: only then has the mean a meaning. */
  readonly consistent: boolean;
  /** What is not the same in all sheets, so that they may not measure the same thing. */
  readonly differing: readonly ('power' | 'delivery' | 'keying' | 'frequency')[];
}

function resultOf(sheet: RowSheet, marks: CompareEntries): RowResult | string {
  try {
    const outcome = outcomeOf(withCauses(sheetAt(sheet.measurement, sheet.point.id), sheet.id, marks));
    if (!outcome.inRange) return outOfRangeProblem(outcome.reason);
    const { model } = outcome;
    const propagation = propagate({ model, coverageProbability: COVERAGE_PROBABILITY });
    const { lower, upper } = propagation.interval;
    return { ...sheet, model, levelDbm: (lower + upper) / 2, propagation };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return error.message;
  }
}

/** Frequencies this close are one. */
const SAME_FREQUENCY = 0.01;

function differingOf(results: readonly RowResult[]): Comparison['differing'] {
  const several = (values: readonly unknown[]): boolean => new Set(values).size > 1;
  const measurands = results.map(({ measurement }: { measurement: Measurement }) => measurement.measurand);
  const frequencies = results.flatMap(({ point }) => point.frequencyHz ?? []);
  const apart = Math.max(...frequencies) > Math.min(...frequencies) * (1 + SAME_FREQUENCY);
  return [
    ...(several(measurands.map(({ power }) => power)) ? (['power'] as const) : []),
    ...(several(measurands.map(({ delivery }) => delivery)) ? (['delivery'] as const) : []),
    ...(several(measurands.map(({ keying }) => keying ?? 'keyDown')) ? (['keying'] as const) : []),
    ...(frequencies.length > 1 && apart ? (['frequency'] as const) : []),
  ];
}

/** Every pair, and all together; what the sums refuse, causes that cannot move together, is told in their own words. */
function summed(results: readonly RowResult[]): Pick<Comparison, 'pairs' | 'mean' | 'refused'> {
  const coverageProbability = COVERAGE_PROBABILITY;
  try {
    const pairs = results.flatMap((first, i) =>
      results.slice(i + 1).map((second): Pair => {
        const models = { first: first.model, second: second.model };
        return { first, second, compared: compareMethods({ ...models, coverageProbability }) };
      }),
    );
    if (pairs.length === 0) return { pairs, mean: undefined, refused: undefined };
    const mean = meanOfMethods({ methods: results.map(({ model }) => model), coverageProbability });
    return { pairs, mean, refused: undefined };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { pairs: [], mean: undefined, refused: error.message };
  }
}

/** Everything that a form says. Never throws. */
export function comparisonOf(entries: CompareEntries, decode: Decode | undefined): Comparison {
  const rows = entries.rows.map((row) => {
    const read = readRow(row, decode);
    const found = read.sheet && resultOf(read.sheet, entries);
    if (typeof found === 'string')
      return { id: row.id, problem: found, points: read.points, result: undefined };
    return { ...read, id: row.id, result: found };
  });
  const results = rows.flatMap(({ result }) => result ?? []);
  const { pairs, mean, refused } = summed(results);
  return {
    rows,
    candidates: candidatesOf(
      results.map(({ measurement }) => measurement),
      entries,
    ),
    pairs,
    mean,
    refused,
    consistent: pairs.every(({ compared }) => compared.compatible),
    differing: results.length < 2 ? [] : differingOf(results),
  };
}
