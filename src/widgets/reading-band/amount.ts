/** Least and greatest amount that a rung may add, and the step, in dB. */
export const AMOUNT = { min: 0, max: 3, step: 0.01, decimals: 2 } as const;
