import { useMemo } from 'preact/hooks';
import { defaultState, type StateOf } from '../address/field-spec.ts';
import { fieldsState, type PlainFields, reduceFields } from '../widgets/parts/fields.ts';
import { useMirrored } from './mirror.ts';

/**
 * State of a widget of plain fields on the wall, where no address is read, the way to change it, and the way back to what was prepared.
 * @param begins what is prepared otherwise than the widget itself begins; the same in every drawing.
 */
export function useStageFields<Of extends PlainFields>(fields: Of, begins?: Partial<StateOf<Of>>) {
  const reduce = useMemo(() => reduceFields(fields), [fields]);
  const prepared = useMemo(() => ({ ...defaultState(fields), ...begins }), [fields]);
  const [state, send] = useMirrored(reduce, fieldsState(prepared));
  const reset = (): void => send({ type: 'reset', values: prepared });
  return [state, send, reset] as const;
}
