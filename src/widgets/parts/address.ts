import { type Decoded, decode } from '../../address/decode.ts';
import { encode } from '../../address/encode.ts';
import { type AddressSpec, defaultState, type Fields, type StateOf } from '../../address/field-spec.ts';
import { mergeQuery } from '../../address/merge.ts';

/** What a query says about one widget. Never throws. */
export const readQuery = <Of extends Fields>(
  spec: AddressSpec<Of>,
  query: string,
  instance: string | undefined,
): Decoded<Of> => decode(spec, query, instance);

/** The query with this widget's part brought up to date; nothing where everything is as prepared. */
export function queryWith<Of extends Fields>({
  spec,
  state,
  query: before,
  instance,
}: {
  spec: AddressSpec<Of>;
  state: StateOf<Of>;
  query: string;
  instance: string | undefined;
}): string {
  const bare = encode(spec, defaultState(spec.fields), instance);
  const own = encode(spec, state, instance);
  const query = mergeQuery({
    query: before,
    encoded: own === bare ? '' : own,
    ...(instance !== undefined && { instance }),
  });
  return query === '' ? '' : `?${query}`;
}
