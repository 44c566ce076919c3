import type { Member } from '../distribution/standard.ts';
import type { FunctionModel, Input, SumModel } from '../model.ts';
import { rangeError } from '../quantity.ts';
import { choleskyFactor, correlationMatrix } from './correlation.ts';
import { addScaled, stretch } from './rows.ts';
import type { Source } from './source.ts';
import { fillBell } from './ziggurat.ts';

/** Values of one input, trial by trial: location + scale x z. */
export interface Column {
  readonly z: Float64Array;
  readonly location: number;
  readonly scale: number;
}

export type Draw = () => void;

/** Columns of some inputs, and what draws the next trials into them. */
export interface Drawn {
  readonly columns: readonly Column[];
  readonly draw: Draw;
}

/** Inputs under one cause: one uniform rank for all of them, turned into each one's quantile. */
export function comonotone(inputs: readonly Input[], rows: number, { random }: Source): Drawn {
  const columns = inputs.map(() => ({ z: new Float64Array(rows), location: 0, scale: 1 }));
  const draw = () => {
    for (let k = 0; k < rows; k++) {
      const rank = random() || 2 ** -54;
      inputs.forEach(({ distribution }, i) => {
        (columns[i] as Column).z[k] = distribution.quantile(rank);
      });
    }
  };
  return { columns, draw };
}

/** Normal inputs with stated coefficients: independent normal values mixed by the Cholesky factor (JCGM 101, 6.4.8.2). */
export function correlated(
  model: SumModel | FunctionModel,
  inputs: readonly Input[],
  rows: number,
  { supply, bell }: Source,
): Drawn {
  for (const { id, distribution } of inputs)
    if (distribution.shape !== 'normal')
      throw rangeError({ where: 'simulate', wish: 'correlated inputs must be normal', got: id });
  const factor = choleskyFactor(correlationMatrix({ inputs, correlations: model.correlations }));
  const columns = inputs.map(({ distribution }) => {
    const { location, scale } = distribution as Member;
    return { z: new Float64Array(rows), location, scale };
  });
  const ziggurat = bell(Number.POSITIVE_INFINITY);
  const mixed = columns.map(({ z }) => z);
  const draw = () => {
    for (const z of mixed) fillBell(z, supply, ziggurat);
    // From the last down: each is mixed of itself and those before it, which are still as they were drawn.
    for (let i = mixed.length - 1; i >= 0; i--) {
      const z = mixed[i] as Float64Array;
      stretch(z, factor[i]?.[i] ?? 0);
      for (let j = 0; j < i; j++) addScaled(z, mixed[j] as Float64Array, factor[i]?.[j] ?? 0);
    }
  };
  return { columns, draw };
}
