import { rangeError } from '#compute';
import { quantityText } from './quantity-text.ts';
import type { Style } from './style.ts';
import type { UnitName } from './units.ts';

/** Units of voltage from large to small, each with the volts in one. */
const VOLT_UNITS = [
  { unit: 'V', volts: 1 },
  { unit: 'mV', volts: 1e-3 },
  { unit: 'uV', volts: 1e-6 },
  { unit: 'nV', volts: 1e-9 },
] as const satisfies readonly { unit: UnitName; volts: number }[];

/**
 * A voltage to so many significant digits, in the unit that gives it a number from 1 to 999: `224 mV`, `7.07 V`; from 1000 V up it stays
 * in volts, below a nanovolt in nanovolts.
 * @throws RangeError unless voltsV is finite and > 0 and digits is whole, 1 to 15.
 */
export function voltsText(style: Style, { voltsV, digits }: { voltsV: number; digits: number }): string {
  if (!(Number.isFinite(voltsV) && voltsV > 0))
    throw rangeError({ where: 'voltsText', wish: 'voltsV must be finite and > 0', got: voltsV });
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 15))
    throw rangeError({ where: 'voltsText', wish: 'digits must be whole, 1 to 15', got: digits });
  // Rounded first: 999.6 mV to three digits is 1.00 V.
  const rounded = Number(voltsV.toPrecision(digits));
  const { unit, volts } = VOLT_UNITS.find((each) => rounded >= each.volts) ?? VOLT_UNITS[3];
  const value = rounded / volts;
  const exponent = Number(value.toExponential(14).split('e')[1]);
  return quantityText(style, { value, decimals: digits - 1 - exponent, unit });
}
