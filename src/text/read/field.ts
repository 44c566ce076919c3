import type { UnitName } from '../units.ts';
import { type ReadSpec, readQuantity } from './quantity.ts';

/** What stands in a number field: what was typed, letter by letter, and what it means or what is wrong with it. */
export type Field =
  | { readonly text: string; readonly value: number; readonly unit: UnitName }
  | { readonly text: string; readonly problem: string };

/** A field whose text is a usable number. */
export type GoodField = Extract<Field, { value: number }>;

/** Reads typed text into a field; the text itself is kept as it is. Never throws. */
export function readField(text: string, spec: ReadSpec): Field {
  const read = readQuantity(text, spec);
  return read.ok ? { text, value: read.value, unit: read.unit } : { text, problem: read.problem };
}

/** Whether the field holds a number. */
export const isGood = (field: Field): field is GoodField => 'value' in field;
