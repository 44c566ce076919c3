import { fieldTexts } from '../text/field-texts.ts';
import type { Decimal } from '../text/style.ts';
import { type BorrowState, reduceBorrow } from './state.ts';

/** Whether the demonstration stands there as the page was written with it. */
const isWritten = ({ past }: BorrowState): boolean => past.length === 0;

/** The state as it is shown: what this site put into the fields has the reader's decimal sign. */
export function spelledBorrow(state: BorrowState, decimal: Decimal): BorrowState {
  if (decimal === 'point' || !isWritten(state)) return state;
  return { ...state, entries: fieldTexts(state.entries, decimal) };
}

/** The page's reducer for a reader with this decimal sign: what was typed stays as typed, what the site fills in has the sign. */
export function borrowIn(decimal: Decimal): typeof reduceBorrow {
  if (decimal === 'point') return reduceBorrow;
  return (state, action) => {
    const from = spelledBorrow(state, decimal);
    const next = reduceBorrow(from, action);
    if (next.entries === from.entries) return { ...next, entries: state.entries };
    const fills = action.type === 'demonstration' || action.type === 'fresh';
    return fills ? { ...next, entries: fieldTexts(next.entries, decimal) } : next;
  };
}
