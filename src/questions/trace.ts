import {
  dbToPercentOfPower,
  gainDb,
  ohms,
  peakOfPower,
  peakToPeakOfPower,
  percentLimitsToDb,
  powerRatioToDb,
  powerW,
  voltsOfPower,
} from '#compute';
import { type Trace, traceSums } from '../sheet/trace.ts';
import { slippedPower } from '../sheet/trace-slips.ts';
import { deviationsText, plusMinusText } from '../text/deviation-text.ts';
import { powerText } from '../text/power-text.ts';
import { changeText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const watts = (power: number): string => powerText('shown', { powerW: power, digits: 3 });
const volts = (value: number, decimals = 1): string => quantityText('shown', { value, decimals, unit: 'V' });
const load = (value: number): string => quantityText('shown', { value, decimals: 1, unit: 'ohm' });
const db = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const percent = (value: number): string => percentText('shown', { percent: value, decimals: 1 });

/** The guess that opens the lesson: from trough to crest to watts. */
export function traceWatts(trace: Trace = { peakToPeakV: 14.1, loadOhm: 50, wave: 'sine' }): Question {
  const { peakToPeak, peak, rms, power } = traceSums(trace);
  return {
    id: 'volts-trace-watts',
    stem: `A sine across a load of ${load(trace.loadOhm)}: ${volts(peakToPeak)} from trough to crest. What power goes into the load?`,
    answer: 'a',
    worked: `Half of the height is the peak, ${volts(peak, 2)}. Divided by the root of two it is the RMS, ${volts(rms, 3)}. Squared and divided by ${load(trace.loadOhm)}: ${watts(power)}.`,
    options: [
      { id: 'a', text: watts(power), reply: 'Halve, divide by the root of two, square, divide by the load.' },
      {
        id: 'b',
        text: watts(slippedPower('peakAsRms', trace)),
        reply:
          'That squares the peak and divides by the load. The peak lasts a moment only; on the mean it is half as much.',
      },
      {
        id: 'c',
        text: watts(slippedPower('wholeAsPeak', trace)),
        reply: 'That takes the whole height for the peak: twice the volts, and so four times the power.',
      },
      {
        id: 'd',
        text: watts(slippedPower('wholeAsRms', trace)),
        reply: 'That squares the whole height and divides by the load, as if it were RMS.',
      },
    ],
  };
}

/** The way back: how high will the trace stand? It chooses the range, and tells whether the input can bear it. */
export function traceHeight({ power = powerW(5), resistance = ohms(50) } = {}): Question {
  const right = peakToPeakOfPower({ power, resistance });
  const peak = peakOfPower({ power, resistance });
  const rms = voltsOfPower({ power, resistance });
  return {
    id: 'volts-trace-height',
    stem: `You expect ${watts(power)} in a load of ${load(resistance)} and want to choose the range first. How high will the sine stand from trough to crest?`,
    answer: 'd',
    worked: `Power times load is ${quantityText('shown', { value: power * resistance, decimals: 0, unit: 'none' })}; its root is the RMS, ${volts(rms)}. Times the root of two is the peak, ${volts(peak)}, and twice that the whole height, ${volts(right)}.`,
    options: [
      {
        id: 'a',
        text: volts(rms),
        reply: 'That is the RMS. The screen shows crest and trough, which stand farther apart.',
      },
      {
        id: 'b',
        text: volts(peak),
        reply: 'That is from the middle to the crest. The trough is as far below.',
      },
      { id: 'c', text: volts(2 * rms), reply: 'That doubles the RMS. It is the peak that is doubled.' },
      { id: 'd', text: volts(right), reply: 'Root of power times load, times the root of two, times two.' },
    ],
  };
}

/** A load that is not what is written on it. */
export function traceLoad({ assumedOhm = 50, trueOhm = 47.5 } = {}): Question {
  const right = powerRatioToDb(trueOhm / assumedOhm);
  const share = (ratio: number): string => percent(100 * Math.abs(1 - ratio));
  const less = (ratio: number): string => `${share(ratio)} too little, ${db(powerRatioToDb(ratio))}`;
  const more = (ratio: number): string => `${share(ratio)} too much, ${db(powerRatioToDb(ratio))}`;
  const ratio = trueOhm / assumedOhm;
  return {
    id: 'volts-trace-load',
    stem: `You read the volts well and reckon with ${load(assumedOhm)}. Later a multimeter shows that the load has ${load(trueOhm)}. How far was your power off?`,
    answer: 'b',
    worked: `Power is volts squared over the load. The load came in once, as ${load(assumedOhm)} instead of ${load(trueOhm)}: what you stated is ${quantityText('shown', { value: ratio, decimals: 2, unit: 'none' })} of what was there, ${db(right)}.`,
    options: [
      {
        id: 'a',
        text: more(1 / ratio),
        reply:
          'The other way round: a smaller load takes more at the same volts, and you reckoned with the larger.',
      },
      {
        id: 'b',
        text: less(ratio),
        reply: 'Once, and with its sign: the true load is smaller, so the true power is larger.',
      },
      {
        id: 'c',
        text: less(ratio ** 2),
        reply: 'That squares the ratio. The volts are squared in this sum, the load is not.',
      },
      {
        id: 'd',
        text: `not at all, ${db(powerRatioToDb(1))}`,
        reply: 'The volts alone are no power: the load decides how much current they drive.',
      },
    ],
  };
}

/** What a percentage of volts is in watts. */
export function tracePercent({ voltsPercent = 5 } = {}): Question {
  const limits = percentLimitsToDb({ percent: voltsPercent, quantity: 'volts', of: 'reading' });
  const right = deviationsText('shown', {
    lower: dbToPercentOfPower(limits.lower),
    upper: dbToPercentOfPower(limits.upper),
    decimals: 2,
    unit: 'percent',
  });
  const even = (value: number): string =>
    plusMinusText('shown', { halfWidth: value, decimals: 1, unit: 'percent' });
  return {
    id: 'volts-trace-percent',
    stem: `An old oscilloscope is good to ${even(voltsPercent)} of the volts it shows. How far may the power that you reckon from it be off?`,
    answer: 'c',
    worked: `Power goes as the square of the volts: ${changeText('shown', { value: voltsPercent, decimals: 0, unit: 'percent' })} of volts is a factor of ${quantityText('shown', { value: 1 + voltsPercent / 100, decimals: 2, unit: 'none' })}, squared ${quantityText('shown', { value: (1 + voltsPercent / 100) ** 2, decimals: 4, unit: 'none' })}. Below it is a little less than above: ${right}. In decibels ${deviationsText('shown', { lower: gainDb(limits.lower), upper: gainDb(limits.upper), decimals: 2, unit: 'dB' })}.`,
    options: [
      {
        id: 'a',
        text: even(voltsPercent),
        reply: 'That would do for a quantity that goes as the volts. Power goes as their square.',
      },
      {
        id: 'b',
        text: even(voltsPercent / 2),
        reply: 'That halves it, as a root would. Here it is a square.',
      },
      { id: 'c', text: right, reply: 'About twice the percentage, and a little farther up than down.' },
      {
        id: 'd',
        text: even(voltsPercent ** 2),
        reply:
          'That squares the percentage. It is the factor that is squared, and so a small percentage doubles.',
      },
    ],
  };
}
