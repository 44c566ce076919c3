import type { ComponentChild } from 'preact';
import { decode } from '../address/decode.ts';
import { type AddressSpec, defaultState } from '../address/field-spec.ts';
import { type FieldsState, fieldsState, type PlainFields } from '../widgets/parts/fields.ts';
import { type Start, startingAt } from '../widgets/parts/starting.ts';

/** Other numbers for a figure than those that it begins with: by the names of its fields, or as its address says them. */
export type Given = Start | string;

/** A figure as it begins, or with other numbers. */
export type Drawn = (given?: Given) => ComponentChild;

/** The state that a widget of plain fields begins in. @throws RangeError for an address that it does not understand, or a value that a field does not take. */
export function begun<Of extends PlainFields>(spec: AddressSpec<Of>, given?: Given): FieldsState<Of> {
  if (typeof given !== 'string') return fieldsState(defaultState(startingAt(spec, given).fields));
  const { state, problems } = decode(spec, given);
  if (problems.length > 0)
    throw new RangeError(`begun: a state must be one of the figure, got ${JSON.stringify(given)}`);
  return fieldsState(state);
}

/** What every figure of a card is told: its frame, and no words for those who do not see it, since the card has its own. */
export const onCard = { frame: 'card', name: '', description: '' } as const;
