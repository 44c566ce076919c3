import type { FunctionModel, Model } from '../model.ts';
import { rangeError } from '../quantity.ts';
import { type Approximation, derivative } from './derivative.ts';
import { centresOf, standardUncertaintyOf } from './input.ts';

/** For an input without uncertainty, a step of this much of its value (or of 1) shows the slope. */
const RELATIVE_STEP = 1e-3;
/** How often a step that leaves the domain of f is halved. */
const HALVINGS = 40;

/** f of one input, the others held; not a number outside the domain, where functions of this module throw. */
function alongInput(model: FunctionModel, centres: readonly number[], i: number) {
  return (x: number): number => {
    try {
      return model.f(centres.with(i, x));
    } catch (problem) {
      if (problem instanceof RangeError) return Number.NaN;
      throw problem;
    }
  };
}

function slopeOf(model: FunctionModel, centres: readonly number[], i: number): Approximation {
  const input = model.inputs[i];
  const x = centres[i];
  if (input === undefined || x === undefined) throw new RangeError('slopeOf: i must name an input');
  const f = alongInput(model, centres, i);
  let step = standardUncertaintyOf(input) || RELATIVE_STEP * (Math.abs(x) || 1);
  for (let n = 0; n < HALVINGS && !Number.isFinite(f(x - step) + f(x + step)); n++) step /= 2;
  const slope = derivative({ f, x, step });
  if (!Number.isFinite(slope.value))
    throw rangeError({
      where: 'sensitivitiesOf',
      wish: 'f must be finite about the estimate',
      got: input.id,
    });
  return slope;
}

/**
 * How much the output changes per unit of each input, in the order of the inputs (GUM 5.1.3): exact for a sum,
 * otherwise central differences over a standard uncertainty with an error bound.
 * @throws RangeError if the function is not finite about the estimate.
 */
export function sensitivitiesOf({ model }: { model: Model }): Approximation[] {
  if (model.kind === 'sum') return model.sensitivities.map((value) => ({ value, errorBound: 0 }));
  const centres = centresOf(model.inputs);
  return model.inputs.map((_, i) => slopeOf(model, centres, i));
}
