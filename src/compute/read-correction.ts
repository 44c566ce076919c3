import type { CorrectionLine } from './correction-line.ts';
import type { Distribution } from './distribution/distribution.ts';
import { normal } from './distribution/normal.ts';
import { student } from './distribution/student.ts';
import type { Input, SumModel } from './model.ts';
import { rangeError } from './quantity.ts';

/** Id of the input that stands for the line itself. */
export const LINE_ID = 'line of corrections';

function lineInput(line: CorrectionLine, arm: number): Input {
  const u = Math.hypot(line.correctionUncertainty, arm * line.slopeUncertainty);
  const { degreesOfFreedom } = line;
  const distribution: Distribution = Number.isFinite(degreesOfFreedom)
    ? student({ location: 0, scale: u, degreesOfFreedom })
    : normal({ mean: 0, standardDeviation: u });
  return { id: LINE_ID, distribution, standardUncertainty: u, degreesOfFreedom };
}

/**
 * The correction at a place between the points, as a sum: the line's own uncertainty there, and `common` added whole.
 * @param common what all points share: the lender, and whatever else was the same at each.
 * @throws RangeError outside the points: nothing has been measured there.
 */
export function readCorrection({
  line,
  at,
  common,
}: {
  line: CorrectionLine;
  at: number;
  common: readonly Input[];
}): SumModel {
  const { lower, upper } = line.range;
  if (!(at >= lower && at <= upper))
    throw rangeError({ where: 'readCorrection', wish: `at must be from ${lower} to ${upper}`, got: at });
  const arm = at - line.middle;
  const inputs = [lineInput(line, arm), ...common];
  return {
    kind: 'sum',
    constant: line.correction + line.slope * arm,
    inputs,
    sensitivities: inputs.map(() => 1),
  };
}
