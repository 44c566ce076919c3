import { decode } from '../address/decode.ts';
import { encode } from '../address/encode.ts';
import type { AddressSpec } from '../address/field-spec.ts';
import { LONGEST_ADDRESS } from '../address/repair.ts';
import { text } from '../bench/address/address-codes.ts';
import { cleanText } from '../text/clean.ts';
import { demonstrationCompare } from './demonstration.ts';
import { blankCompare, type CompareEntries, FEWEST_ROWS, MOST_ROWS } from './entries.ts';
import { strings } from './strings.ts';

const LONGEST_NAME = 200;
const MOST_NAMES = 50;

/** The form in an address: addresses of sheets within one of its own. */
export const compareAddressSpec = () => {
  const names = (key: string, label: string) =>
    ({
      type: 'list',
      key,
      label,
      maxLength: MOST_NAMES,
      of: { name: text('n', label, LONGEST_NAME) },
      default: [],
    }) as const;
  return {
    version: 1,
    fields: {
      rows: {
        type: 'list',
        key: 's',
        label: strings.sheets,
        maxLength: MOST_ROWS,
        of: { address: text('a', strings.address, LONGEST_ADDRESS), point: text('p', strings.point) },
        default: [],
      },
      same: names('w', strings.shared.heading),
      apart: names('x', strings.shared.heading),
    },
  } as const satisfies AddressSpec;
};

/** What stands after `#` for these entries: nothing for what the page opens with; undefined where an address cannot hold them. */
export function compareFragment(entries: CompareEntries): string | undefined {
  const encoded = ({ rows, same, apart }: CompareEntries): string =>
    encode(compareAddressSpec(), {
      rows: rows.map(({ address, point }) => ({ address: cleanText(address), point })),
      same: same.slice(0, MOST_NAMES).map((name) => ({ name })),
      apart: apart.slice(0, MOST_NAMES).map((name) => ({ name })),
    });
  if (entries.rows.some(({ address }) => address.length > LONGEST_ADDRESS)) return undefined;
  const own = encoded(entries);
  if (own === encoded(demonstrationCompare())) return '';
  return own.length > LONGEST_ADDRESS ? undefined : own;
}

/** What the part of an address after `#` opens, with what could not be read of it; no entries for a place on the page. Never throws. */
export function readCompareFragment(fragment: string): {
  readonly entries: CompareEntries | undefined;
  readonly problems: readonly string[];
} {
  const { state, problems, carried } = decode(compareAddressSpec(), fragment);
  const told = problems.map(({ sentence }) => sentence);
  if (!carried) return { entries: undefined, problems: told };
  const blanks = blankCompare().rows.slice(Math.min(state.rows.length, FEWEST_ROWS));
  const rows = [...state.rows, ...blanks].map(({ address, point }, index) => ({
    id: `sheet${index + 1}`,
    address,
    point,
  }));
  const namesOf = (list: readonly { readonly name: string }[]): readonly string[] =>
    list.map(({ name }) => name);
  return { entries: { rows, same: namesOf(state.same), apart: namesOf(state.apart) }, problems: told };
}
