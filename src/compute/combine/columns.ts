import type { Distribution } from '../distribution/distribution.ts';
import { isMember, type Member } from '../distribution/standard.ts';
import type { FunctionModel, Input, SumModel } from '../model.ts';
import { rangeError } from '../quantity.ts';
import type { SeededRandom } from '../random.ts';
import { fillCurvilinear, fillTrapezoid, fillUniform } from './fill.ts';
import { type Source, sourceOf } from './source.ts';
import { type Column, comonotone, correlated, type Draw, type Drawn } from './tied-columns.ts';
import { fillArcsine } from './u-shape.ts';
import { fillBell } from './ziggurat.ts';

/** Columns of all inputs, in their order, and what draws the next trials into them. */
export interface Columns {
  readonly columns: readonly Column[];
  draw(): void;
}

/** From so many degrees of freedom on, t is cut into layers; below, its tails are too wide for that. */
const LEAST_DEGREES = 1;

/** Fills a column with values of a standard shape; other shapes are asked for one value at a time. */
function drawStandard({ standard }: Member, z: Float64Array, { supply, bell, sines, random }: Source): Draw {
  const { shape, degreesOfFreedom = Number.POSITIVE_INFINITY, limit } = standard;
  if (shape === 'normal' || (shape === 'student' && degreesOfFreedom >= LEAST_DEGREES)) {
    const ziggurat = bell(degreesOfFreedom);
    return () => fillBell(z, supply, ziggurat);
  }
  switch (shape) {
    case 'rectangular':
      return () => fillUniform(z, supply);
    case 'triangular':
      return () => fillTrapezoid(z, supply, { wide: 0.5, narrow: 0.5 });
    case 'arcsine': {
      const table = sines();
      return () => fillArcsine(z, supply, table);
    }
    case 'curvilinear':
      return () => fillCurvilinear(z, supply, 2 - limit);
    default:
      return () => {
        for (let k = 0; k < z.length; k++) z[k] = standard.sample(random);
      };
  }
}

/** One input on its own. */
function alone(distribution: Distribution, rows: number, source: Source): { column: Column; draw: Draw } {
  const z = new Float64Array(rows);
  if (isMember(distribution)) {
    const { location, scale } = distribution;
    return { column: { z, location, scale }, draw: drawStandard(distribution, z, source) };
  }
  const draw = () => {
    for (let k = 0; k < rows; k++) z[k] = distribution.sample(source.random);
  };
  return { column: { z, location: 0, scale: 1 }, draw };
}

/** Ids tied to another input by a coefficient other than 0. */
function correlatedIds(model: SumModel | FunctionModel): ReadonlySet<string> {
  return new Set((model.correlations ?? []).flatMap(({ a, b, r }) => (r === 0 ? [] : [a, b])));
}

/**
 * Prepares columns of `rows` trials for the inputs of a model that has been checked.
 * @throws RangeError if an input with a coefficient other than 0 is not normal, or has a cause as well.
 */
export function columnsOf(model: SumModel | FunctionModel, rows: number, random: SeededRandom): Columns {
  const source = sourceOf(random, rows);
  const columns = new Map<Input, Column>();
  const draws: Draw[] = [];
  const tied = correlatedIds(model);
  const take = (inputs: readonly Input[], { columns: made, draw }: Drawn) => {
    inputs.forEach((input, i) => {
      columns.set(input, made[i] as Column);
    });
    draws.push(draw);
  };
  for (const cause of new Set(
    model.inputs.flatMap(({ cause: name }) => (name === undefined ? [] : [name])),
  )) {
    const inputs = model.inputs.filter((input) => input.cause === cause);
    const both = inputs.find(({ id }) => tied.has(id));
    if (both)
      throw rangeError({
        where: 'simulate',
        wish: 'an input must not have both a cause and an r',
        got: both.id,
      });
    take(inputs, comonotone(inputs, rows, source));
  }
  const normals = model.inputs.filter(({ id }) => tied.has(id));
  if (normals.length > 0) take(normals, correlated(model, normals, rows, source));
  for (const input of model.inputs) {
    if (columns.has(input)) continue;
    const { column, draw } = alone(input.distribution, rows, source);
    take([input], { columns: [column], draw });
  }
  return {
    columns: model.inputs.map((input) => columns.get(input) as Column),
    draw: () => {
      for (const draw of draws) draw();
    },
  };
}
