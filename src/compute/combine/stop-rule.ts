/** What one block of trials gave: estimate, standard uncertainty and interval ends. */
export type BlockFigures = readonly number[];

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
  // 1 - 0.9999 is not quite 0.0001: a millionth less, so that rounding adds no trial.
  return Math.max(10000, Math.ceil(100 / (1 - coverageProbability) - 1e-6));
}
