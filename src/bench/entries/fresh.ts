import { blankSheet } from '../../sheet/blank-sheet.ts';
import { clubMeasurement } from '../../sheet/club-measurement.ts';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import { usualLinks } from '../../sheet/method-links.ts';
import { entriesOf, linkEntries } from './entries-of.ts';

/** An empty sheet by a method: nothing but its usual links, each marked as assumed. */
export const freshEntries = (method: MethodKind): SheetEntries => ({
  ...blankSheet(method),
  delivery: method === 'inLine' ? 'net' : 'intoIdeal',
  links: usualLinks(method).map(linkEntries),
});

/** What the bench opens with: the club's demonstration transmitter, every value invented. */
export const demonstrationEntries = (): SheetEntries => entriesOf(clubMeasurement('padsIntoMeter'));
