import { fieldTexts } from '../../text/field-texts.ts';
import type { Decimal } from '../../text/style.ts';
import type { BenchAction } from './actions.ts';
import { reduceBench } from './state.ts';
import type { BenchState } from './state.types.ts';

/** What fills whole forms, and what changes some fields of one. */
const FILLS: ReadonlySet<BenchAction['type']> = new Set(['demonstration', 'fresh']);
const WRITES: ReadonlySet<BenchAction['type']> = new Set([
  ...FILLS,
  'chooseMethod',
  'takeInstrument',
  'pull',
]);

/** Whether the demonstration stands there as the page was written with it. */
const isWritten = ({ sheet, past }: BenchState): boolean => sheet === 0 && past.length === 0;

/** The state as it is shown: what this site put into the fields has the reader's decimal sign. */
export function spelledState(state: BenchState, decimal: Decimal): BenchState {
  if (decimal === 'point' || !isWritten(state)) return state;
  return { ...state, entries: fieldTexts(state.entries, decimal) };
}

/** The bench's reducer for a reader with this decimal sign: what was typed stays as typed, what the site fills in has the sign. */
export function benchIn(decimal: Decimal): typeof reduceBench {
  if (decimal === 'point') return reduceBench;
  return (state, action) => {
    const from = spelledState(state, decimal);
    const next = reduceBench(from, action);
    if (next.entries === from.entries) return { ...next, entries: state.entries };
    if (!WRITES.has(action.type)) return next;
    const before = FILLS.has(action.type) ? undefined : from.entries;
    return { ...next, entries: fieldTexts(next.entries, decimal, before) };
  };
}
