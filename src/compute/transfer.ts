import { componentOf } from './component.ts';
import { rectangular } from './distribution/rectangular.ts';
import type { Input, SumModel } from './model.ts';
import { finite, rangeError } from './quantity.ts';
import type { Scatter } from './readings.ts';
import type { CorrectionFound } from './transfer-rounds.ts';

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
