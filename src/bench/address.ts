import { decode } from '../address/decode.ts';
import { encode } from '../address/encode.ts';
import type { Fields, StateOf } from '../address/field-spec.ts';
import { LONGEST_ADDRESS } from '../address/repair.ts';
import { cleanLines } from '../address/text-code.ts';
import type { LinkEntries, SheetEntries } from '../sheet/entries.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { cleanText } from '../text/clean.ts';
import { sheetAddressSpec } from './address-spec.ts';
import { entriesOf } from './entries-of.ts';

type Spec = ReturnType<typeof sheetAddressSpec>;
type Carried = StateOf<Spec['fields']>;

/**
 * The sheet as typed, as the part of an address after `#`. Undefined where it is longer than an address may be: then
 * nothing would be left of it on the way.
 */
export function encodeEntries(entries: SheetEntries): string | undefined {
  const { fields } = sheetAddressSpec();
  const links = entries.links.map(({ id: _id, ...link }) => fitting(link, fields.links.of));
  const address = encode(sheetAddressSpec(), { ...fitting(entries, fields), links });
  return address.length > LONGEST_ADDRESS ? undefined : address;
}

/** The same entries with every text clean and as short as its field allows. */
function fitting<Of extends object>(entries: Of, fields: Fields): Of {
  const fit = ([name, value]: [string, unknown]) => {
    const field = fields[name];
    if (field?.type !== 'text' || typeof value !== 'string') return [name, value];
    const clean = field.lines ? cleanLines : cleanText;
    return [name, clean(clean(value).slice(0, field.maxLength))];
  };
  // Only texts change, and stay texts; Object.fromEntries forgets that.
  return Object.fromEntries(Object.entries(entries).map(fit)) as Of;
}

/** The part of an address after `#` that opens the bench with this sheet. @throws RangeError if it is too long for one. */
export function sheetFragment(sheet: Sheet): string {
  const address = encodeEntries(entriesOf(sheet));
  if (address === undefined)
    throw new RangeError(`sheetFragment: the sheet must fit in an address, got ${sheet.links.length} links`);
  return address;
}

/** What an address said: the entries, what could not be read, and whether there was a sheet at all. */
export interface OpenedAddress {
  readonly entries: SheetEntries;
  readonly problems: readonly string[];
  /** False for a place on the page (`#main`), and for no fragment at all. */
  readonly carried: boolean;
}

/** Reads the part of an address after `#`. Never throws, whatever it is. */
export function decodeEntries(fragment: string): OpenedAddress {
  const { state, problems, carried } = decode<Spec['fields']>(sheetAddressSpec(), fragment);
  return { entries: entriesIn(state), problems: problems.map(({ sentence }) => sentence), carried };
}

const entriesIn = (state: Carried): SheetEntries => ({
  ...state,
  links: state.links.map((link, index): LinkEntries => ({ ...link, id: `link${index + 1}` })),
});
