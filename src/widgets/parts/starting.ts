import type { AddressSpec, FieldSpec } from '../../address/field-spec.ts';
import type { PlainFields } from './fields.ts';

/** Values that a page has a widget begin with instead of the prepared ones, by the names of its fields. */
export type Start = Readonly<Record<string, number | string>>;

/** Whether a field may hold a value: a number between its ends, or one of its choices. */
function holds(field: FieldSpec, value: number | string): boolean {
  if (field.type === 'number') return typeof value === 'number' && value >= field.min && value <= field.max;
  return field.type === 'choice' && typeof value === 'string' && Object.hasOwn(field.choices, value);
}

/**
 * The specification of a widget that begins with other values: what is prepared, what "as it was" leads back to, and what an
 * address need not say.
 * @throws RangeError for a field that it has not, or a value that the field does not take.
 */
export function startingAt<Of extends PlainFields>(
  spec: AddressSpec<Of>,
  start: Start | undefined,
): AddressSpec<Of> {
  if (start === undefined) return spec;
  for (const [name, value] of Object.entries(start)) {
    const field = spec.fields[name];
    if (field === undefined || !holds(field, value))
      throw new RangeError(`startingAt: ${name} must be a field that takes ${value}, got none`);
  }
  const fields = Object.entries(spec.fields).map(([name, field]) => [
    name,
    Object.hasOwn(start, name) ? { ...field, default: start[name] } : field,
  ]);
  // The same fields with other defaults of the same kinds: checked above, but lost on the way through entries.
  return { ...spec, fields: Object.fromEntries(fields) as Of };
}
