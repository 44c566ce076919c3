import { isLimited } from './combine/input.ts';
import type { DecidingInterval } from './deciding.ts';
import { arcsine } from './distribution/arcsine.ts';
import type { Distribution, Interval } from './distribution/distribution.ts';
import { rectangular } from './distribution/rectangular.ts';
import { triangular } from './distribution/triangular.ts';
import { evaluate } from './evaluate.ts';
import type { Input, Model } from './model.ts';
import type { Result } from './result.ts';
import type { Rule, Specification } from './specification.ts';
import { judge, type Verdict } from './verdict.ts';

/** A shape that stated limits might have as well. */
export type OtherShape = 'rectangular' | 'triangular' | 'arcsine';

/** One row: what was taken differently, and what came of it. */
export interface RobustnessRow {
  readonly taken:
    | { readonly as: 'stated' }
    | { readonly as: 'shape'; readonly shape: OtherShape }
    | { readonly as: 'coverageFactor'; readonly coverageFactor: number };
  readonly interval: Interval;
  readonly verdict: Verdict;
  readonly probabilityOfConformity: number | undefined;
}

/** Shapes that come from physics (a phase, a reflection) or from data, not from a choice: they are never exchanged. */
const GIVEN: readonly string[] = ['arcsine', 'mismatch', 'rayleigh', 'rice', 'normal', 'student', 'constant'];

function overLimits(shape: OtherShape, { lower, upper }: Interval): Distribution {
  if (shape === 'arcsine') return arcsine({ centre: (lower + upper) / 2, halfWidth: (upper - lower) / 2 });
  return shape === 'rectangular' ? rectangular({ lower, upper }) : triangular({ lower, upper });
}

/** The same limits with another shape between them, for every input whose shape was chosen for want of knowledge. */
export function reshaped(model: Model, shape: OtherShape): Model {
  const exchange = (input: Input): Input => {
    if (!isLimited(input) || GIVEN.includes(input.distribution.shape)) return input;
    const { standardUncertainty: _, ...rest } = input;
    return { ...rest, distribution: overLimits(shape, input.distribution.limits) };
  };
  return { ...model, inputs: model.inputs.map(exchange) };
}

/**
 * Does the verdict stand if the shapes of stated limits, or the coverage factor, had been chosen differently? The first
 * row is the measurement as stated; then all such limits rectangular, triangular and U-shaped; then factors 2 and 3 (with the
 * probabilities that belong to them). For judging a verdict, never for choosing one.
 * @throws RangeError as `evaluate` and `judge`.
 * Source: the influence of the assigned distribution is that of GUM 4.3.7 to 4.3.9 and G.5; the table is this project's own.
 */
export function robustnessOf({
  model,
  specification,
  rule,
  decidingInterval,
  coverageProbability,
  coverageFactor,
}: {
  model: Model;
  specification: Specification;
  rule: Rule;
  decidingInterval?: DecidingInterval | undefined;
  coverageProbability?: number | undefined;
  coverageFactor?: number | undefined;
}): { rows: RobustnessRow[]; steady: boolean } {
  const wish = { coverageProbability, coverageFactor };
  const row = (taken: RobustnessRow['taken'], result: Result): RobustnessRow => {
    const { interval, verdict, probabilityOfConformity } = judge({
      result,
      specification,
      rule,
      decidingInterval,
    });
    return { taken, interval, verdict, probabilityOfConformity };
  };
  const shapes: readonly OtherShape[] = ['rectangular', 'triangular', 'arcsine'];
  const rows = [
    row({ as: 'stated' }, evaluate({ model, ...wish })),
    ...shapes.map((shape) =>
      row({ as: 'shape', shape }, evaluate({ model: reshaped(model, shape), ...wish })),
    ),
    ...[2, 3].map((k) =>
      row({ as: 'coverageFactor', coverageFactor: k }, evaluate({ model, coverageFactor: k })),
    ),
  ];
  return { rows, steady: rows.every(({ verdict }) => verdict === rows[0]?.verdict) };
}
