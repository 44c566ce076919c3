import { orList, quoted } from '../clean.ts';
import { quantityText } from '../quantity-text.ts';
import { type UnitName, unitText } from '../units.ts';
import { type DecimalMark, readDecimal } from './decimal.ts';
import { type Kind, type KindName, kindOf } from './kind.ts';
import { limitProblem } from './limit.ts';
import { normalise } from './normalise.ts';
import { unitOf } from './spelling.ts';

/** What a reader may type in one place. `min` and `max` are in the kind's own unit. */
export interface ReadSpec {
  readonly kind: KindName;
  readonly min: number;
  readonly max: number;
  /** Decimals with which the limits are named. */
  readonly decimals: number;
  /** Whether only whole numbers make sense (a count). */
  readonly whole?: boolean;
}

/** A number in `unit`, which is the kind's own, or the typed one where the kind keeps it; or a sentence on what is wrong. */
export type Read =
  | { readonly ok: true; readonly value: number; readonly unit: UnitName }
  | { readonly ok: false; readonly problem: string };

/** What the place around a number says about it. */
export interface Surroundings {
  /** How decimals are marked there. */
  readonly mark?: DecimalMark | undefined;
  /** The unit of numbers that have none. */
  readonly unit?: UnitName | undefined;
}

/** More than this is no number that a person types. */
const LONGEST = 60;

const PARTS = /^(\u00b1)? ?([+-])? ?(\d[\d.,' ]*|[.,]\d+)(?:e([+-]?\d{1,4}))? ?([^\d].*)?$/i;
const NOT_FINITE = /^[+-]? ?(nan|inf|infinity|\u221e|unlimited)$/i;

const bad = (problem: string): Read => ({ ok: false, problem });

/** "a level is expected, in dBm, dBW, W, mW or µW, for example 23 dBm". */
function expectation({ name, units, base, example }: Kind): string {
  const names = (Object.keys(units) as UnitName[]).map((unit) => unitText('shown', unit, '2'));
  const inUnits = base === 'none' ? '' : `, in ${orList(names)}`;
  return `${name} is expected${inUnits}, for example ${quantityText('shown', { ...example, unit: base })}.`;
}

const sentenceStart = (text: string): string => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;

function wrongUnit(kind: Kind, unit: UnitName | undefined, typed: string): Read {
  const hint = unit === undefined ? undefined : kind.hints?.[unit];
  const fault =
    unit === undefined ? `${quoted(typed)} is not a unit known here` : `${quoted(typed)} does not fit`;
  return bad(`${hint ?? `${fault}:`} ${hint ? sentenceStart(expectation(kind)) : expectation(kind)}`);
}

function converted(kind: Kind, typedValue: number, unit: UnitName, text: string): Read {
  if (kind.kept?.includes(unit)) return { ok: true, value: typedValue, unit };
  const value = kind.units[unit]?.(typedValue);
  return value === undefined || !Number.isFinite(value)
    ? bad(`${quoted(text)} has no value in ${unitText('shown', kind.base, '2')}: ${expectation(kind)}`)
    : { ok: true, value, unit: kind.base };
}

/** The parts of a typed number, or the sentence on why there are none. */
function partsOf(text: string, kind: Kind): RegExpExecArray | string {
  const typed = normalise(text.slice(0, 4 * LONGEST));
  if (typed === '') return `Nothing is typed yet: ${expectation(kind)}`;
  if (text.length > LONGEST && typed.length > LONGEST)
    return `${quoted(text)} is too long for a number: ${expectation(kind)}`;
  if (NOT_FINITE.test(typed)) return `${quoted(text)} is not a finite number: ${expectation(kind)}`;
  return PARTS.exec(typed) ?? `${quoted(text)} is not a number: ${expectation(kind)}`;
}

/** Exact for what people type: 1.5e-3 is the double nearest to 0.0015, which a product need not be. */
function timesPowerOfTen(value: number, exponent: string): number {
  const digits = String(value);
  return digits.includes('e') ? value * 10 ** Number(exponent) : Number(`${digits}e${exponent}`);
}

function ambiguous(digits: string): Read {
  const [point, none] = [digits.replace(',', '.'), digits.replace(',', '')];
  return bad(`${quoted(digits)} can mean ${point} or ${none}: write ${point} or ${none}.`);
}

/**
 * Reads what a person typed as a quantity of one kind: decimal point or comma, units attached or apart, any kind of minus
 * and space, powers of ten as `1e-3`. A number without a unit is in the kind's own unit. Never throws, never guesses: what
 * can mean two things is told.
 */
export function readQuantity(text: string, spec: ReadSpec, around: Surroundings = {}): Read {
  const kind = kindOf(spec.kind);
  const parts = partsOf(text, kind);
  if (typeof parts === 'string') return bad(parts);
  const [, plusMinus, sign, digits = '', exponent = '0', rest = ''] = parts;
  if (plusMinus !== undefined && kind.plusMinus === undefined)
    return bad(`One number without \u00b1 goes here: ${expectation(kind)}`);
  const decimal = readDecimal(digits.trim(), around.mark);
  if (!decimal.ok)
    return decimal.reason === 'ambiguous'
      ? ambiguous(digits.trim())
      : bad(`${quoted(text)} is not one number: ${expectation(kind)}`);
  const named = unitOf(rest);
  const unit = named === 'none' ? (around.unit ?? kind.base) : named;
  if (unit === undefined || kind.units[unit] === undefined) return wrongUnit(kind, unit, rest);
  const size = timesPowerOfTen(decimal.value, exponent);
  const read = converted(kind, sign === '-' ? 0 - size : size, unit, text);
  const problem = read.ok ? limitProblem(read, spec, text) : undefined;
  return problem === undefined ? read : bad(problem);
}
