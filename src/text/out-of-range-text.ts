import type { OutOfRange } from '#compute';
import { powerText } from './power-text.ts';
import { levelText, numberText } from './quantity-text.ts';
import type { Style } from './style.ts';

const power = (style: Style, powerW: number): string => powerText(style, { powerW, digits: 2 });
const ratio = (style: Style, value: number): string => numberText(style, { value, decimals: 2 });
const level = (style: Style, levelDbm: number): string => levelText(style, { levelDbm, decimals: 1 });

/** Why a method gives no number, in one sentence with the numbers that decided. */
export function outOfRangeText(style: Style, reason: OutOfRange): string {
  switch (reason.code) {
    case 'noTermination':
      return 'Out of range: the oscilloscope is not terminated, so that nothing is known of the load.';
    case 'aboveBandwidth':
      return `Out of range: the frequency is ${ratio(style, reason.ratio)} of the bandwidth, and above ${ratio(style, reason.largest)} no correction can be stood behind.`;
    case 'belowDetector':
      return `Out of range: ${power(style, reason.power)} is below ${power(style, reason.least)}, where a fixed diode drop does not describe the detector; it needs a curve calibrated at DC.`;
    case 'fullScaleError':
      return `Out of range: the full-scale error, ${power(style, reason.error)}, is more than a third of the reading, ${power(style, reason.reading)}.`;
    case 'belowFloor':
      return `Out of range: ${level(style, reason.reading)} is below the meter's floor, ${level(style, reason.limit)}.`;
    case 'aboveLargest':
      return `Out of range: ${level(style, reason.reading)} is above the meter's largest level, ${level(style, reason.limit)}.`;
  }
}
