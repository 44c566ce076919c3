import { rangeError } from '../quantity.ts';
import { numericalTolerance } from '../validate.ts';
import { checkModel } from './check-model.ts';
import type { SimulationRequest, StopRule } from './simulation.ts';
import { blockTrials } from './stop-rule.ts';

/** Values kept at once; of more trials, blocks of this size are averaged. */
export const MOST_KEPT = 1_000_000;
const MOST_TRIALS = 20_000_000;

/** Size of a block and the most blocks. */
export function planOf({ stop, coverageProbability }: SimulationRequest): { block: number; most: number } {
  if (stop.kind === 'trials') {
    const most = Math.ceil(stop.trials / MOST_KEPT);
    return { block: Math.ceil(stop.trials / most), most };
  }
  const block = blockTrials(coverageProbability);
  return { block, most: Math.max(2, Math.floor((stop.mostTrials ?? MOST_TRIALS) / block)) };
}

/** The tolerance to settle to; 0 where nothing varies. */
export function toleranceOf(deviation: number, stop: StopRule & { kind: 'settled' }): number {
  if (deviation === 0) return 0;
  const whole = numericalTolerance({ standardUncertainty: deviation, digits: stop.significantDigits });
  return whole * (stop.part ?? 1);
}

/** Refuses what cannot be simulated. @throws RangeError as `simulate`. */
export function checkRequest({ model, coverageProbability: p, stop }: SimulationRequest): void {
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
