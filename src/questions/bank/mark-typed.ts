import type { DecimalMark } from '../../text/read/decimal.ts';
import { kindOf } from '../../text/read/kind.ts';
import { normalise } from '../../text/read/normalise.ts';
import { type Read, readQuantity } from '../../text/read/quantity.ts';
import { unitOf } from '../../text/read/spelling.ts';
import { type UnitName, unitText } from '../../text/units.ts';
import type { Marked } from './mark.ts';
import type { TypedPayload } from './types.ts';

/** What a reader may type: far beyond any answer, so that a slip of thousands is still read and named. */
const SIZE = 1e12;

const read = ({ quantity, unit }: TypedPayload, text: string, mark?: DecimalMark): Read =>
  readQuantity(text, { kind: quantity, min: -SIZE, max: SIZE, decimals: 0 }, { unit, mark });

/**
 * What was typed. Where its comma can mean two things (1,234), what it has to mean to be right: both cannot be, and who typed the answer
 * as it is shown has it right.
 */
function readAnswer(payload: TypedPayload, text: string): Read {
  const found = read(payload, text);
  if (found.ok) return found;
  const both = ([',', '.'] as const).map((mark) => read(payload, text, mark));
  return both.find((each) => each.ok && isNear(payload, each.value, payload.value)) ?? found;
}

function isNear({ tolerance }: TypedPayload, value: number, wanted: number): boolean {
  const reach = tolerance.of === 'share' ? Math.abs(wanted) * tolerance.size : tolerance.size;
  return Math.abs(value - wanted) <= reach * (1 + 1e-9);
}

const LOGARITHMIC: readonly UnitName[] = ['dB', 'dBm', 'dBW', 'dBi', 'dBd'];
const isLogarithmic = ({ quantity }: TypedPayload): boolean => LOGARITHMIC.includes(kindOf(quantity).base);

/** Factors that people lose, with their decibels as they are told. */
const FACTORS = [
  { factor: 2, steps: 3.01, words: 'two' },
  { factor: 4, steps: 6.02, words: 'four' },
  { factor: 8, steps: 9.03, words: 'eight' },
  { factor: 10, steps: 10, words: 'ten' },
  { factor: 100, steps: 20, words: 'a hundred' },
  { factor: 1000, steps: 30, words: 'a thousand' },
] as const;

/** A factor that a number is off by, in words; undefined where it is none of the usual ones. */
function factorOff(payload: TypedPayload, value: number): string | undefined {
  const { value: wanted } = payload;
  const inDb = isLogarithmic(payload);
  for (const { factor, steps, words } of FACTORS) {
    const [large, small] = inDb ? [wanted + steps, wanted - steps] : [wanted * factor, wanted / factor];
    const what = inDb ? 'of power ' : '';
    if (isNear(payload, value, large)) return `Nearly: it is a factor of ${words} ${what}too large.`;
    if (isNear(payload, value, small)) return `Nearly: it is a factor of ${words} ${what}too small.`;
  }
  return undefined;
}

const marked = (outcome: Marked['outcome'], reply: string): Marked => ({
  outcome,
  reply,
  misconception: undefined,
});

/** A mistake that the question knows, where the value comes from one. */
function knownSlip(payload: TypedPayload, value: number): Marked | undefined {
  const known = payload.near.find((slip) => isNear(payload, value, slip.value));
  return known && { outcome: 'near', reply: known.reply, misconception: known.misconception };
}

/** A slip that can happen to any number: its sign, or a factor. */
function usualSlip(payload: TypedPayload, value: number): Marked | undefined {
  if (payload.value !== 0 && isNear(payload, -value, payload.value))
    return marked('near', 'The number is right, its sign is not.');
  const factor = factorOff(payload, value);
  return factor === undefined ? undefined : marked('near', factor);
}

/** Units between which a question may ask to change over. Volts without a word go with any of theirs. */
const FAMILIES: readonly (readonly UnitName[])[] = [
  ['dBm', 'dBW'],
  ['kW', 'W', 'mW', 'uW', 'nW'],
  ['Vrms'],
  ['Vp'],
  ['Vpp'],
];

const familyOf = (unit: UnitName | undefined): number =>
  FAMILIES.findIndex((family) => unit !== undefined && family.includes(unit));

/** Whether the answer came in a unit of another family than asked for: perhaps the number given, not changed over. */
function isOtherFamily({ unit }: TypedPayload, text: string): boolean {
  const typed = familyOf(unitOf(normalise(text).replace(/^[-+]? ?[\d.,' ]*(?:e[+-]?\d+)?/i, '')));
  return typed >= 0 && familyOf(unit) >= 0 && typed !== familyOf(unit);
}

/** The unit of the family asked for in which the bare number that was typed would be right. */
function unitItWouldHave(payload: TypedPayload, text: string): UnitName | undefined {
  const digits = /^\s*[-+\u2212]?\s*\d[\d.,' ]*(?:e[+-]?\d+)?/i.exec(text)?.[0] ?? '';
  const units = Object.keys(kindOf(payload.quantity).units) as UnitName[];
  const sisters = units.filter((unit) => familyOf(unit) === familyOf(payload.unit));
  return sisters.find((unit) => {
    const found = read({ ...payload, unit }, digits);
    return found.ok && isNear(payload, found.value, payload.value);
  });
}

const NOT_IT = 'That is not it, and not one of the usual slips: compare your way with the solution.';

/**
 * Marks a typed number: right within the tolerance, near where it is a known mistake or a usual slip (another unit, a sign, a factor),
 * else wrong. Unread where it is no number of the kind, with the sentence that says why.
 */
export function markTyped(payload: TypedPayload, text: string, right: string): Marked {
  const found = readAnswer(payload, text);
  if (found.ok && isNear(payload, found.value, payload.value))
    return isOtherFamily(payload, text)
      ? marked(
          'unread',
          `True, but it is asked for in ${unitText('shown', payload.unit, '2')}: to change it over is a part of the question.`,
        )
      : marked('right', right);
  const known = found.ok ? knownSlip(payload, found.value) : undefined;
  if (known !== undefined) return known;
  const unit = unitItWouldHave(payload, text);
  if (unit !== undefined)
    return marked(
      'near',
      `The number is right, its unit is not: it would be right in ${unitText('shown', unit, '2')}.`,
    );
  if (!found.ok) return marked('unread', found.problem);
  return usualSlip(payload, found.value) ?? marked('wrong', NOT_IT);
}
