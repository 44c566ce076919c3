import type { AddressSpec } from '../../src/address/field-spec.ts';
import { sheetAddressSpec } from '../../src/bench/address-spec.ts';
import { spec as codec } from '../address/demonstration.ts';

/** Every kind of address that this site makes, with its present specification. A new kind is added here and in `addresses.ts`. */
export const kinds = {
  /** No page: one field of every type, so that the codec itself can never lose an old address. */
  codec,
  /** `/bench/#...` */
  bench: sheetAddressSpec(),
} as const satisfies Readonly<Record<string, AddressSpec>>;

export type Kind = keyof typeof kinds;
