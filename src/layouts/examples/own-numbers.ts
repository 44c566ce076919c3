import { sheetFragment } from '../../bench/address/address.ts';
import { borrowFragment } from '../../borrow/address.ts';
import { type BorrowEntries, blankEntries } from '../../borrow/entries.ts';
import type { Example } from '../../examples/example.ts';
import { padMeasuredAtDc, padReadings } from '../../examples/pad-measured-at-dc.ts';

/** The pad by two direct voltages, as the page of borrowed calibrations asks for it: two readings of their own, an exact load, no last digit. */
export const padEntries = (): BorrowEntries => ({
  ...blankEntries('dc'),
  ...padReadings(),
  part: '10 dB pad',
  loadPercent: '0',
  oneMeter: 'no',
});

/** Where an example's numbers stand in fields that take the reader's own. @throws RangeError for an example that nothing takes. */
export function ownNumbersAddress(example: Example): string {
  const bench = example.bench?.();
  if (bench) return `/bench/#${sheetFragment(bench)}`;
  if (example.slug !== padMeasuredAtDc.slug)
    throw new RangeError(`ownNumbersAddress: an example must open somewhere, got ${example.slug}`);
  return `/bench/borrow/#${borrowFragment(padEntries())}`;
}
