import type { Decimal } from '../text/style.ts';
import { chooseDecimal, DECIMAL_KEY } from './decimal.ts';

/** Keeps the choice in this browser, or where that refuses for this visit, and says so as browsers do to a site's other tabs. */
export function keepDecimal(decimal: Decimal): void {
  chooseDecimal(decimal);
  try {
    localStorage.setItem(DECIMAL_KEY, decimal);
  } catch {
    // refused: it holds for this visit
  }
  dispatchEvent(new Event('storage'));
}
