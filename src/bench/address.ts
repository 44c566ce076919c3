import { decode } from '../address/decode.ts';
import { encode } from '../address/encode.ts';
import type { StateOf } from '../address/field-spec.ts';
import { LONGEST_ADDRESS } from '../address/repair.ts';
import type { LinkEntries, SheetEntries } from '../sheet/entries.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { cleanText } from '../text/clean.ts';
import { sheetAddressSpec } from './address-spec.ts';
import { entriesOf } from './entries-of.ts';

type Spec = ReturnType<typeof sheetAddressSpec>;
type Carried = StateOf<Spec['fields']>;

/** Stands for a line end in an address, whose texts have one line. */
const LINE_END = '|';

/**
 * The sheet as typed, as the part of an address after `#`. Undefined where it is longer than an address may be: then
 * nothing would be left of it on the way.
 */
export function encodeEntries(entries: SheetEntries): string | undefined {
  const spec = sheetAddressSpec();
  const fields: Record<string, { readonly type: string; readonly maxLength?: number }> = spec.fields;
  const ofLink: typeof fields = spec.fields.links.of;
  const links = entries.links.map(({ id: _id, ...link }) => fitting(link, ofLink));
  const readings = entries.readings.replace(/\r\n|\r|\n/g, LINE_END).replaceAll('\t', ';');
  const address = encode(spec, { ...fitting({ ...entries, readings }, fields), links });
  return address.length > LONGEST_ADDRESS ? undefined : address;
}

/** The same entries with every text clean and as short as its field allows. */
function fitting<Of extends object>(
  entries: Of,
  fields: Readonly<Record<string, { readonly type: string; readonly maxLength?: number }>>,
): Of {
  const fit = ([name, value]: [string, unknown]) => {
    const field = fields[name];
    const isText = field?.type === 'text' && typeof value === 'string';
    return [name, isText ? cleanText(cleanText(value).slice(0, field.maxLength)) : value];
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
  readings: state.readings.replaceAll(LINE_END, '\n'),
  links: state.links.map((link, index): LinkEntries => ({ ...link, id: `link${index + 1}` })),
});
