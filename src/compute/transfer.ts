import { componentOf } from './component.ts';
import { rectangular } from './distribution/rectangular.ts';
import type { Input, SumModel } from './model.ts';
import { finite, rangeError } from './quantity.ts';
import { mean, type Scatter, standardDeviation } from './readings.ts';

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

/** Ids of the inputs that the alternation itself brings. */
export const TRANSFER_IDS = { scatter: 'transfer scatter', drift: 'transfer drift' } as const;

function scatterInput(
  { standardDeviation: own, rounds }: CorrectionFound,
  pooled: Scatter | undefined,
): Input {
  const id = TRANSFER_IDS.scatter;
  if (pooled !== undefined)
    return componentOf({
      id,
      unit: 'dB',
      statement: {
        form: 'standard',
        standardUncertainty: pooled.standardDeviation / Math.sqrt(rounds),
        degreesOfFreedom: pooled.degreesOfFreedom,
      },
    });
  if (own === undefined)
    throw rangeError({
      where: 'transferModel',
      wish: 'one round needs a pooled scatter',
      got: rounds,
    });
  return componentOf({
    id,
    unit: 'dB',
    statement: { form: 'readings', standardDeviation: own, count: rounds },
  });
}

/**
 * The correction with everything that makes it uncertain, as a sum in dB: scatter of the rounds, drift within them, the
 * lender's uncertainty, and what else counts (resolution, temperature, mismatch) as `parts`.
 * The lender's uncertainty is one and the same in every round and is not divided by their number.
 * @param pooled scatter of a single round known from elsewhere; needed if there is one round only.
 * @throws RangeError for one round without pooled scatter, or two inputs of one id once evaluated.
 */
export function transferModel({
  found,
  lender,
  parts = [],
  pooled,
}: {
  found: CorrectionFound;
  lender: Input;
  parts?: readonly Input[];
  pooled?: Scatter | undefined;
}): SumModel {
  const drift: Input[] =
    found.driftHalfWidth === 0
      ? []
      : [
          {
            id: TRANSFER_IDS.drift,
            distribution: rectangular({ lower: -found.driftHalfWidth, upper: found.driftHalfWidth }),
            degreesOfFreedom: Number.POSITIVE_INFINITY,
          },
        ];
  const inputs = [lender, scatterInput(found, pooled), ...drift, ...parts];
  return { kind: 'sum', constant: found.correction, inputs, sensitivities: inputs.map(() => 1) };
}

/**
 * A later reading, corrected: it carries the correction with all of its uncertainty and its own scatter, resolution,
 * temperature and mismatch (`parts`). An input of the correction and one of the reading that name the same cause move together.
 * @throws RangeError unless the reading is finite.
 */
export function correctedReading({
  reading,
  correction,
  parts = [],
}: {
  reading: number;
  correction: SumModel;
  parts?: readonly Input[];
}): SumModel {
  finite('correctedReading', 'reading', reading);
  return {
    ...correction,
    constant: reading + correction.constant,
    inputs: [...correction.inputs, ...parts],
    sensitivities: [...correction.sensitivities, ...parts.map(() => 1)],
  };
}
