import { rangeError } from '../quantity.ts';
import { numericalTolerance } from '../validate.ts';
import { checkModel } from './check-model.ts';
import type { SimulationRequest, StopRule } from './simulation.ts';
import { blockTrials } from './stop-rule.ts';

/** What `SimulationRequest` says of both where they are not asked for. */
const MOST_KEPT = 1_000_000;
const MOST_TRIALS = 20_000_000;

/** Size of a block, the most blocks, and how many blocks are kept at once. */
export interface Plan {
  readonly block: number;
  readonly most: number;
  readonly kept: number;
}

/** Lays out the blocks of a request. */
export function planOf({ stop, coverageProbability, mostKept = MOST_KEPT }: SimulationRequest): Plan {
  if (stop.kind === 'trials') {
    const most = Math.ceil(stop.trials / mostKept);
    return { block: Math.ceil(stop.trials / most), most, kept: 1 };
  }
  const block = blockTrials(coverageProbability);
  const most = Math.max(2, Math.floor((stop.mostTrials ?? MOST_TRIALS) / block));
  return { block, most, kept: Math.min(most, Math.max(1, Math.floor(mostKept / block))) };
}

/** The tolerance to settle to; 0 where nothing varies. */
export function toleranceOf(deviation: number, stop: StopRule & { kind: 'settled' }): number {
  if (deviation === 0) return 0;
  const whole = numericalTolerance({ standardUncertainty: deviation, digits: stop.significantDigits });
  return whole * (stop.part ?? 1);
}

/** Refuses what cannot be simulated. @throws RangeError as `simulate`. */
export function checkRequest({
  model,
  coverageProbability: p,
  stop,
  mostKept = MOST_KEPT,
}: SimulationRequest): void {
  const where = 'simulate';
  checkModel(where, model);
  if (!(p > 0 && p < 1))
    throw rangeError({ where, wish: 'coverageProbability must be between 0 and 1', got: p });
  const trials = stop.kind === 'trials' ? stop.trials : (stop.mostTrials ?? MOST_TRIALS);
  if (!(Number.isInteger(trials) && trials >= 2))
    throw rangeError({ where, wish: 'trials must be a whole number >= 2', got: trials });
  if (!(mostKept >= 2)) throw rangeError({ where, wish: 'mostKept must be >= 2', got: mostKept });
  const endless = model.inputs.find(({ distribution }) => distribution.standardDeviation === undefined);
  if (stop.kind === 'settled' && endless)
    throw rangeError({
      where,
      wish: 'to settle, every input must have a standard deviation',
      got: endless.id,
    });
}
