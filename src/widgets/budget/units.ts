import { clubSheet } from '../../sheet/club.ts';
import type { BudgetSubject } from '../../sheet/stated-budget.ts';
import { numberText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { UnitName } from '../../text/units.ts';
import { strings } from './strings.ts';

/** The unit of a subject's contributions, and the decimals that its table keeps. */
export const OUTPUT: Readonly<Record<BudgetSubject, { readonly unit: UnitName; readonly decimals: number }>> =
  { club: { unit: 'dB', decimals: 3 }, gauge: { unit: 'nm', decimals: 1 } };

/** Inputs of the gauge that are no lengths: parts per million per kelvin, or kelvin. */
const OWN_UNITS: Readonly<Record<string, 'ppm' | 'K'>> = {
  'expansion difference': 'ppm',
  expansion: 'ppm',
  'temperature difference': 'K',
  mean: 'K',
  cycle: 'K',
};
const PPM = 1e6;

/** A part's own standard uncertainty with its unit, and its sensitivity by that unit. */
export function ownTexts(
  style: Style,
  subject: BudgetSubject,
  {
    id,
    standardUncertainty: u,
    sensitivity,
  }: { id: string; standardUncertainty: number; sensitivity: number },
): { readonly u: string; readonly sensitivity: string } {
  const own = subject === 'gauge' ? OWN_UNITS[id] : undefined;
  const times = (value: number, decimals: number): string => numberText(style, { value, decimals });
  if (own === undefined)
    return { u: quantityText(style, { value: u, ...OUTPUT[subject] }), sensitivity: times(sensitivity, 0) };
  if (own === 'K')
    return {
      u: quantityText(style, { value: u, decimals: 3, unit: 'K' }),
      sensitivity: times(sensitivity, 0),
    };
  const ppm = quantityText(style, { value: u * PPM, decimals: 2, unit: 'ppm' });
  return { u: strings.perKelvin(ppm), sensitivity: times(sensitivity / PPM, 1) };
}

/** Name of a part. */
export const partLabel = (id: string): string =>
  strings.parts[id] ?? clubSheet().links.find((link) => link.id === id)?.label ?? id;
