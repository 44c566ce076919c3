import type { Interval } from '../distribution/distribution.ts';
import type { Model } from '../model.ts';
import { type Histogram, histogramOf } from './histogram.ts';
import { deviationOf, joinMoments, type Moments, momentsOf, NO_MOMENTS } from './moments.ts';
import { type SampleIntervals, sampleIntervals } from './sample-intervals.ts';
import type { Simulated, SimulationProgress, SimulationRequest } from './simulation.ts';
import { checkRequest, planOf, toleranceOf } from './simulation-plan.ts';
import { type BlockFigures, hasSettled } from './stop-rule.ts';
import { rowsFor, type Trials, trialsOf } from './trials.ts';

/** One block: its moments and intervals. */
interface Block {
  readonly moments: Moments;
  readonly intervals: SampleIntervals;
}

/** Makes one block, a row of trials at a time, and reports after each row. */
function* runBlock(
  values: Float64Array,
  { trials, histogram, rows }: { trials: Trials; histogram: Histogram; rows: number },
  progress: (done: number) => SimulationProgress,
): Generator<SimulationProgress, Moments> {
  let moments = NO_MOMENTS;
  for (let from = 0; from < values.length; from += rows) {
    const row = values.subarray(from, Math.min(values.length, from + rows));
    trials(row);
    histogram.add(row);
    moments = joinMoments(moments, momentsOf(row));
    yield progress(moments.count);
  }
  return moments;
}

/** Mean and standard deviation, as far as the inputs have them: what trials give for others means nothing. */
function existingMoments({ inputs }: Model, moments: Moments): Pick<Simulated, 'mean' | 'standardDeviation'> {
  const all = (name: 'mean' | 'standardDeviation') =>
    inputs.every(({ distribution }) => distribution[name] !== undefined);
  return {
    mean: all('mean') ? moments.mean : undefined,
    standardDeviation: all('standardDeviation') ? deviationOf(moments) : undefined,
  };
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

function figuresOf({ moments, intervals: { symmetric } }: Block): BlockFigures {
  return [moments.mean, deviationOf(moments), symmetric.lower, symmetric.upper];
}

/**
 * Propagation of distributions by trials (JCGM 101, clause 7): any model, correlated normal inputs and shared causes
 * included. A generator: each step makes a few thousand trials and yields how far it has come; the caller stops by not
 * asking for more. The same seed gives the same result in every engine, as far as `f` itself does: random values are made
 * with integers, plain arithmetic, Math.sqrt, Math.log, Math.exp and their twins near 1 and 0 (log1p, expm1), but without sines,
 * cosines and powers, whose last digits are known to differ.
 *
 * With `settled`, blocks are added until twice the standard deviation of the mean over the blocks of estimate, standard
 * uncertainty and both ends of the symmetric interval is within half a unit of the digit asked for (7.9.4). Up to a
 * million trials all values are kept; beyond, blocks are averaged and memory stays constant.
 *
 * @throws RangeError for a model that `checkModel` refuses, a probability outside 0 to 1, fewer than two trials or values kept,
 * correlated inputs that are not normal, values of `f` that are not finite, and `settled` with an input that has no standard deviation.
 */
export function* simulate(request: SimulationRequest): Generator<SimulationProgress, Simulated> {
  checkRequest(request);
  const { model, coverageProbability: p, random, stop } = request;
  const { block: size, most, kept } = planOf(request);
  const rows = rowsFor(size);
  const making = { trials: trialsOf(model, rows, random), histogram: histogramOf(), rows };
  const keep = new Float64Array(kept * size);
  const wanted = stop.kind === 'trials' ? most * size : undefined;
  const blocks: Block[] = [];
  const figures: BlockFigures[] = [];
  let moments = NO_MOMENTS;
  let tolerance: number | undefined;
  let settled = false;
  while (blocks.length < most && !settled) {
    const from = (blocks.length % kept) * size;
    const values = keep.subarray(from, from + size);
    const own = yield* runBlock(values, making, (done) => ({ trials: moments.count + done, wanted }));
    moments = joinMoments(moments, own);
    const block = { moments: own, intervals: sampleIntervals(values, p) };
    blocks.push(block);
    figures.push(figuresOf(block));
    if (stop.kind === 'trials') continue;
    tolerance = toleranceOf(deviationOf(moments), stop);
    settled = hasSettled(figures, tolerance);
  }
  const all = blocks.length <= kept ? keep.subarray(0, moments.count) : undefined;
  return {
    ...existingMoments(model, moments),
    ...intervalsOf(blocks, all, p),
    trials: moments.count,
    blocks: blocks.length,
    tolerance,
    settled: settled || stop.kind === 'trials',
    curve: making.histogram.curve(),
  };
}

/** A simulation from start to end, without pause. @throws RangeError as `simulate`. */
export function simulateAtOnce(request: SimulationRequest): Simulated {
  const steps = simulate(request);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
