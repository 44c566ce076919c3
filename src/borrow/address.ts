import { decode } from '../address/decode.ts';
import { encode } from '../address/encode.ts';
import type { AddressSpec, TextSpec } from '../address/field-spec.ts';
import { LONGEST_ADDRESS } from '../address/repair.ts';
import { choice, lines, text } from '../bench/address/address-codes.ts';
import { demonstrationEntries } from './demonstration.ts';
import { type BorrowEntries, type BorrowTextKey, blankEntries, MOST_PLACES } from './entries.ts';
import { strings } from './strings.ts';

/** Short keys of the texts; none is given away again. */
const KEYS: Readonly<Record<BorrowTextKey, string>> = {
  own: 'o',
  lender: 'l',
  date: 'd',
  conditions: 'c',
  amount: 'a',
  factor: 'k',
  lenderDrift: 'ld',
  resolution: 'r',
  temperature: 't',
  mismatch: 'm',
  other: 'x',
  scatter: 's',
  repeats: 'n',
  claimed: 'cl',
  later: 'b',
  laterAt: 'ba',
  laterTemperature: 'bt',
  laterMismatch: 'bm',
  linearity: 'bl',
  part: 'p',
  voltsIn: 'vi',
  voltsOut: 'vo',
  percent: 'pc',
  step: 'st',
  load: 'ro',
  loadPercent: 'rt',
  rated: 'pr',
  without: 'wo',
  with: 'wi',
  straightness: 'sl',
  sourceSwr: 'sa',
  receiverSwr: 'sb',
  partSwr: 'sc',
};

const LONGEST_NAME = 400;
const LONGEST_COLUMN = 20_000;
const LONG: readonly BorrowTextKey[] = ['own', 'lender', 'date', 'conditions', 'part'];
const COLUMNS: readonly BorrowTextKey[] = ['without', 'with'];

function textSpec(key: BorrowTextKey): TextSpec {
  const label = strings.labels[key];
  if (COLUMNS.includes(key)) return lines(KEYS[key], label, LONGEST_COLUMN);
  const length = LONG.includes(key) ? LONGEST_NAME : undefined;
  return { ...text(KEYS[key], label, length), default: blankEntries('dc')[key] };
}

/** The form in an address: every field as typed, so that also what cannot be used yet comes back. */
export const borrowAddressSpec = () => {
  const names = Object.keys(KEYS) as BorrowTextKey[];
  // one text a key, of which Object.fromEntries forgets the keys
  const texts = Object.fromEntries(names.map((key) => [key, textSpec(key)])) as Record<
    BorrowTextKey,
    TextSpec
  >;
  const { labels } = strings;
  return {
    version: 1,
    fields: {
      ...texts,
      kind: choice('y', labels.kind, { alternation: 'aba', dc: 'dc', swap: 'swap' }, 'alternation'),
      along: choice('w', labels.along, { level: 'l', frequency: 'f' }, 'level'),
      stated: choice('f', labels.stated, { expanded: 'exp', rectangular: 'lim' }, 'expanded'),
      oneMeter: choice('om', labels.oneMeter, { yes: 'y', no: 'n' }, 'yes'),
      places: {
        type: 'list',
        key: 'q',
        label: strings.sections.readings,
        maxLength: MOST_PLACES,
        of: {
          at: text('a', strings.at.level),
          readings: lines('m', strings.sections.readings, LONGEST_COLUMN),
        },
        default: [],
      },
    },
  } as const satisfies AddressSpec;
};

/** What stands after `#` for these entries: nothing for what the page opens with; undefined where an address cannot hold them. */
export function borrowFragment(entries: BorrowEntries): string | undefined {
  const spec = borrowAddressSpec();
  const encoded = (these: BorrowEntries): string =>
    encode(spec, { ...these, places: these.places.map(({ at, readings }) => ({ at, readings })) });
  const own = encoded(entries);
  if (own === encoded(demonstrationEntries('oneLevel'))) return '';
  return own.length > LONGEST_ADDRESS ? undefined : own;
}

/** What the part of an address after `#` opens, with what could not be read of it; no entries for a place on the page. Never throws. */
export function readBorrowFragment(fragment: string): {
  readonly entries: BorrowEntries | undefined;
  readonly problems: readonly string[];
} {
  const { state, problems, carried } = decode(borrowAddressSpec(), fragment);
  const told = problems.map(({ sentence }) => sentence);
  if (!carried) return { entries: undefined, problems: told };
  const places = state.places.length === 0 ? [{ at: '', readings: '' }] : state.places;
  return {
    entries: { ...state, places: places.map((place, index) => ({ ...place, id: `place${index + 1}` })) },
    problems: told,
  };
}
