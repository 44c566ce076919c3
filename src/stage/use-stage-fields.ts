import { useMemo } from 'preact/hooks';
import { defaultState, type StateOf } from '../address/field-spec.ts';
import { fieldsState, type PlainFields, reduceFields } from '../widgets/parts/fields.ts';
import { useMirrored } from './mirror.ts';

/** State of a widget of plain fields on the wall, where no address is read. `prepared` differs from its own beginning. */
export function useStageFields<Of extends PlainFields>(
  fields: Of,
  prepared: StateOf<Of> = defaultState(fields),
) {
  const reduce = useMemo(() => reduceFields(fields), [fields]);
  return useMirrored(reduce, fieldsState(prepared));
}
