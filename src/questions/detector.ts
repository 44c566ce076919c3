import {
  harmonicsLimitsDb,
  levelToPower,
  ohms,
  powerOfPeak,
  powerOfVolts,
  voltsPeak,
  voltsRms,
} from '#compute';
import {
  clubDetector,
  type DetectorUse,
  detectedLevel,
  detectorFound,
  forgottenDb,
  LEAST_W,
} from '../sheet/detector.ts';
import { deviationsText } from '../text/deviation-text.ts';
import { powerText } from '../text/power-text.ts';
import { changeText, levelText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const volts = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'V' });
const watts = (value: number): string => powerText('shown', { powerW: value, digits: 3 });
const wattsOf = (use: DetectorUse): string => watts(levelToPower(detectedLevel(use, true)));

/** The guess that opens the lesson: which of two results suffers more from a forgotten drop? */
export function detectorWhichErrs(): Question {
  const weak = { ...clubDetector(), detectedV: 1.85 };
  const strong = { ...clubDetector(), detectedV: 16.77 };
  const { dropV } = weak;
  return {
    id: 'detector-which-errs',
    stem: `A peak detector shows ${volts(weak.detectedV)} of one transmitter and ${volts(strong.detectedV)} of another. Its diode keeps ${volts(dropV)} for itself, and nobody thought of that. Which of the two powers is farther off, in decibels?`,
    answer: 'b',
    worked: `The weak one: ${change(forgottenDb(weak))} against ${change(forgottenDb(strong))}. The same ${volts(dropV)} are missing in both, but decibels count shares, and of ${volts(weak.detectedV + dropV)} it is a large one.`,
    options: [
      {
        id: 'a',
        text: `Both by the same: ${volts(dropV)} are ${volts(dropV)}`,
        reply: 'The same in volts. A level asks what share of the wave is missing.',
      },
      {
        id: 'b',
        text: 'The weak one',
        reply: `By ${quantityText('shown', { value: forgottenDb(strong) - forgottenDb(weak), decimals: 1, unit: 'dB' })} more: the missing share is larger.`,
      },
      {
        id: 'c',
        text: 'The strong one: there is more power to get wrong',
        reply: `In watts it is: ${watts(levelToPower(detectedLevel(strong, true)) - levelToPower(detectedLevel(strong, false)))} too little against ${watts(levelToPower(detectedLevel(weak, true)) - levelToPower(detectedLevel(weak, false)))}. In decibels, and in percent, it is the other way round.`,
      },
      {
        id: 'd',
        text: 'Neither: a capacitor charges up to the peak in the end',
        reply: 'To the peak less what the diode needs to conduct. Waiting does not bring that back.',
      },
    ],
  };
}

/** From DC volts to watts. */
export function detectorAddBack(): Question {
  const use = { ...clubDetector(), detectedV: 4, loadOhm: 50 };
  const resistance = ohms(use.loadOhm);
  const peak = use.detectedV + use.dropV;
  return {
    id: 'detector-add-back',
    stem: `Across ${quantityText('shown', { value: use.loadOhm, decimals: 0, unit: 'ohm' })} a peak detector shows ${volts(use.detectedV)}; its diode’s drop at this level is ${volts(use.dropV)}. What is the power?`,
    answer: 'd',
    worked: `The peak is ${volts(use.detectedV)} and ${volts(use.dropV)}: ${volts(peak)}. Squared and divided by twice the load: ${wattsOf(use)}.`,
    options: [
      {
        id: 'a',
        text: watts(levelToPower(detectedLevel(use, false))),
        reply: `The drop was forgotten: ${change(forgottenDb(use))}.`,
      },
      {
        id: 'b',
        text: watts(powerOfVolts({ volts: voltsRms(peak), resistance })),
        reply: 'The drop is in, but the peak was taken for RMS: the two in the denominator is missing.',
      },
      {
        id: 'c',
        text: watts(powerOfPeak({ peak: voltsPeak(use.detectedV - use.dropV), resistance })),
        reply: 'The drop was taken away once more. The diode has done that already: add it.',
      },
      { id: 'd', text: wattsOf(use), reply: 'Added back, squared, over twice the load.' },
    ],
  };
}

/** A harmonic against a peak and against the power. */
export function detectorHarmonic(): Question {
  const of = (harmonicsDbc: number, responds: 'peak' | 'mean'): string =>
    deviationsText('shown', {
      ...harmonicsLimitsDb({ harmonicsDbc: [harmonicsDbc], responds }),
      decimals: 2,
      unit: 'dB',
    });
  const down = (value: number): string => quantityText('shown', { value, decimals: 0, unit: 'dB' });
  const heat = harmonicsLimitsDb({ harmonicsDbc: [-20], responds: 'mean' }).upper;
  return {
    id: 'detector-harmonic',
    stem: `A transmitter’s second harmonic lies ${down(20)} below its carrier. How far may that put a peak detector’s level off?`,
    answer: 'a',
    worked: `As volts the harmonic is a tenth of the carrier, and its phase is not known: the crest may be a tenth higher or lower, ${of(-20, 'peak')}. The power is a hundredth more, ${change(heat)}, whatever the phase.`,
    options: [
      { id: 'a', text: of(-20, 'peak'), reply: 'A tenth of the volts, either way.' },
      {
        id: 'b',
        text: change(heat),
        reply: 'That is how much the power rises. A detector does not see power, it sees the crest.',
      },
      {
        id: 'c',
        text: of(-40, 'peak'),
        reply:
          'A hundredth of the volts would be 40 dB down. 20 dB are a hundredth of the power and a tenth of the volts.',
      },
      {
        id: 'd',
        text: 'Not at all: the capacitor smooths it',
        reply: 'It holds the highest point that ever came by. That is where the harmonic does its harm.',
      },
    ],
  };
}

/** A reading below the method's range. */
export function detectorLow(): Question {
  const use = { ...clubDetector(), detectedV: 0.6 };
  const found = detectorFound(use);
  if (found.inRange) throw new RangeError('detectorLow: use must be out of range, got a number');
  const level = (added: boolean): string =>
    levelText('shown', { levelDbm: detectedLevel(use, added), decimals: 1 });
  return {
    id: 'detector-low',
    stem: `The same detector shows ${volts(use.detectedV)} of a small beacon. The only figure that you have for its diode is ${volts(use.dropV)}, from a test at half a watt. What do you write down?`,
    answer: 'c',
    worked: `The sum would say ${level(true)}, far below ${powerText('shown', { powerW: LEAST_W, digits: 2 })}. At such volts a diode is leaving the law that the sum is made of, and a drop from half a watt is not the drop at this level. A curve of this detector, taken with DC at this level, would give a number.`,
    options: [
      {
        id: 'a',
        text: level(true),
        reply: 'The formula gives it without blushing. The drop in it belongs to another level.',
      },
      {
        id: 'b',
        text: level(false),
        reply: 'Leaving the drop out does not help where the drop is nearly half of the wave.',
      },
      { id: 'c', text: 'No number', reply: 'And what would help: a curve taken with DC.' },
      {
        id: 'd',
        text: `${level(true)}, with the band twice as wide`,
        reply: 'Twice what? The drop at this level has not been measured, so its limits are not known.',
      },
    ],
  };
}
