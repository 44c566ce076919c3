/** Decimals of a limit written into a figure: tenths, or hundredths where it has them. */
export const limitDecimals = (limit: number): number =>
  Math.abs(limit - Number(limit.toFixed(1))) < 1e-9 ? 1 : 2;
