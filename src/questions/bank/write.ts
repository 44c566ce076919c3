import { roundToPlace } from '#compute';
import { plusMinusText } from '../../text/deviation-text.ts';
import { factorText } from '../../text/factor-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, quantityText } from '../../text/quantity-text.ts';
import type { UnitName } from '../../text/units.ts';
import type { Typing } from './define.ts';

/** A number as it was drawn: all of its decimals, no more. */
export function given(value: number, unit: UnitName = 'none'): string {
  return quantityText('shown', { value, decimals: String(value).split('.')[1]?.length ?? 0, unit });
}

/** A number that was worked out without rounding: all of its decimals, no more. */
export const exactly = (value: number, unit: UnitName = 'none'): string =>
  given(Number(value.toPrecision(8)), unit);

/** A band as it was drawn. */
export function givenBand(halfWidth: number, unit: UnitName): string {
  const decimals = String(halfWidth).split('.')[1]?.length ?? 0;
  return plusMinusText('shown', { halfWidth, decimals, unit });
}

/** A writer of numbers with so many decimals. */
export const fixed =
  (unit: UnitName, decimals: number) =>
  (value: number): string =>
    quantityText('shown', { value, decimals, unit });

/** A writer of changes, their sign always given. */
export const change =
  (unit: UnitName, decimals: number) =>
  (value: number): string =>
    changeText('shown', { value, decimals, unit });

/** A writer of bands. */
export const band =
  (unit: UnitName, decimals: number) =>
  (value: number): string =>
    plusMinusText('shown', { halfWidth: value, decimals, unit });

/** A writer of numbers with so many significant digits. */
export const digits =
  (unit: UnitName, count: number) =>
  (value: number): string => {
    const exponent = value === 0 ? 0 : Number(value.toExponential(count - 1).split('e')[1]);
    return quantityText('shown', { value, decimals: count - 1 - exponent, unit });
  };

/** A number as it is printed with three significant digits, for answers that follow from it. */
export function asPrinted(value: number): number {
  const exponent = Number(value.toExponential(2).split('e')[1]);
  return roundToPlace({ value, place: exponent - 2 });
}

/** A writer of powers in the unit that suits. */
export const power =
  (count = 3) =>
  (powerW: number): string =>
    powerText('shown', { powerW, digits: count });

/** A power as it was drawn, in the unit that suits: 0.5 is 500 mW, 0.05 is 50 mW. */
export function givenPower(powerW: number): string {
  const [mantissa = '', exponent = '0'] = powerW.toExponential().split('e');
  const before = (((Number(exponent) % 3) + 3) % 3) + 1;
  return powerText('shown', { powerW, digits: Math.max(mantissa.replace('.', '').length, before) });
}

/** A writer of factors: ×500, ÷398. */
export const factor =
  (count = 3) =>
  (ratio: number): string =>
    factorText('shown', { ratio, digits: count });

/** A bare number with so many significant digits. */
export const sig = (value: number, count = 3): string => digits('none', count)(value);

/** A number to be taken off, in brackets where it has a sign: `− 10 dBm`, but `− (−10 dBm)`. */
export const takenOff = (text: string): string => (/^[+\u2212]/.test(text) ? `(${text})` : text);

/** "within 2 %" or "within 0.1 dB". */
export function withinWords({ tolerance, unit }: Typing): string {
  return tolerance.of === 'share'
    ? `within ${given(Number((100 * tolerance.size).toPrecision(6)), 'percent')}`
    : `within ${given(tolerance.size, unit === 'dBm' ? 'dB' : unit)}`;
}
