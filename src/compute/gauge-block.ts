import { componentOf } from './component.ts';
import { expansionUm, REFERENCE_CELSIUS } from './length.ts';
import type { Input, SumModel } from './model.ts';
import { finite, positive, rangeError } from './quantity.ts';
import type { Statement } from './statement.ts';

/** A gauge block as its certificate states it. */
export interface GaugeBlock {
  readonly id: string;
  readonly nominalMm: number;
  /** Central length less nominal, at 20 degrees, in micrometres. */
  readonly deviationUm: number;
  /** What is stated of that deviation, in micrometres. */
  readonly statement: Statement;
  /** Name of a cause shared with other blocks, for example one standard that all were compared with. */
  readonly cause?: string;
}

/** A value and what is stated about it, both in one unit. */
export interface StatedValue {
  readonly value: number;
  readonly statement: Statement;
  readonly cause?: string;
}

/** Blocks wrung together, with what acts on all of them. */
export interface BlockStack {
  readonly blocks: readonly GaugeBlock[];
  /** Thickness of one wringing film, in micrometres; there is one fewer than blocks. */
  readonly filmUm: StatedValue;
  /** Temperature of the stack, in degrees Celsius. */
  readonly temperatureC: StatedValue;
  /** Linear coefficient of expansion, per kelvin. */
  readonly expansionPerK: StatedValue;
}

function inputOf(id: string, { statement, cause }: { statement: Statement; cause?: string }): Input {
  return componentOf({ id, statement, unit: 'own', cause });
}

/**
 * The length of a stack at its temperature less its nominal length, in micrometres, as a sum: deviations of the blocks,
 * films between them, expansion L alpha (t - 20). Inputs: each block's id, `film1` on, `temperature` in kelvin,
 * `expansion` per kelvin; the last two enter to first order.
 * @throws RangeError without a block, or for a nominal length not above zero.
 * Source: GUM H.1 for the form of the expansion terms; films by common practice.
 */
export function stackModel({ blocks, filmUm, temperatureC, expansionPerK }: BlockStack): SumModel {
  const where = 'stackModel';
  if (blocks.length === 0) throw rangeError({ where, wish: 'blocks must hold at least one', got: [] });
  const lengthMm = blocks.reduce((sum, block) => sum + positive(where, 'nominalMm', block.nominalMm), 0);
  const films = blocks.slice(1).map((_, i) => `film${i + 1}`);
  const deviationK = temperatureC.value - REFERENCE_CELSIUS;
  const expansion = expansionUm({
    lengthMm,
    expansionPerK: expansionPerK.value,
    temperatureC: temperatureC.value,
  });
  const deviations = blocks.reduce((sum, block) => sum + finite(where, 'deviationUm', block.deviationUm), 0);
  return {
    kind: 'sum',
    constant: deviations + films.length * finite(where, 'filmUm.value', filmUm.value) + expansion,
    inputs: [
      ...blocks.map((block) => inputOf(block.id, block)),
      ...films.map((id) => inputOf(id, filmUm)),
      inputOf('temperature', temperatureC),
      inputOf('expansion', expansionPerK),
    ],
    sensitivities: [
      ...blocks.map(() => 1),
      ...films.map(() => 1),
      1000 * lengthMm * expansionPerK.value,
      1000 * lengthMm * deviationK,
    ],
  };
}

/**
 * The difference of two sums: inputs of `a` as they are and of `b` with their sign turned, their ids told apart by the
 * prefixes `a.` and `b.`. What both share by name of cause cancels as far as it is equal.
 * Source: a difference is linear.
 */
export function differenceModel({ a, b }: { a: SumModel; b: SumModel }): SumModel {
  const named = (prefix: string, model: SumModel): Input[] =>
    model.inputs.map((input) => ({ ...input, id: `${prefix}.${input.id}` }));
  const correlations = (prefix: string, model: SumModel) =>
    (model.correlations ?? []).map(({ a: one, b: other, r }) => ({
      a: `${prefix}.${one}`,
      b: `${prefix}.${other}`,
      r,
    }));
  return {
    kind: 'sum',
    constant: a.constant - b.constant,
    inputs: [...named('a', a), ...named('b', b)],
    sensitivities: [...a.sensitivities, ...b.sensitivities.map((s) => 0 - s)],
    correlations: [...correlations('a', a), ...correlations('b', b)],
  };
}
