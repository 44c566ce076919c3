import {
  efficiency,
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  mismatchLossDb,
  ohms,
  powerOfPeakToPeak,
  powerRatioToDb,
  powerW,
  reflectionOfSwr,
  voltsPeakToPeak,
} from '#compute';
import { powerText } from '../text/power-text.ts';
import { changeText, numberText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const watts = (power: number): string => powerText('shown', { powerW: power, digits: 3 });
const db = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const percent = (ratio: number, decimals = 0): string =>
  percentText('shown', { percent: 100 * ratio, decimals });

/** The guess that opens the lesson: what does a meter that averages make of keying? */
export function powerMeter({ peak = powerW(0.5) } = {}): Question {
  const share = meanOverPeakEnvelope('parisWord');
  const mean = meanOfPeakEnvelope({ peakEnvelope: peak, envelope: 'parisWord' });
  return {
    id: 'power-meter',
    stem: `A transmitter gives ${watts(peak)} with the key held down. Now it sends the word PARIS over and over. What does a meter that warms up slowly show?`,
    answer: 'b',
    worked: `The key is down for ${percent(share)} of the time, spaces included. A slow meter shows the mean: ${watts(mean)}. The peak envelope power is still ${watts(peak)}.`,
    options: [
      {
        id: 'a',
        text: watts(peak),
        reply:
          'It would with the key down. A slow meter cannot tell full power for half of the time from half the power all the time.',
      },
      {
        id: 'b',
        text: watts(mean),
        reply: 'The mean over marks and spaces, the space after the word included.',
      },
      {
        id: 'c',
        text: watts(meanOfPeakEnvelope({ peakEnvelope: peak, envelope: 'stringOfDits' })),
        reply:
          'That would be a string of dits, half on and half off. A word has longer spaces between its letters and behind it.',
      },
      {
        id: 'd',
        text: watts(peak * Math.SQRT1_2),
        reply:
          'The root of two belongs between the peak and the RMS of a sine’s volts. Here the power itself is on and off.',
      },
    ],
  };
}

/** Two tones on a screen: what are PEP and mean? */
export function powerTones({ wholeV = 40, loadOhm = 50 } = {}): Question {
  const resistance = ohms(loadOhm);
  const pep = powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(wholeV), resistance });
  const mean = meanOfPeakEnvelope({ peakEnvelope: pep, envelope: 'twoEqualTones' });
  const text = (peak: number, average: number): string => `PEP ${watts(peak)}, mean ${watts(average)}`;
  return {
    id: 'power-tones',
    stem: `Two equal tones into a load of ${quantityText('shown', { value: loadOhm, decimals: 0, unit: 'ohm' })}: at the crest of the envelope the screen shows ${quantityText('shown', { value: wholeV, decimals: 0, unit: 'Vpp' })}. What are PEP and mean power?`,
    answer: 'c',
    worked: `At the crest it is a sine like any other: ${watts(pep)}, which is the PEP. Two equal tones have half of it as their mean: ${watts(mean)}.`,
    options: [
      {
        id: 'a',
        text: text(pep, pep),
        reply:
          'They are equal for a steady carrier. Here the envelope comes down to nothing between its crests.',
      },
      {
        id: 'b',
        text: text(2 * pep, pep),
        reply:
          'The power at the crest is the PEP already: it is a mean over one cycle of radio frequency, not twice that.',
      },
      { id: 'c', text: text(pep, mean), reply: 'The crest gives the PEP, and half of it is the mean.' },
      {
        id: 'd',
        text: text(pep, pep * Math.SQRT1_2),
        reply: 'The root of two is for volts of a sine. Two equal tones have half of the power.',
      },
    ],
  };
}

/** A standing-wave ratio and what it costs. */
export function powerReflected({ swr = 1.5 } = {}): Question {
  const reflection = reflectionOfSwr(swr);
  const shown = numberText('shown', { value: swr, decimals: 1 });
  const text = (lost: number): string => `${percent(1 - lost)} of it, ${db(powerRatioToDb(1 - lost))}`;
  return {
    id: 'power-reflected',
    stem: `An SWR of ${shown} at the load. How much of the power that arrives there stays there?`,
    answer: 'a',
    worked: `An SWR of ${shown} is a reflection of ${numberText('shown', { value: reflection, decimals: 2 })} in volts, and its square in power: ${percent(reflection ** 2)} goes back, the rest stays. That is ${db(0 - mismatchLossDb(reflection))}.`,
    options: [
      {
        id: 'a',
        text: text(reflection ** 2),
        reply: 'Reflected volts squared are reflected power. It is little.',
      },
      {
        id: 'b',
        text: text(reflection),
        reply: 'That takes off the share of the volts that comes back. Of the power its square comes back.',
      },
      {
        id: 'c',
        text: text((swr - 1) / swr),
        reply:
          'That divides by the ratio itself. The ratio compares crest and trough of volts along the line.',
      },
      {
        id: 'd',
        text: text(swr - 1),
        reply: 'A half would be a far worse load. The number behind the point is no share.',
      },
    ],
  };
}

/** Efficiency of a keyed transmitter. */
export function powerEfficiency({ peak = powerW(5), input = powerW(10) } = {}): Question {
  const share = meanOverPeakEnvelope('parisWord');
  const meanInput = powerW(input * share);
  const right = efficiency({ output: peak, input });
  return {
    id: 'power-efficiency',
    stem: `With the key down, a transmitter takes ${watts(input)} from its supply and gives ${watts(peak)}. Sending PARIS, the supply’s meter shows ${watts(meanInput)} on the mean. How efficient is it?`,
    answer: 'd',
    worked: `Like with like: with the key down ${watts(peak)} out of ${watts(input)}, or on the mean ${watts(meanOfPeakEnvelope({ peakEnvelope: peak, envelope: 'parisWord' }))} out of ${watts(meanInput)}. Both are ${percent(right)}; the other half of the input is heat.`,
    options: [
      {
        id: 'a',
        text: percent(peak / meanInput),
        reply:
          'PEP over mean input. Above one hundred per cent it gives itself away; with a lower one it would not.',
      },
      {
        id: 'b',
        text: percent((peak * share) / input),
        reply: 'Mean out over key-down in: the same mistake, the other way round.',
      },
      {
        id: 'c',
        text: percent(1 - peak / (peak + input)),
        reply: 'That sets the input over input and output together. Only what goes in counts below the line.',
      },
      { id: 'd', text: percent(right), reply: 'Out over in, both for the same time.' },
    ],
  };
}
