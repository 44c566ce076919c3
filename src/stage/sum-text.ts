/** A sum in the two parts that the wall writes differently: how it is reckoned, and what comes out. */
export interface SumText {
  readonly how: string;
  readonly outcome: string;
}

/** Longest text that is written as large as a number, in letters. */
const SHORT = 75;

/** Parts a sum before what its last sign of equality or colon gives, if that is short; without such a sign all of it is the outcome. */
export function sumText(formula: string): SumText {
  const at = Math.max(...[' = ', ': '].map((sign) => endOfLast(formula, sign)));
  const isShort = formula.length - at <= SHORT;
  return isShort ? { how: formula.slice(0, at), outcome: formula.slice(at) } : { how: formula, outcome: '' };
}

function endOfLast(formula: string, sign: string): number {
  const at = formula.lastIndexOf(sign);
  return at === -1 ? 0 : at + sign.length;
}
