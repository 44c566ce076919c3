import { useMemo, useReducer } from 'preact/hooks';
import { type AddressSpec, defaultState } from '../../address/field-spec.ts';
import {
  type FieldsAction,
  type FieldsState,
  fieldsState,
  type PlainFields,
  reduceFields,
} from './fields.ts';
import { useAddress } from './use-address.ts';

/** A widget of plain fields with its state, kept in step with the address. */
export interface FieldsUse<Of extends PlainFields> {
  readonly state: FieldsState<Of>;
  readonly send: (action: FieldsAction<Of>) => void;
  /** What was wrong with the address that the reader came by. */
  readonly problems: readonly string[];
}

/** State and address of a widget of plain fields. @param spec the same object on every call. */
export function useFields<Of extends PlainFields>(
  spec: AddressSpec<Of>,
  instance: string | undefined,
): FieldsUse<Of> {
  const reduce = useMemo(() => reduceFields(spec.fields), [spec]);
  const [state, send] = useReducer(reduce, spec, ({ fields }) => fieldsState(defaultState(fields)));
  // An address that came with the reader stays as it came until something is changed, and waits while a handle is held.
  const own = useMemo(() => (state.touched && !state.held ? state.values : undefined), [state]);
  const problems = useAddress({
    spec,
    instance,
    state: own,
    open: (values) => send({ type: 'open', values }),
  });
  return { state, send, problems };
}
