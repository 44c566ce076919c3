import { type Input, rectangular, type SumModel } from '#compute';
import { letter } from './formula.ts';

/** Letter of what the inputs of a sum may be off by. */
export const halfWidthsLetter = letter('a_i', 'own', 'half-widths of the inputs');
/** Rectangular inputs of these half-widths about 0. */
export const inputs = (halfWidths: readonly number[]): Input[] =>
  halfWidths.map((halfWidth, i) => ({
    id: `${i}`,
    distribution: rectangular({ lower: -halfWidth, upper: halfWidth }),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  }));
/** Their sum. */
export const sum = (halfWidths: readonly number[]): SumModel => ({
  kind: 'sum',
  constant: 0,
  inputs: inputs(halfWidths),
  sensitivities: halfWidths.map(() => 1),
});
/** Two pads and a meter, in dB. */
export const pads = [0.5, 0.5, 2];
