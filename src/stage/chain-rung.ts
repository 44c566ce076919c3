import { amountOf } from '../sheet/amount.ts';
import type { Sheet } from '../sheet/sheet.ts';

/** Most rungs that can be read from the back row, one above the other. */
const MOST = 7;

/** The rung that a speaker changes on the wall: the widest that is stated in dB. Undefined where the chain is too long for the wall. */
export function rungToChange(sheet: Sheet): string | undefined {
  if (sheet.links.length > MOST) return undefined;
  const [widest] = sheet.links
    .filter(({ unit }) => unit === 'dB')
    .toSorted((a, b) => amountOf(b.statement) - amountOf(a.statement));
  return widest?.id;
}
