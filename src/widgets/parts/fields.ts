import type { ChoiceSpec, Fields, NumberSpec, StateOf } from '../../address/field-spec.ts';

/** Fields of a widget that is made of numbers and choices alone, by the name of the state's property. */
export type PlainFields = Readonly<Record<string, NumberSpec | ChoiceSpec>>;

/** The state of such a widget: everything that it shows follows from `values` and, for the ghost, `before`. */
export interface FieldsState<Of extends Fields> {
  readonly values: StateOf<Of>;
  /** Values before the last change: what a ghost shows. */
  readonly before: StateOf<Of> | undefined;
  /** While a handle is held: the values to return to on cancel, by which axes keep still under the pointer. */
  readonly held: StateOf<Of> | undefined;
  /** Whether the reader has changed anything since the state was opened: only then does the address follow. */
  readonly touched: boolean;
}

export type FieldsAction<Of extends Fields> =
  /** A field was typed, stepped, slid, pulled or chosen. */
  | { readonly type: 'set'; readonly name: string; readonly value: number | string }
  | { readonly type: 'grasp' }
  | { readonly type: 'release' }
  | { readonly type: 'cancel' }
  /** Everything back as prepared. */
  | { readonly type: 'reset'; readonly values: StateOf<Of> }
  /** A state that an address brought: what was changed before it was read stays as it was changed. */
  | { readonly type: 'open'; readonly values: StateOf<Of> };

/** The state in which nothing has been changed yet. */
export const fieldsState = <Of extends Fields>(values: StateOf<Of>): FieldsState<Of> => ({
  values,
  before: undefined,
  held: undefined,
  touched: false,
});

/** The nearest number on the grid of steps within a field's limits; `fallback` for what is no number. */
export function onStep({ min, max, step, decimals }: NumberSpec, value: number, fallback: number): number {
  if (Number.isNaN(value)) return fallback;
  const within = Math.min(max, Math.max(min, value));
  return Math.min(max, Math.max(min, Number((Math.round(within / step) * step).toFixed(decimals))));
}

/** The value that a field takes when this one is wished: the nearest number allowed, a known code, or what it was. */
function taken(field: NumberSpec | ChoiceSpec, wish: number | string, was: number | string): number | string {
  if (field.type === 'number')
    return typeof wish === 'number' && typeof was === 'number' ? onStep(field, wish, was) : was;
  return typeof wish === 'string' && Object.hasOwn(field.choices, wish) ? wish : was;
}

function opened<Of extends PlainFields>(
  fields: Of,
  { values, held }: FieldsState<Of>,
  brought: StateOf<Of>,
): FieldsState<Of> {
  const own = Object.entries(values).filter(([name, value]) => !Object.is(value, fields[name]?.default));
  // values of the same fields, which Object.fromEntries forgets
  const both = { ...brought, ...(Object.fromEntries(own) as Partial<StateOf<Of>>) };
  return { values: both, before: undefined, held: held && brought, touched: true };
}

/**
 * The reducer of a widget with these fields. Total and pure: an unknown name changes nothing, an impossible number becomes the
 * nearest allowed one, an unknown code leaves the choice as it was.
 */
export const reduceFields =
  <Of extends PlainFields>(fields: Of) =>
  (state: FieldsState<Of>, action: FieldsAction<Of>): FieldsState<Of> => {
    switch (action.type) {
      case 'set': {
        const field = Object.hasOwn(fields, action.name) ? fields[action.name] : undefined;
        const was = state.values[action.name];
        if (field === undefined || was === undefined) return state;
        const value = taken(field, action.value, was);
        const before = state.held ?? (Object.is(value, was) ? state.before : state.values);
        return { ...state, values: { ...state.values, [action.name]: value }, before, touched: true };
      }
      case 'grasp':
        return { ...state, before: state.values, held: state.values };
      case 'release':
        return { ...state, held: undefined, touched: state.touched || state.held !== undefined };
      case 'cancel':
        return state.held ? { ...state, values: state.held, before: undefined, held: undefined } : state;
      case 'reset':
        return { values: action.values, before: undefined, held: undefined, touched: true };
      case 'open':
        return state.touched ? opened(fields, state, action.values) : fieldsState(action.values);
    }
  };
