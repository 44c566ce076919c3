import { cleanText, orList, quoted } from '../text/clean.ts';
import { quantityText } from '../text/quantity-text.ts';
import { kindOf } from '../text/read/kind.ts';
import { limitProblem } from '../text/read/limit.ts';
import { readQuantity } from '../text/read/quantity.ts';
import type { ChoiceSpec, MaybeSpec, NumberSpec, ScalarSpec, TextSpec } from './field-spec.ts';
import { cleanLines, decodeText, encodeText } from './text-code.ts';

/** What one value of an address means; with a problem, the value that stands instead. */
export interface Decoded {
  readonly value: number | string | undefined;
  readonly problem?: string;
}

const NUMBER = /^-?\d+(\.\d+)?(e-?\d+)?$/i;

/** Shortest digits that give the same double back; `e21` for `e+21`, since a plus is a space to some. */
const encodeNumber = (value: number): string =>
  Object.is(value, -0) ? '-0' : String(value).replace('+', '');

/** What forbids a value, or undefined. */
export function scalarFault(field: ScalarSpec, value: unknown): string | undefined {
  switch (field.type) {
    case 'number':
      return numberFault(field, value);
    case 'maybe':
      return value === undefined ? undefined : numberFault(field, value);
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(field.choices, value)
        ? undefined
        : 'is no known code';
    case 'text':
      return textFault(field, value);
  }
}

const clean = ({ lines }: TextSpec, text: string): string => (lines ? cleanLines(text) : cleanText(text));

function textFault(field: TextSpec, value: unknown): string | undefined {
  if (typeof value !== 'string' || clean(field, value) !== value)
    return field.lines ? 'is not clean text' : 'is not one line of clean text';
  return value.length > field.maxLength ? `is longer than ${field.maxLength}` : undefined;
}

function numberFault({ min, max, whole }: NumberSpec | MaybeSpec, value: unknown): string | undefined {
  if (typeof value !== 'number' || !Number.isFinite(value)) return 'is not a finite number';
  if (value < min || value > max) return `must be from ${min} to ${max}`;
  return whole === true && !Number.isInteger(value) ? 'must be whole' : undefined;
}

/** An allowed value in safe characters. */
export function encodeScalar(field: ScalarSpec, value: number | string | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return encodeNumber(value);
  return field.type === 'choice' ? (field.choices[value] ?? '') : encodeText(value);
}

/** Reads one value. Never throws. */
export function decodeScalar(field: ScalarSpec, value: string): Decoded {
  switch (field.type) {
    case 'number':
      return decodeNumber(field, value);
    case 'maybe':
      return value === '' ? { value: undefined } : decodeNumber(field, value);
    case 'choice':
      return decodeChoice(field, value);
    case 'text':
      return decodeLine(field, value);
  }
}

function decodeNumber(field: NumberSpec | MaybeSpec, text: string): Decoded {
  const unit = kindOf(field.kind).base;
  const value = Number(text);
  const problem = NUMBER.test(text) ? limitProblem({ value, unit }, field, text) : undefined;
  if (NUMBER.test(text) && problem === undefined) return { value };
  // Typed by hand: 1,5 or 23dBm are understood as in any number field.
  const read = problem === undefined ? readQuantity(text, field) : { ok: false as const, problem };
  if (read.ok && read.unit === unit) return { value: read.value };
  const fault = read.ok ? `${quoted(text)} has another unit.` : read.problem;
  return { value: field.default, problem: `${field.label}: ${fault} ${standsInstead(field)}` };
}

/** "20 dB stands instead." */
function standsInstead(field: NumberSpec | MaybeSpec): string {
  if (field.default === undefined) return 'It is left open.';
  const { kind, decimals, default: value } = field;
  return `${quantityText('shown', { value, decimals, unit: kindOf(kind).base })} stands instead.`;
}

function decodeChoice(field: ChoiceSpec, value: string): Decoded {
  const found = Object.entries(field.choices).find(([, short]) => short === value.toLowerCase());
  if (found !== undefined) return { value: found[0] };
  const known = orList(Object.values(field.choices));
  return {
    value: field.default,
    problem: `${field.label}: ${quoted(value)} is not among ${known}. ${field.choices[field.default]} stands instead.`,
  };
}

function decodeLine(field: TextSpec, value: string): Decoded {
  const { text, damaged } = decodeText(value, field.lines);
  const cut = clean(field, text.slice(0, field.maxLength));
  if (text.length > field.maxLength)
    return {
      value: cut,
      problem: `${field.label}: the text is longer than ${field.maxLength} letters and was cut.`,
    };
  return damaged
    ? { value: cut, problem: `${field.label}: the text was damaged on its way; what could be read stands.` }
    : { value: cut };
}
