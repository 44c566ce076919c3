import type { UnitName } from '../units.ts';
import { kindOf } from './kind.ts';
import type { ReadSpec, Surroundings } from './quantity.ts';
import { unitOf } from './spelling.ts';

/** A number read on the short way: its value in the kind's own unit, and the unit that stood at it. */
export interface PlainNumber {
  readonly value: number;
  /** `none` where the number had none of its own. */
  readonly typed: UnitName;
}

/** A sign, digits, one decimal sign at the most, and letters of a unit at the most: most lines of long columns. */
const PLAIN = /^ *([+-]?)(\d{1,15})(?:([.,])(\d{1,15}))? ?([A-Za-z]{1,9})? *$/;

/**
 * A reader for the plain numbers of one column, as `readQuantity` reads them and twenty times as fast; undefined wherever more has to
 * be known: powers of ten, groups of digits, marks that can mean two things, values outside their limits.
 */
export function plainReader(
  spec: ReadSpec,
  { mark, unit: unitAround }: Surroundings,
): (text: string) => PlainNumber | undefined {
  const { base, units, kept } = kindOf(spec.kind);
  const found = new Map<string, UnitName | undefined>();
  const unitAt = (letters: string): UnitName | undefined => {
    if (!found.has(letters)) found.set(letters, unitOf(letters));
    return found.get(letters);
  };
  const isDecimal = (sign: string, decimals: string): boolean =>
    sign === '.' ? mark !== ',' : mark === ',' || (mark === undefined && decimals.length !== 3);
  return (text) => {
    const [match, sign, whole, point, decimals = '', letters = ''] = PLAIN.exec(text) ?? [];
    if (match === undefined || spec.whole === true) return undefined;
    if (point !== undefined && !isDecimal(point, decimals)) return undefined;
    const typed = unitAt(letters);
    const unit = typed === 'none' ? (unitAround ?? base) : typed;
    if (typed === undefined || unit === undefined || kept?.includes(unit)) return undefined;
    const size = Number(`${whole}.${decimals || '0'}`);
    const value = units[unit]?.(sign === '-' ? 0 - size : size);
    if (value === undefined || !(value >= spec.min && value <= spec.max)) return undefined;
    return { value, typed };
  };
}
