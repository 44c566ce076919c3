/** A sum in the two parts that the wall writes differently: how it is reckoned, and what comes out. */
export interface SumText {
  readonly how: string;
  readonly outcome: string;
}

/** Longest text that is an outcome by itself, in letters. */
const SHORT = 40;

/** Parts a sum before what its last sign of equality gives; one without it is an outcome if it is short. */
export function sumText(formula: string): SumText {
  const at = formula.lastIndexOf(' = ');
  if (at !== -1) return { how: formula.slice(0, at + 3), outcome: formula.slice(at + 3) };
  return formula.length <= SHORT ? { how: '', outcome: formula } : { how: formula, outcome: '' };
}
