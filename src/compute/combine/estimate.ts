import type { Model } from '../model.ts';
import { rangeError } from '../quantity.ts';
import { centresOf } from './input.ts';

/** The output at the centres of all inputs. @throws RangeError unless finite. */
export function estimateOf(model: Model): number {
  const centres = centresOf(model.inputs);
  const y =
    model.kind === 'function'
      ? model.f(centres)
      : centres.reduce((sum, x, i) => sum + x * (model.sensitivities[i] ?? 0), model.constant);
  if (!Number.isFinite(y)) throw rangeError({ where: 'estimateOf', wish: 'output must be finite', got: y });
  return y;
}
