import { quoted } from '../clean.ts';
import { quantityText } from '../quantity-text.ts';
import type { UnitName } from '../units.ts';

/** What a value must keep to. */
export interface Limits {
  readonly min: number;
  readonly max: number;
  readonly decimals: number;
  readonly whole?: boolean;
}

/** The sentence on a value outside its limits, or undefined where it keeps to them. `text` is what was typed. */
export function limitProblem(
  { value, unit }: { value: number; unit: UnitName },
  { min, max, decimals, whole }: Limits,
  text: string,
): string | undefined {
  const named = (limit: number) => quantityText('shown', { value: limit, decimals, unit });
  if (value < min) return `${quoted(text)} is below the smallest value accepted here, ${named(min)}.`;
  if (value > max) return `${quoted(text)} is above the largest value accepted here, ${named(max)}.`;
  if (whole === true && !Number.isInteger(value))
    return `${quoted(text)} is not a whole number: one is expected.`;
  return undefined;
}
