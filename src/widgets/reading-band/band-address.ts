import type { Sheet } from '../../sheet/sheet.ts';
import { placedQuery, readQuery } from '../parts/address.ts';
import { bandSpec, fromAddressState, type Shown, toAddressState } from './spec.ts';

type Prepared = Shown & { readonly sheet: Sheet };

/** What a query says about a band that was prepared so, with what was wrong in it as sentences. Never throws. */
export function readBand(prepared: Prepared, query: string, instance: string | undefined) {
  const { carried, state, problems } = readQuery(bandSpec(prepared.sheet, prepared), query, instance);
  return {
    opened: carried ? fromAddressState(prepared.sheet, state) : undefined,
    problems: problems.map(({ sentence }) => sentence),
  };
}

/** The query with the band's part brought up to date, and the fragment. */
export function queryWithBand({
  prepared,
  state,
  query,
  instance,
}: {
  prepared: Prepared;
  state: Prepared;
  query: string;
  instance: string | undefined;
}): string {
  const spec = bandSpec(prepared.sheet, prepared);
  return placedQuery({ spec, state: toAddressState(prepared.sheet, state.sheet, state), query, instance });
}
