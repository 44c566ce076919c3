import { type Decoded, decode } from '../../address/decode.ts';
import { encode } from '../../address/encode.ts';
import { type AddressSpec, defaultState, type Fields, type StateOf } from '../../address/field-spec.ts';
import { mergeQuery } from '../../address/merge.ts';
import { addressToBe, replaceAddress } from '../../address/replace-address.ts';

/** What a query says about one widget. Never throws. */
export const readQuery = <Of extends Fields>(
  spec: AddressSpec<Of>,
  query: string,
  instance: string | undefined,
): Decoded<Of> => decode(spec, query, instance);

interface Written<Of extends Fields> {
  readonly spec: AddressSpec<Of>;
  readonly state: StateOf<Of>;
  readonly query: string;
  readonly instance: string | undefined;
}

/** The query with this widget's part brought up to date; nothing where everything is as prepared. */
export function queryWith<Of extends Fields>({ spec, state, query: before, instance }: Written<Of>): string {
  const bare = encode(spec, defaultState(spec.fields), instance);
  const own = encode(spec, state, instance);
  const query = mergeQuery({
    query: before,
    encoded: own === bare ? '' : own,
    ...(instance !== undefined && { instance }),
  });
  return query === '' ? '' : `?${query}`;
}

/**
 * The query with the place on the page that it is about: whoever is sent it sees the figure and not the top, which knows nothing of it.
 * A place that the reader has chosen stays, and a figure that stands alone needs none.
 */
export function placed(
  query: string,
  instance: string | undefined,
  { hash, pathname }: Pick<URL, 'hash' | 'pathname'> = location,
): string {
  const id = instance ?? 'figure';
  const alone = pathname.includes('/embed/') || !document.getElementById(id);
  return query + (query === '' || hash !== '' || alone ? hash : `#${id}`);
}

/** Brings this widget's part of the address up to date, and the fragment that belongs to it. */
export function writeQuery<Of extends Fields>(written: Omit<Written<Of>, 'query'>): void {
  const at = addressToBe();
  const query = queryWith({ ...written, query: at.search });
  replaceAddress(at.pathname + placed(query, written.instance, at));
}
