import type { Member } from '../distribution/standard.ts';
import type { FunctionModel, Input, SumModel } from '../model.ts';
import { rangeError } from '../quantity.ts';
import type { SeededRandom } from '../random.ts';
import { choleskyFactor, correlationMatrix } from './correlation.ts';
import type { Words } from './words.ts';
import { fillNormal, type Ziggurat } from './ziggurat.ts';

/** Values of one input, trial by trial: location + scale x z. */
export interface Column {
  readonly z: Float64Array;
  readonly location: number;
  readonly scale: number;
}

/** Where random values come from. */
export interface Source {
  readonly supply: Words;
  readonly table: Ziggurat;
  readonly random: SeededRandom;
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
  { supply, table }: Source,
): Drawn {
  for (const { id, distribution } of inputs)
    if (distribution.shape !== 'normal')
      throw rangeError({ where: 'simulate', wish: 'correlated inputs must be normal', got: id });
  const ids = new Set(inputs.map(({ id }) => id));
  const correlations = (model.correlations ?? []).filter(({ a, b }) => ids.has(a) && ids.has(b));
  const factor = choleskyFactor(correlationMatrix({ inputs, correlations }));
  const columns = inputs.map(({ distribution }) => {
    const { location, scale } = distribution as Member;
    return { z: new Float64Array(rows), location, scale };
  });
  const row = new Float64Array(inputs.length);
  const draw = () => {
    for (const { z } of columns) fillNormal(z, supply, table);
    for (let k = 0; k < rows; k++) {
      columns.forEach(({ z }, i) => {
        row[i] = z[k] as number;
      });
      columns.forEach(({ z }, i) => {
        let sum = 0;
        for (let j = 0; j <= i; j++) sum += (factor[i]?.[j] ?? 0) * (row[j] as number);
        z[k] = sum;
      });
    }
  };
  return { columns, draw };
}
