import type { Interval } from '../distribution/distribution.ts';
import type { Model } from '../model.ts';
import { rangeError } from '../quantity.ts';
import type { SeededRandom } from '../random.ts';
import { numericalTolerance } from '../validate.ts';
import { checkModel } from './check-model.ts';
import { type Histogram, histogramOf } from './histogram.ts';
import { deviationOf, joinMoments, type Moments, momentsOf, NO_MOMENTS } from './moments.ts';
import { type SampleIntervals, sampleIntervals } from './sample-intervals.ts';
import { blockTrials, hasSettled } from './stop-rule.ts';
import { rowsFor, type Trials, trialsOf } from './trials.ts';

/** Values kept at once; of more trials, blocks of this size are averaged. */
const MOST_KEPT = 1_000_000;
const MOST_TRIALS = 20_000_000;

/** When to stop: after so many trials, or once the results have settled to so many digits of the uncertainty (JCGM 101, 7.9). */
export type StopRule =
  | { readonly kind: 'trials'; readonly trials: number }
  | {
      readonly kind: 'settled';
      readonly significantDigits: 1 | 2;
      /** 20 million if absent. */
      readonly mostTrials?: number;
      /** Part of the tolerance to settle to: 1 if absent; 1/5 where propagation is to be validated (8.2). */
      readonly part?: number;
    };

export interface SimulationRequest {
  readonly model: Model;
  readonly coverageProbability: number;
  readonly random: SeededRandom;
  readonly stop: StopRule;
}

/** How far a simulation has come; `wanted` is unknown where the results themselves decide. */
export interface SimulationProgress {
  readonly trials: number;
  readonly wanted: number | undefined;
}

