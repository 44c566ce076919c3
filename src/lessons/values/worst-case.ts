import { clubSheet } from '../../sheet/club.ts';
import { wholeRowOf } from '../../sheet/evaluated-pads.ts';
import { clubRow, type PadsInARow, rootOfStated, sumOfStated } from '../../sheet/pads-in-a-row.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText, levelText, numberText, percentText } from '../../text/quantity-text.ts';
import { shareText } from '../../widgets/pads-in-a-row/words.ts';

/** The pads of the row, in dB. Invented. */
const PADS_DB = [20, 10, 10] as const;

/** Numbers of the lesson on the worst case, all from the club's row of pads. */
export function worstValues(): Readonly<Record<string, () => string>> {
  const row = clubRow();
  const { lower, upper } = specified();
  const allowed = (upper - lower) / 2;
  const most = (of: PadsInARow): number => wholeRowOf(of).halfWidth;
  const eight = { ...row, count: 8 };
  const two = { ...row, count: 2 };
  const bell: PadsInARow = { ...row, padDb: 0.1, meterDb: 1, meterSays: 'certificate' };
  const beyond = (share: number): string => percentText('shown', { percent: 100 * (1 - share), decimals: 1 });
  const lowest = PADS_DB.reduce((sum, pad) => sum + pad - row.padDb, 0);
  return {
    pad: () => band(row.padDb),
    meter: () => band(row.meterDb),
    sum: () => band(sumOfStated(row)),
    pads: () => {
      const [last, ...first] = PADS_DB.map(nominal).reverse();
      return `${first.reverse().join(', ')} and ${last ?? ''}`;
    },
    padLess: () => band(row.padDb).slice(1),
    most: () => band(most(row)),
    mostFine: () => plusMinusText('shown', { halfWidth: most(row), decimals: 2, unit: 'dB' }),
    ratio: () => times(sumOfStated(row) / most(row)),
    rare: () => shareText('shown', 1 - wholeRowOf(row).withinNineTenths),
    twoSum: () => band(sumOfStated(two)),
    twoMost: () => band(most(two)),
    twoRatio: () => times(sumOfStated(two) / most(two)),
    eightSum: () => band(sumOfStated(eight)),
    eightMost: () => band(most(eight)),
    eightRatio: () => times(sumOfStated(eight) / most(eight)),
    padsAlone: () => band(sumOfStated({ ...row, meterDb: 0 })),
    allowed: () => plusMinusText('shown', { halfWidth: allowed, decimals: 1, unit: 'dB' }),
    room: () => plusMinusText('shown', { halfWidth: allowed - most(row), decimals: 2, unit: 'dB' }),
    upper: () => levelText('shown', { levelDbm: upper, decimals: 1 }),
    lowest: () => dbText('shown', { db: lowest, decimals: 1 }),
    atMeter: () => levelText('shown', { levelDbm: upper - lowest, decimals: 1 }),
    calledU: () => `${band(sumOfStated(row))} where ${band(most(row))} hold 95\u00a0% of the rows`,
    calledLimit: () =>
      `${band(rootOfStated(row))}, and ${beyond(wholeRowOf(row).withinRoot)} of the rows lie beyond`,
    bellAdded: () =>
      `“at most ${band(sumOfStated(bell))}”, and ${beyond(wholeRowOf(bell).withinSum)} of the rows lie beyond`,
  };
}

/** Both limits of the club's specification, in dBm. */
function specified(): { readonly lower: number; readonly upper: number } {
  const { lower, upper } = clubSheet().specification;
  if (lower === undefined || upper === undefined)
    throw new RangeError('worstValues: the specification must have two limits, got one');
  return { lower, upper };
}

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const nominal = (db: number): string => dbText('shown', { db, decimals: 0 });
const times = (value: number): string => numberText('shown', { value, decimals: 1 });
