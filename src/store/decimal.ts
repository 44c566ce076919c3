import type { Decimal } from '../text/style.ts';

/** Where the choice is kept. */
export const DECIMAL_KEY = 'numbers:decimal-sign';

/** The choice of this visit, where the browser keeps nothing: the page's, since its scripts are several, each with modules of its own. */
const visit = globalThis as { decimalSign?: string };

/** The reader's decimal sign: as kept, or as chosen since the page was opened where the browser refuses; else a point. */
export function keptDecimal(): Decimal {
  let chosen = visit.decimalSign;
  try {
    chosen = localStorage.getItem(DECIMAL_KEY) ?? chosen;
  } catch {
    // refused: the choice of this visit holds
  }
  return chosen === 'comma' ? chosen : 'point';
}

/** Lets a choice hold for this visit, whatever the browser keeps. */
export function chooseDecimal(decimal: Decimal): void {
  visit.decimalSign = decimal;
}
