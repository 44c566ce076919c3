import type { Decimal } from '../text/style.ts';

const KEY = 'numbers:decimal-sign';

/** What browsers say to the other tabs of a site when something that is kept has changed; said here to this page as well. */
const CHANGED = 'storage';

/** The choice of this visit, where the browser keeps nothing. */
let chosen: string | null = null;

/** The reader's decimal sign: as kept, or as chosen since the page was opened where the browser refuses; else a point. */
export function keptDecimal(): Decimal {
  let kept = chosen;
  try {
    kept = localStorage.getItem(KEY) ?? chosen;
  } catch {
    // refused: the choice of this visit holds
  }
  return kept === 'comma' ? kept : 'point';
}

/** Keeps the choice in this browser and tells whoever listens; false where the browser refuses: then it holds for this visit. */
export function keepDecimal(decimal: Decimal): boolean {
  let kept = true;
  chosen = decimal;
  try {
    localStorage.setItem(KEY, decimal);
  } catch {
    kept = false;
  }
  dispatchEvent(new Event(CHANGED));
  return kept;
}

/** Calls whenever the choice may have changed, in this page or in another tab; answers how to stop that. */
export function onDecimal(listener: () => void): () => void {
  addEventListener(CHANGED, listener);
  return () => removeEventListener(CHANGED, listener);
}
