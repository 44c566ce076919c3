import { type Interval, randomFrom, type Simulated, type StopRule, simulate } from '#compute';
import {
  type Propagated,
  propagatedOf,
  type Trials,
  type TryOrder,
  triedCoverage,
  triedModelOf,
} from './tries.ts';

/** What so many trials came to, with all that is needed to draw and to judge them; plain data. */
export interface Tried {
  readonly order: TryOrder;
  readonly trials: number;
  readonly mean: number;
  readonly standardUncertainty: number;
  readonly symmetric: Interval;
  readonly shortest: Interval;
  /** What the results were to settle to, where they decided the number of trials. */
  readonly tolerance: number | undefined;
  readonly settled: boolean;
  /** The trials as columns: a step for each. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
  readonly propagated: Propagated;
}

/** The stops on the way: ten times as many each time, so that one can watch the columns settle. */
const waysOf = (trials: Trials): readonly StopRule[] =>
  trials === 'settled'
    ? [...waysTo(10_000), { kind: 'settled', significantDigits: 2 }]
    : waysTo(Number(trials));

function waysTo(most: number): StopRule[] {
  const ways: StopRule[] = [];
  for (let trials = 100; trials <= most; trials *= 10) ways.push({ kind: 'trials', trials });
  return ways;
}

/** Digits that a drawing needs, so that a result travels lightly. */
const DIGITS = 5;
const short = (value: number): number => Number(value.toPrecision(DIGITS));

/** Bins of a simulation that become one column, by the number of trials: few trials in narrow columns would only be spikes. */
const binsFor = (trials: number): number =>
  trials < 1000 ? 20 : trials < 10_000 ? 10 : trials < 100_000 ? 5 : 2;

/** Below this nothing can be: a loss is never less than none. */
const leastOf = ({ model }: TryOrder): number => (model === 'loss' ? 0 : Number.NEGATIVE_INFINITY);

/** Columns of a simulation: two points a column, its left and its right upper corner; the first begins where anything can be. */
function columnsOf({ curve, trials }: Simulated, least: number): Tried['curve'] {
  const many = binsFor(trials);
  const half = ((curve[1]?.x ?? 0) - (curve[0]?.x ?? 0)) / 2;
  const columns: { x: number; density: number }[] = [];
  for (let first = 0; first + many <= curve.length; first += many) {
    const bins = curve.slice(first, first + many);
    const density = short(bins.reduce((sum, bin) => sum + bin.density, 0) / many);
    const [left, right] = [bins[0], bins[many - 1]];
    if (left === undefined || right === undefined || density === 0) continue;
    const [from, to] = [left.x - half, right.x + half];
    const begin = Math.max(from, Math.min(least, to));
    const height = short((density * (to - from)) / (to - begin));
    if (begin < to) columns.push({ x: short(begin), density: height }, { x: short(to), density: height });
  }
  return columns;
}

function triedBy(order: TryOrder, simulated: Simulated, propagated: Propagated): Tried {
  const { mean = Number.NaN, standardDeviation = Number.NaN } = simulated;
  return {
    order,
    trials: simulated.trials,
    mean,
    standardUncertainty: standardDeviation,
    symmetric: simulated.symmetric,
    shortest: simulated.shortest,
    tolerance: simulated.tolerance,
    settled: simulated.settled,
    curve: columnsOf(simulated, leastOf(order)),
    propagated,
  };
}

/**
 * Runs an order stop by stop: yields what has come of it at each, the last one last. Each stop begins anew with the same random
 * numbers, so that the first hundred trials are those of the first stop. Yields nothing now and then, so that the caller can stop it.
 */
export function* runTries(order: TryOrder): Generator<Tried | undefined, void> {
  const propagated = propagatedOf(order);
  const model = triedModelOf(order);
  const coverageProbability = triedCoverage(order);
  for (const stop of waysOf(order.trials)) {
    const steps = simulate({ model, coverageProbability, random: randomFrom(order.seed), stop });
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        yield triedBy(order, step.value, propagated);
        break;
      }
      yield undefined;
    }
  }
}

/** What an order comes to in the end. */
export function triedOf(order: TryOrder): Tried {
  let last: Tried | undefined;
  for (const tried of runTries(order)) last = tried ?? last;
  if (last === undefined) throw new RangeError('triedOf: there must be a result, got none');
  return last;
}
