import { fieldText } from './field-text.ts';
import type { Decimal } from './style.ts';

/** What a form holds where these keys stand is no number: names, marks, times. */
const NO_NUMBERS: readonly string[] = [
  'id',
  'title',
  'label',
  'serial',
  'certificates',
  'from',
  'log',
  'calibrated',
  'cause',
];

interface Named {
  readonly id: string;
}

const isNamed = (value: unknown): value is Named =>
  typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string';

/** The thing of a list that this one was before: the one with its id, or where there are none, the one in its place. */
const counterpart = (before: unknown, value: unknown, index: number): unknown => {
  if (!Array.isArray(before)) return undefined;
  return isNamed(value) ? before.find((each) => isNamed(each) && each.id === value.id) : before[index];
};

function spelled(value: unknown, before: unknown, decimal: Decimal): unknown {
  if (value === before) return value;
  if (typeof value === 'string') return fieldText(value, decimal);
  if (Array.isArray(value))
    return value.map((each, index) => spelled(each, counterpart(before, each, index), decimal));
  if (typeof value !== 'object' || value === null) return value;
  const was: Readonly<Record<string, unknown>> =
    typeof before === 'object' && before !== null ? { ...before } : {};
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      NO_NUMBERS.includes(key) ? part : spelled(part, was[key], decimal),
    ]),
  );
}

/**
 * A form that this site filled in, with the reader's decimal sign; what is as it was `before` stays as it is, since that may have been typed.
 * It reads back as the same numbers.
 */
export function fieldTexts<Of extends object>(entries: Of, decimal: Decimal, before?: object): Of {
  return decimal === 'point' ? entries : (spelled(entries, before, decimal) as Of);
}
