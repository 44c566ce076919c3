import { rangeError } from '../quantity.ts';

/** What one block of trials gave: estimate, standard uncertainty and interval ends. */
export type BlockFigures = readonly number[];

/**
 * Numerical tolerance of a standard uncertainty u that is to be right to one or two significant digits (JCGM 101, 7.9.2):
 * half a unit of the last of them. 0.00035 with two digits gives 0.000005. 0 for u = 0. Unit: that of u.
 * @throws RangeError unless u is finite and >= 0.
 */
export function numericalTolerance({
  u,
  significantDigits,
}: {
  u: number;
  significantDigits: 1 | 2;
}): number {
  if (!(Number.isFinite(u) && u >= 0))
    throw rangeError({ where: 'numericalTolerance', wish: 'u must be >= 0', got: u });
  if (u === 0) return 0;
  const exponent = Number(u.toExponential(significantDigits - 1).split('e')[1]);
  // Read from text: 10 ** -7 is not the double nearest to 0.0000001 in every engine.
  return 0.5 * Number(`1e${exponent - significantDigits + 1}`);
}

/**
 * Whether results have settled (JCGM 101, 7.9.4): twice the standard deviation of the MEAN over the blocks (that of the
 * block's figures divided by the root of their number) is within the tolerance, for every figure. False for fewer than two blocks.
 */
export function hasSettled(blocks: readonly BlockFigures[], tolerance: number): boolean {
  const count = blocks.length;
  if (count < 2) return false;
  return (blocks[0] as BlockFigures).every((_, i) => {
    const figures = blocks.map((block) => block[i] as number);
    const mean = figures.reduce((sum, value) => sum + value, 0) / count;
    const squares = figures.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    return 2 * Math.sqrt(squares / (count - 1) / count) <= tolerance;
  });
}

/** Trials to a block (JCGM 101, 7.9.4 b): 10 000, or 100/(1 - p) rounded up if that is more. */
export function blockTrials(coverageProbability: number): number {
  return Math.max(10000, Math.ceil(100 / (1 - coverageProbability)));
}
