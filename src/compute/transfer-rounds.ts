import { finite, rangeError } from './quantity.ts';
import { mean, standardDeviation } from './readings.ts';

/** One alternation, levels in dB of one kind: the reference, one's own instrument, the reference again (A-B-A). */
export interface TransferRound {
  readonly before: number;
  readonly own: number;
  readonly after: number;
}

/** What alternating readings say at one level. In dB. */
export interface CorrectionFound {
  /** To be added to a reading of one's own instrument: reference less own (VIM 2.53). */
  readonly correction: number;
  readonly rounds: number;
  /** Scatter of single rounds; undefined for one round. */
  readonly standardDeviation: number | undefined;
  /** Half of the largest change of the reference within a round: what a drift that is no straight line may leave. */
  readonly driftHalfWidth: number;
}

/**
 * Rounds from readings taken in turn, A B A B A: each reading of one's own instrument between the two of the reference
 * around it. Neighbouring rounds then share a reading, which makes their scatter slightly too small; rounds of their own do not.
 * @throws RangeError unless there are an odd number of readings, 3 or more.
 */
export function roundsOf(alternating: readonly number[]): TransferRound[] {
  if (alternating.length < 3 || alternating.length % 2 === 0)
    throw rangeError({
      where: 'roundsOf',
      wish: 'there must be an odd number of readings, 3 or more',
      got: alternating.length,
    });
  return Array.from({ length: (alternating.length - 1) / 2 }, (_, i) => {
    const [before, own, after] = alternating.slice(2 * i, 2 * i + 3);
    return { before: before ?? Number.NaN, own: own ?? Number.NaN, after: after ?? Number.NaN };
  });
}

/**
 * The correction of one's own instrument at one level, from alternating readings. Taking the reference before and after
 * cancels a drift that is straight in time; half of its size is kept as a limit for what is not.
 * @throws RangeError without rounds, or for a reading not finite.
 * Source: common practice (substitution in the sequence A-B-A).
 */
export function correctionOf(rounds: readonly TransferRound[]): CorrectionFound {
  if (rounds.length === 0)
    throw rangeError({ where: 'correctionOf', wish: 'there must be 1 or more rounds', got: 0 });
  const corrections = rounds.map(({ before, own, after }) =>
    finite('correctionOf', 'reading', (before + after) / 2 - own),
  );
  const drifts = rounds.map(({ before, after }) => Math.abs(after - before) / 2);
  return {
    correction: mean(corrections),
    rounds: rounds.length,
    standardDeviation: rounds.length > 1 ? standardDeviation(corrections) : undefined,
    driftHalfWidth: Math.max(...drifts),
  };
}
