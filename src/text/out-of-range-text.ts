import type { OutOfRange } from '#compute';
import { powerText } from './power-text.ts';
import { levelText, numberText } from './quantity-text.ts';
import type { Style } from './style.ts';
import { toldApart } from './told-apart.ts';

const power = (style: Style, powerW: number, more = 0): string =>
  powerText(style, { powerW, digits: 2 + more });
const ratio = (style: Style, value: number, more: number): string =>
  numberText(style, { value, decimals: 2 + more });
const level = (style: Style, levelDbm: number, more: number): string =>
  levelText(style, { levelDbm, decimals: 1 + more });

/** A number and the one that it is beyond. */
const both = (
  write: (style: Style, value: number, more: number) => string,
  style: Style,
  [value, limit]: readonly [number, number],
): readonly [string, string] => toldApart((more) => [write(style, value, more), write(style, limit, more)]);

/** Why a method gives no number, in one sentence with the numbers that decided. */
export function outOfRangeText(style: Style, reason: OutOfRange): string {
  switch (reason.code) {
    case 'noTermination':
      return 'Out of range: the oscilloscope is not terminated, so that nothing is known of the load.';
    case 'aboveBandwidth': {
      const [share, largest] = both(ratio, style, [reason.ratio, reason.largest]);
      return `Out of range: the frequency is ${share} of the bandwidth, and above ${largest} no correction can be stood behind.`;
    }
    case 'belowDetector': {
      const [there, least] = both(power, style, [reason.power, reason.least]);
      return `Out of range: ${there} is below ${least}, where a fixed diode drop does not describe the detector; it needs a curve calibrated at DC.`;
    }
    case 'fullScaleError':
      return `Out of range: the full-scale error, ${power(style, reason.error)}, is more than a third of the reading, ${power(style, reason.reading)}.`;
    case 'belowFloor': {
      const [reading, limit] = both(level, style, [reason.reading, reason.limit]);
      return `Out of range: ${reading} is below the meter's floor, ${limit}.`;
    }
    case 'aboveLargest': {
      const [reading, limit] = both(level, style, [reason.reading, reason.limit]);
      return `Out of range: ${reading} is above the meter's largest level, ${limit}.`;
    }
  }
}