/** Result of a simulation; all in the unit of the model. */
export interface Simulated extends SampleIntervals {
  /** Undefined where an input has no mean. */
  readonly mean: number | undefined;
  /** Undefined where an input has no standard deviation. */
  readonly standardDeviation: number | undefined;
  readonly trials: number;
  readonly blocks: number;
  /** What it was to settle to (half a unit of the last digit, or the part asked for); undefined with a fixed number of trials. */
  readonly tolerance: number | undefined;
  /** False if the most trials allowed were not enough to settle; true for a fixed number. */
  readonly settled: boolean;
  /** Points for drawing. */
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** One block: its moments and intervals. */
interface Block {
  readonly moments: Moments;
  readonly intervals: SampleIntervals;
}

/** Makes one block, a row of trials at a time, and reports after each row. */
function* runBlock(
  values: Float64Array,
  { trials, histogram, rows }: { trials: Trials; histogram: Histogram; rows: number },
): Generator<number, Moments> {
  let moments = NO_MOMENTS;
  for (let from = 0; from < values.length; from += rows) {
    const row = values.subarray(from, Math.min(values.length, from + rows));
    trials(row);
    histogram.add(row);
    moments = joinMoments(moments, momentsOf(row));
    yield row.length;
  }
  return moments;
}

const meanOf = (figures: readonly number[]) =>
  figures.reduce((sum, value) => sum + value, 0) / figures.length;

function meanInterval(intervals: readonly Interval[]): Interval {
  return {
    lower: meanOf(intervals.map(({ lower }) => lower)),
    upper: meanOf(intervals.map(({ upper }) => upper)),
  };
}

/** Intervals of all blocks: of all values together while they are kept, else the means over the blocks (7.9.4, note 4). */
function intervalsOf(blocks: readonly Block[], kept: Float64Array | undefined, p: number): SampleIntervals {
  if (blocks.length === 1) return (blocks[0] as Block).intervals;
  if (kept) return sampleIntervals(kept, p);
  return {
    symmetric: meanInterval(blocks.map(({ intervals }) => intervals.symmetric)),
    shortest: meanInterval(blocks.map(({ intervals }) => intervals.shortest)),
  };
}

function figuresOf({ moments, intervals: { symmetric } }: Block): number[] {
  return [moments.mean, deviationOf(moments), symmetric.lower, symmetric.upper];
}

/** Size of a block and the most blocks. */
function planOf({ stop, coverageProbability }: SimulationRequest): { block: number; most: number } {
  if (stop.kind === 'trials') {
    const most = Math.ceil(stop.trials / MOST_KEPT);
    return { block: Math.ceil(stop.trials / most), most };
  }
  const block = blockTrials(coverageProbability);
  return { block, most: Math.max(2, Math.floor((stop.mostTrials ?? MOST_TRIALS) / block)) };
}

/** The tolerance to settle to; 0 where nothing varies. */
function toleranceOf(deviation: number, stop: StopRule & { kind: 'settled' }): number {
  if (deviation === 0) return 0;
  const whole = numericalTolerance({ standardUncertainty: deviation, digits: stop.significantDigits });
  return whole * (stop.part ?? 1);
}

function check({ model, coverageProbability: p, stop }: SimulationRequest): void {
  const where = 'simulate';
  checkModel(where, model);
  if (!(p > 0 && p < 1))
    throw rangeError({ where, wish: 'coverageProbability must be between 0 and 1', got: p });
  const trials = stop.kind === 'trials' ? stop.trials : (stop.mostTrials ?? MOST_TRIALS);
  if (!(Number.isInteger(trials) && trials >= 2))
    throw rangeError({ where, wish: 'trials must be a whole number >= 2', got: trials });
  const endless = model.inputs.find(({ distribution }) => distribution.standardDeviation === undefined);
  if (stop.kind === 'settled' && endless)
    throw rangeError({
      where,
      wish: 'to settle, every input must have a standard deviation',
      got: endless.id,
    });
}

/**
 * Propagation of distributions by trials (JCGM 101, clause 7): any model, correlated normal inputs and shared causes
 * included. A generator: each step makes a few thousand trials and yields how far it has come; the caller stops by not
 * asking for more. The same seed gives the same result in every engine, as far as `f` itself does.
 *
 * With `settled`, blocks are added until twice the standard deviation of the mean over the blocks of estimate, standard
 * uncertainty and both ends of the symmetric interval is within half a unit of the digit asked for (7.9.4). Up to a
 * million trials all values are kept; beyond, blocks are averaged and memory stays constant.
 *
 * @throws RangeError for a model that `checkModel` refuses, a probability outside 0 to 1, fewer than two trials,
 * correlated inputs that are not normal, values of `f` that are not finite, and `settled` with an input that has no standard deviation.
 */
export function* simulate(request: SimulationRequest): Generator<SimulationProgress, Simulated> {
  check(request);
  const { model, coverageProbability: p, random, stop } = request;
  const { block, most } = planOf(request);
  const rows = rowsFor(block);
  const making = { trials: trialsOf(model, rows, random), histogram: histogramOf(), rows };
  const keep = new Float64Array(most === 1 ? block : Math.min(most * block, Math.max(MOST_KEPT, block)));
  const blocks: Block[] = [];
  let moments = NO_MOMENTS;
  let tolerance: number | undefined;
  let settled = stop.kind === 'trials';
  for (let h = 0; h < most; h++) {
    const at = (h % Math.floor(keep.length / block)) * block;
    const values = keep.subarray(at, at + block);
    const run = runBlock(values, making);
    let step = run.next();
    for (let done = 0; !step.done; step = run.next()) {
      done += step.value;
      yield { trials: h * block + done, wanted: stop.kind === 'trials' ? most * block : undefined };
    }
    moments = joinMoments(moments, step.value);
    blocks.push({ moments: step.value, intervals: sampleIntervals(values, p) });
    if (stop.kind === 'trials') continue;
    tolerance = toleranceOf(deviationOf(moments), stop);
    settled = hasSettled(blocks.map(figuresOf), tolerance);
    if (settled) break;
  }
  const { inputs } = model;
  const kept = moments.count <= keep.length ? keep.subarray(0, moments.count) : undefined;
  return {
    mean: inputs.every(({ distribution }) => distribution.mean !== undefined) ? moments.mean : undefined,
    standardDeviation: inputs.every(({ distribution }) => distribution.standardDeviation !== undefined)
      ? deviationOf(moments)
      : undefined,
    ...intervalsOf(blocks, kept, p),
    trials: moments.count,
    blocks: blocks.length,
    tolerance,
    settled,
    curve: making.histogram.curve(),
  };
}

/** A simulation from start to end, without pause. */
export function simulateAtOnce(request: SimulationRequest): Simulated {
  const steps = simulate(request);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
