import type { Interval } from './distribution/distribution.ts';
import { rangeError } from './quantity.ts';
import type { Result } from './result.ts';
import { studentQuantile, studentShareBelow } from './special/student.ts';

/** Which interval of a result decides: of the whole distribution (equal tails, or shortest), of propagation, or the worst case. */
export type DecidingInterval = 'whole' | 'wholeShortest' | 'propagation' | 'worstCase';

/** Probabilities of where the value lies. */
export interface Belief {
  shareBelow(x: number): number;
  quantile(share: number): number;
}

/** The whole distribution where there is one, otherwise propagation. */
export function usualInterval({ whole }: Result): DecidingInterval {
  return 'unavailable' in whole ? 'propagation' : 'whole';
}

function wholeOf({ whole }: Result) {
  if ('unavailable' in whole)
    throw rangeError({
      where: 'judge',
      wish: 'the whole distribution must be available to decide',
      got: whole.unavailable,
    });
  return whole;
}

function worstInterval({ worstCase: { interval, unlimited } }: Result): Interval {
  // A part without limits leaves no end that could be guaranteed.
  return unlimited.length === 0
    ? interval
    : { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY };
}

/** The interval that decides. @throws RangeError where the result has none of that name. */
export function decidingIntervalOf(result: Result, by: DecidingInterval): Interval {
  switch (by) {
    case 'worstCase':
      return worstInterval(result);
    case 'propagation':
      return result.propagation.interval;
    case 'whole':
      return wholeOf(result).symmetric;
    case 'wholeShortest': {
      const { shortest } = wholeOf(result);
      if (shortest === undefined)
        throw rangeError({ where: 'judge', wish: 'the shortest interval must be one interval', got: by });
      return shortest;
    }
  }
}

/** A t about the estimate with the combined standard uncertainty and effective degrees of freedom; a step if exact. */
function bellOf({ estimate, propagation: { standardUncertainty: u, degreesOfFreedom } }: Result): Belief {
  if (u === 0) return { shareBelow: (x) => (x >= estimate ? 1 : 0), quantile: () => estimate };
  return {
    shareBelow: (x) => studentShareBelow({ t: (x - estimate) / u, degreesOfFreedom }),
    quantile: (share) => estimate + u * studentQuantile({ share, degreesOfFreedom }),
  };
}

/** The distribution behind the interval that decides; none behind a worst case, which speaks of no probability. */
export function beliefOf(result: Result, by: DecidingInterval): Belief | undefined {
  if (by === 'worstCase') return undefined;
  return by === 'propagation' ? bellOf(result) : wholeOf(result);
}
