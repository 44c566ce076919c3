import { decode } from '../../address/decode.ts';
import { encode } from '../../address/encode.ts';
import type { Fields } from '../../address/field-spec.ts';
import { encodePacked } from '../../address/pack.ts';
import { LONGEST_ADDRESS } from '../../address/repair.ts';
import { cleanLines } from '../../address/text-code.ts';
import { LOST_END } from '../../address/version.ts';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { cleanText } from '../../text/clean.ts';
import { entriesOf } from '../entries/entries-of.ts';
import { LONGEST_COLUMN } from './address-fields.ts';
import { isOfFirstVersion, sheetAddressSpec } from './address-spec.ts';
import { wordsOfVersion3 } from './address-words.ts';
import { type Carried, carriedOf, entriesIn } from './carried.ts';

/**
 * The sheet as typed, as the part of an address after `#`, packed. Undefined where it is longer than an address may be: then
 * nothing, or not every reading, would be left of it on the way.
 */
export function encodeEntries(entries: SheetEntries): string | undefined {
  const fitted = fittingAddress(entries);
  return fitted && short(encodePacked(sheetAddressSpec(), fitted, wordsOfVersion3()));
}

/** The same in plain pairs, which can be read and changed by hand, and of which a piece is still good for something. */
export function encodePlainly(entries: SheetEntries): string | undefined {
  const fitted = fittingAddress(entries);
  return fitted && short(encode(sheetAddressSpec(), fitted));
}

const short = (address: string | undefined): string | undefined =>
  address !== undefined && address.length <= LONGEST_ADDRESS ? address : undefined;

/** What an address carries of a sheet; undefined where a column is too long for any. */
function fittingAddress(entries: SheetEntries): Carried | undefined {
  const carried = carriedOf(entries);
  const isLong = carried.points.some(({ readings, reflected, riseDc, volts, amperes }) =>
    [readings, reflected, riseDc, volts, amperes].some((column) => column.length > LONGEST_COLUMN),
  );
  return isLong ? undefined : fittingAll(carried);
}

/** Every text of a sheet clean and as short as its field allows. */
function fittingAll(carried: Carried): Carried {
  const { points, links, changes, ...own } = sheetAddressSpec().fields;
  return {
    ...fitting(carried, own),
    points: carried.points.map((point) => fitting(point, points.of)),
    links: carried.links.map((link) => fitting(link, links.of)),
    changes: carried.changes.slice(-changes.maxLength).map((change) => fitting(change, changes.of)),
  };
}

/** The same texts, every one clean and as short as its field allows. */
function fitting<Of extends object>(texts: Of, fields: Fields): Of {
  const fit = ([name, value]: [string, unknown]) => {
    const field = fields[name];
    if (field?.type !== 'text' || typeof value !== 'string') return [name, value];
    const clean = field.lines ? cleanLines : cleanText;
    return [name, clean(clean(value).slice(0, field.maxLength))];
  };
  // Only texts change, and stay texts; Object.fromEntries forgets that.
  return Object.fromEntries(Object.entries(texts).map(fit)) as Of;
}

/** The part of an address after `#` that opens the bench with this, in plain pairs. @throws RangeError if it is too long for one. */
export function sheetFragment(stated: Sheet | Measurement): string {
  const address = encodePlainly(entriesOf(stated));
  if (address === undefined)
    throw new RangeError(`sheetFragment: the sheet must fit in an address, got ${stated.links.length} links`);
  return address;
}

/** What an address said: the entries, what could not be read, and whether there was a sheet at all. */
export interface OpenedAddress {
  readonly entries: SheetEntries;
  readonly problems: readonly string[];
  /** False for a place on the page (`#main`), and for no fragment at all. */
  readonly carried: boolean;
}

type CarriedFields = ReturnType<typeof sheetAddressSpec>['fields'];

/** Reads the part of an address after `#`. Never throws, whatever it is. */
export function decodeEntries(fragment: string): OpenedAddress {
  const lost = !/[#?&]?v=/.test(fragment) && isOfFirstVersion(fragment);
  const spec = sheetAddressSpec();
  const { state, problems, carried } = decode<CarriedFields>(spec, lost ? `${fragment}&v=1` : fragment);
  const told = problems.map(({ sentence }) => sentence);
  return {
    entries: entriesIn(state satisfies Carried),
    problems: lost ? [LOST_END, ...told] : told,
    carried,
  };
}
