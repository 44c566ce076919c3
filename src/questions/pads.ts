import { gainDb, heatInPad, levelToPower, mismatchLimits } from '#compute';
import { behindClubPad, clubPadHeat, clubUpperLevel } from '../sheet/club-pad.ts';
import {
  clubPadsLine,
  EXTRA_ALLOWED_DB,
  EXTRA_DB,
  foundOf,
  magnitudesOf,
  matchOf,
  type PadsLine,
  stepOf,
} from '../sheet/pads-line.ts';
import { deviationsText, plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { powerText } from '../text/power-text.ts';
import { dbText, levelText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const deviations = ({ lower, upper }: { lower: number; upper: number }): string =>
  deviationsText('shown', { upper, lower, decimals: 2, unit: 'dB' });
const db = (value: number, decimals: number): string => dbText('shown', { db: value, decimals });

/** The guess that opens the lesson: what does a pad do for the match? */
export function padsMatch(): Question {
  const line = { ...clubPadsLine(), padDb: 6, sourceSwr: 2, meterSwr: 1.25 };
  const bare = matchOf({ ...line, padDb: 0 });
  const real = matchOf(line);
  const perfect = mismatchLimits(magnitudesOf(line, 'perfect'));
  return {
    id: 'pads-match',
    stem: `A transmitter of SWR 2 stands on a meter of SWR 1.25. Nobody knows the phases, so the correction for mismatch lies within ${deviations(bare)}. You put a good ${db(6, 0)} pad between, of SWR 1.15 at either end. Between which limits is it now?`,
    wall: `Transmitter and meter reflect, and nobody knows the phases: the correction for mismatch lies within ${deviations(bare)}. You put a good ${db(6, 0)} pad between, of SWR 1.15 at either end. Between which limits is it now?`,
    answer: 'c',
    worked: `The pad weakens what runs to and fro between transmitter and meter. But it reflects a little at both ends itself, and these reflections meet the transmitter’s and the meter’s without passing through it: ${deviations(real)}. What gets better is the standard uncertainty, from ${db(bare.standardUncertainty, 2)} to ${db(real.standardUncertainty, 2)}: three waves rarely all fall together.`,
    options: [
      {
        id: 'a',
        text: deviations(perfect),
        reply:
          'That is what a perfect pad would leave: the wave that comes back has passed it twice. No pad is perfect.',
      },
      {
        id: 'b',
        text: deviations({ lower: bare.lower / 2, upper: bare.upper / 2 }),
        reply:
          'Half of the volts come through 6 dB, but once there and once back; and the pad has an SWR too.',
      },
      {
        id: 'c',
        text: deviations(real),
        reply: 'No better, in the worst case. It is the likely size that shrinks.',
      },
      {
        id: 'd',
        text: deviations({ lower: 0, upper: 0 }),
        reply: 'A pad is not a match. It hides a mismatch from the meter, as far as it is good itself.',
      },
    ],
  };
}

function expandedOf(line: PadsLine): number {
  const outcome = foundOf(line);
  if (!outcome.found) throw new RangeError('expandedOf: a line must give a result, got none');
  return outcome.result.propagation.expanded;
}

function band(line: PadsLine): string {
  const halfWidth = expandedOf(line);
  return plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
}

/** Which part of the club's line is worth an evening? */
export function padsWorth(): Question {
  const club = clubPadsLine();
  const measured = { ...club, padWithinDb: 0.1 };
  const matched = { ...club, sourceSwr: 1 };
  return {
    id: 'pads-worth',
    stem: `The club’s result is known to ${band(club)} (k = 2). One evening is left before the talk. What makes it better most?`,
    answer: 'b',
    worked: `The pad’s limits bring most of the variance. Measured with a voltmeter at DC, or swapped in and out before a receiver, to ${db(0.1, 1)}, it leaves ${band(measured)}. A transmitter without any reflection would leave ${band(matched)}.`,
    options: [
      {
        id: 'a',
        text: 'New connectors and a new cable.',
        reply:
          'They matter at VHF and when they are worn. Here they bring about a hundredth of the variance.',
      },
      {
        id: 'b',
        text: `Measuring the pad to ${plusMinusText('shown', { halfWidth: 0.1, decimals: 1, unit: 'dB' })}.`,
        reply:
          'The largest part first. At HF a DC measurement is a fair one; at VHF it would be an assumption.',
      },
      {
        id: 'c',
        text: 'A second pad, so that the match gets better.',
        reply:
          'It brings limits of its own, as wide as the first one’s, against a mismatch that is small already.',
      },
      {
        id: 'd',
        text: 'Reading the meter a hundred times.',
        reply:
          'Only scatter shrinks by repeating. Neither the pad nor the meter changes its mind from reading to reading.',
      },
    ],
  };
}

/** What one more pad says. */
export function padsOverload(): Question {
  const line = { ...clubPadsLine(), movedDb: 8.7 };
  const { shortfallDb, outcome } = stepOf(line);
  if (outcome !== 'moved-too-little')
    throw new RangeError(`padsOverload: the step must be too little, got ${outcome}`);
  const due = `${db(EXTRA_DB, 0)} ${plusMinusText('shown', { halfWidth: EXTRA_ALLOWED_DB, decimals: 1, unit: 'dB' })}`;
  const shown = levelText('shown', { levelDbm: line.readingDbm, decimals: 1 });
  const then = levelText('shown', { levelDbm: line.readingDbm - line.movedDb, decimals: 1 });
  return {
    id: 'pads-overload',
    stem: `A receiver shows ${shown}. With one more pad in front, which has to take off ${due}, it shows ${then}. It is far above its floor. What do you write down for the transmitter?`,
    answer: 'd',
    worked: `The reading moved by ${db(line.movedDb, 1)} only, ${db(shortfallDb, 1)} too little. Without the further pad the receiver was overloaded, and shows too little by that or more. Put pads in until one more moves the reading by all that it is, and take the reading from there.`,
    options: [
      {
        id: 'a',
        text: `${shown} and the losses of the line: the first reading had more level.`,
        reply: 'More level was the trouble. An overloaded receiver shows less than there is.',
      },
      {
        id: 'b',
        text: `The first result, with ${db(shortfallDb, 1)} added as a correction.`,
        reply:
          'The second reading may be low as well. The shortfall says that something is wrong, not how much.',
      },
      {
        id: 'c',
        text: `The mean of both results: an error of ${db(shortfallDb / 2, 2)} is not much.`,
        reply: 'A mean of a wrong number and one that may be wrong is a wrong number with more digits.',
      },
      {
        id: 'd',
        text: 'Nothing yet: more pads first, until the next one moves the reading fully.',
        reply: 'The check costs a minute and needs no better instrument.',
      },
    ],
  };
}

/** Which pad comes first? */
export function padsOrder(): Question {
  const power = levelToPower(clubUpperLevel());
  const watts = (powerW: number): string => powerText('shown', { powerW, digits: 3 });
  const ten = heatInPad({ power, gain: gainDb(-10) });
  return {
    id: 'pads-order',
    stem: `Up to ${watts(power)} come out of the transmitter. You have the club’s ${db(20, 0)} pad, known to half a decibel, that takes 1 W and a ${db(10, 0)} pad made of quarter-watt resistors, which takes 0.25 W. Which stands at the transmitter?`,
    answer: 'a',
    worked: `The first pad turns nearly all of the power into heat: up to ${watts(clubPadHeat())} in the one, ${watts(ten)} in the other. Only the first is made for it. Behind it there is ${watts(levelToPower(behindClubPad()))} left at most, and the small pad is safe.`,
    options: [
      {
        id: 'a',
        text: `The ${db(20, 0)} pad.`,
        reply: 'The rating decides, and it is looked up before anything is keyed.',
      },
      {
        id: 'b',
        text: `The ${db(10, 0)} pad: it takes off less, so it stays cool.`,
        reply: `It keeps nine tenths of what comes: ${watts(ten)}, more than twice what it takes.`,
      },
      {
        id: 'c',
        text: 'Either: the sum of the losses is the same.',
        reply: 'For the level, yes. For the heat the order is everything.',
      },
      {
        id: 'd',
        text: 'Either: together they take 1.25 W.',
        reply: 'They do not share. What the first keeps, the second never sees.',
      },
    ],
  };
}
