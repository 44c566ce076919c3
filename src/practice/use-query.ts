import type { AddressSpec, Fields, StateOf } from '../address/field-spec.ts';
import { useAddress } from '../widgets/parts/use-address.ts';

interface QueryUse<Of extends Fields> {
  readonly spec: AddressSpec<Of>;
  /** What the address should carry; `undefined` where it should stay as it came. */
  readonly state: StateOf<Of> | undefined;
  /** Opens what the address brought. */
  readonly open: (state: StateOf<Of>) => void | Promise<void>;
}

/** The query of a page of practice: no second one shares it, and nothing on it is dragged, so that it follows at once. */
export const useQuery = <Of extends Fields>(use: QueryUse<Of>): readonly string[] =>
  useAddress({ ...use, instance: undefined, restMs: 0 });
