import { dbToPercentOfPower, gainDb, percentLimitsToDb } from '#compute';
import {
  bandwidthOf,
  clubScope,
  LARGEST_SHARE_OF_BANDWIDTH,
  rollOffDb,
  type ScopeUse,
  scopeFound,
} from '../sheet/scope.ts';
import { deviationsText, plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { changeText, numberText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

function expandedOf(use: ScopeUse): number {
  const found = scopeFound(use);
  if (!found.inRange) throw new RangeError(`expandedOf: use must be in range, got ${found.reason.code}`);
  return found.result.propagation.expanded;
}

const bandOf = (use: ScopeUse): string => {
  const halfWidth = expandedOf(use);
  return plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
};

/** A band in dB as percent of power, end by end. */
function powerOf(halfWidthDb: number): string {
  return deviationsText('shown', {
    lower: dbToPercentOfPower(gainDb(-halfWidthDb)),
    upper: dbToPercentOfPower(gainDb(halfWidthDb)),
    decimals: 1,
    unit: 'percent',
  });
}

const limit = (percent: number): string =>
  plusMinusText('shown', { halfWidth: percent, decimals: 0, unit: 'percent' });

/** One step of the display, in volts. */
const STEP_V = 0.1;

const volts = (value: number): string => quantityText('shown', { value, decimals: 1, unit: 'V' });
const megahertz = (hz: number): string =>
  quantityText('shown', { value: hz / 1e6, decimals: 0, unit: 'MHz' });

/** Limits in percent of volts or of power, as decibels. */
function inDb(percent: number, quantity: 'volts' | 'power'): string {
  const limits = percentLimitsToDb({ percent, quantity, of: 'reading' });
  return deviationsText('shown', { ...limits, decimals: 2, unit: 'dB' });
}

/** The guess that opens the lesson: how sure are the watts of a good trace? */
export function scopeHowSure(): Question {
  const use = clubScope();
  return {
    id: 'scope-how-sure',
    stem: `The club’s oscilloscope shows ${volts(use.peakToPeakV)} from trough to crest across a good load, at a small fraction of its bandwidth. Its gain is stated to ${limit(use.gainPercent)}, its screen is nearly filled. How sure is the power?`,
    answer: 'c',
    worked: `The gain alone is ${inDb(use.gainPercent, 'volts')}, since power goes as the square of volts. With eye, ripple, harmonics and load it comes to U = ${bandOf(use).slice(1)} (k = 2): ${powerOf(expandedOf(use))} of power. The digits of the display have no say in it.`,
    options: [
      {
        id: 'a',
        text: `${inDb(use.gainPercent, 'power')}: ${limit(use.gainPercent)} of power`,
        reply: 'The percentage is of volts. In watts it counts twice, and it is not the only part.',
      },
      {
        id: 'b',
        text: `${inDb((50 * STEP_V) / use.peakToPeakV, 'volts')}: half a step of its last digit`,
        reply: 'Digits are resolution: how fine a change shows. The limits of the gain are much wider.',
      },
      {
        id: 'c',
        text: `${bandOf(use)}: ${powerOf(expandedOf(use))} of power`,
        reply: 'Most of it is the gain, counted twice.',
      },
      {
        id: 'd',
        text: `${inDb(2 * use.gainPercent, 'volts')}: squared volts, so ${limit(2 * use.gainPercent)} twice over`,
        reply:
          'The square doubles the percentage once. Doubled again, it is counted for power and then for volts.',
      },
    ],
  };
}

/** Percent of full scale for a trace of half the screen. */
export function scopeFullScale(): Question {
  const [screen, finer, trace, percent] = [40, 16, 15.2, 3];
  const ofReading = (percent * screen) / trace;
  return {
    id: 'scope-full-scale',
    stem: `A data sheet says: gain ${limit(percent)} of full scale. The screen is ${volts(screen)} from bottom to top, the trace ${volts(trace)} from trough to crest. What does that leave of the power?`,
    answer: 'b',
    worked: `${percentText('shown', { percent, decimals: 0 })} of ${volts(screen)} is ${volts((percent * screen) / 100)}, wherever the trace stands: ${percentText('shown', { percent: ofReading, decimals: 1 })} of ${volts(trace)}. As power, in dB: ${inDb(ofReading, 'volts')}. On a screen of ${quantityText('shown', { value: finer, decimals: 0, unit: 'V' })}, which it just fits, it would be less than half: ${inDb((percent * finer) / trace, 'volts')}.`,
    options: [
      {
        id: 'a',
        text: inDb(percent, 'volts'),
        reply: 'That takes the percentage as one of the reading. It is of the whole screen.',
      },
      {
        id: 'b',
        text: inDb(ofReading, 'volts'),
        reply: 'First volts of the whole screen, then percent of the trace.',
      },
      {
        id: 'c',
        text: inDb(ofReading, 'power'),
        reply: 'The percentage of volts is right and was taken as one of power. Volts count twice.',
      },
      {
        id: 'd',
        text: inDb((percent * trace) / screen, 'volts'),
        reply:
          'A trace that fills less of the screen makes the share larger, not smaller: the volts of the limit stay.',
      },
    ],
  };
}

/** Which evening's work narrows the band most. */
export function scopeWhatHelps(): Question {
  const use = clubScope();
  const better = { ...use, gainPercent: 1 };
  const faster = { ...use, scopeHz: 500e6, probeHz: 500e6 };
  return {
    id: 'scope-what-helps',
    stem: `The band of the club’s trace is ${bandOf(use)}. Which of these narrows it most?`,
    answer: 'a',
    worked: `The gain has the largest share of the variance, so work pays there: with the gain known to ${limit(better.gainPercent)} of volts the band is ${bandOf(better)}. A faster oscilloscope leaves ${bandOf(faster)}; the other two change hardly anything you could see.`,
    options: [
      {
        id: 'a',
        text: `Comparing the gain with something better, until it is known to ${limit(better.gainPercent)} of volts`,
        reply: 'The largest part, made three times smaller.',
      },
      {
        id: 'b',
        text: `Borrowing an oscilloscope and a probe of ${megahertz(faster.scopeHz)}`,
        reply: 'At this frequency the roll-off was next to nothing already.',
      },
      {
        id: 'c',
        text: 'Reading the trace twenty times and taking the mean',
        reply: 'That shrinks the scatter of your eye. The gain is the same in all twenty.',
      },
      {
        id: 'd',
        text: 'Measuring the load ten times better',
        reply: 'A good habit. Its share is small, and all that can be won is that.',
      },
    ],
  };
}

/** A trace above three tenths of the bandwidth. */
export function scopeRange(): Question {
  const use = { ...clubScope(), frequencyHz: 29e6 };
  const share = numberText('shown', { value: use.frequencyHz / bandwidthOf(use), decimals: 2 });
  const most = numberText('shown', { value: LARGEST_SHARE_OF_BANDWIDTH, decimals: 1 });
  const found = scopeFound(use);
  if (found.inRange) throw new RangeError('scopeRange: use must be out of range, got a number');
  const lost = changeText('shown', { value: rollOffDb(use), decimals: 2, unit: 'dB' });
  return {
    id: 'scope-range',
    stem: `Oscilloscope ${megahertz(use.scopeHz)}, probe ${megahertz(use.probeHz)}, transmitter ${megahertz(use.frequencyHz)}. The trace is clean. What do you write down as its power?`,
    answer: 'd',
    worked: `Oscilloscope and probe together have ${megahertz(bandwidthOf(use))}. ${megahertz(use.frequencyHz)} is ${share} of that, and above ${most} this method has no correction that anyone could stand behind. Say so, and take pads into a power meter.`,
    options: [
      {
        id: 'a',
        text: `What the trace says: it is far below ${megahertz(use.scopeHz)}`,
        reply: 'The probe has a say as well, and roll-off begins long before the bandwidth ends.',
      },
      {
        id: 'b',
        text: `What the trace says, and ${lost} for the roll-off`,
        reply: 'That is one pole’s share. Nobody has said that your front end is one pole.',
      },
      {
        id: 'c',
        text: 'What the trace says, with the band twice as wide',
        reply: 'Wider by how much, and to which side? A band needs a reason for its width.',
      },
      { id: 'd', text: 'No number', reply: 'And the reason beside it: that is a result others can use.' },
    ],
  };
}
