import { wholeRowOf } from '../sheet/evaluated-pads.ts';
import { clubRow, type PadsInARow, rootOfStated, sumOfStated } from '../sheet/pads-in-a-row.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { dbText, numberText, percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const percent = (value: number, decimals: number): string =>
  percentText('shown', { percent: value, decimals });
const times = (value: number): string => numberText('shown', { value, decimals: 1 });

/** The guess that opens the lesson: how often is a sum near its worst? */
export function worstGuess(): Question {
  const row = clubRow();
  const sum = sumOfStated(row);
  const rare = 1 - wholeRowOf(row).withinNineTenths;
  return {
    id: 'worst-near-the-end',
    stem: `Three pads, each within ${band(row.padDb)}, and a meter within ${band(row.meterDb)}, so together, reflections left out, certainly within ${band(sum)}. How often do four such parts, picked at random, come within a tenth of that end: off by more than ${dbText('shown', { db: 0.9 * sum, decimals: 2 })}?`,
    wall: `Three pads, each within ${band(row.padDb)}, and a meter within ${band(row.meterDb)}: together certainly within ${band(sum)}. How often do four such parts, picked at random, come within a tenth of that end?`,
    answer: 'c',
    worked: `To be that far out, all four have to be off in the same direction, and nearly all of them close to their limits. That happens to ${percent(100 * rare, 3)} of the rows, once in about ${numberText('shown', { value: 1 / rare, decimals: -2 })}. The limits are kept by all of them; hardly one comes near.`,
    options: [
      {
        id: 'a',
        text: `About ${percent(10, 0)}: it is a tenth of the range.`,
        reply:
          'So it is for one part with limits and nothing else known. For a sum the ends are much rarer than the middle.',
      },
      {
        id: 'b',
        text: `About ${percent(1, 0)}.`,
        reply:
          'For two alike parts that would be right. Each further part that has to take the same side makes it rarer.',
      },
      {
        id: 'c',
        text: `About ${percent(100 * rare, 3)}.`,
        reply: 'All four off the same way, and together hardly short of their limits.',
      },
      {
        id: 'd',
        text: 'Never.',
        reply:
          'It is allowed by every one of the four data sheets. Rare is not never, and a guarantee has to count it.',
      },
    ],
  };
}

/** Adding limits. */
export function worstSum(): Question {
  const row: PadsInARow = { ...clubRow(), count: 4, padDb: 0.3, meterDb: 0.2 };
  return {
    id: 'worst-four-pads',
    stem: `Four pads of ${band(row.padDb)} each in front of a receiver of ${band(row.meterDb)}, all of them limits. How far off can the result be at most (reflections left out)?`,
    answer: 'b',
    worked: `Four times ${band(row.padDb).slice(1)} and ${band(row.meterDb).slice(1)}: ${band(sumOfStated(row))}. Limits in decibels add, and nothing has to be known about shapes or about whether the parts are independent.`,
    options: [
      {
        id: 'a',
        text: band(rootOfStated(row)),
        reply: 'Root of the sum of squares. Some rows are farther off than that: it is no “at most”.',
      },
      { id: 'b', text: band(sumOfStated(row)), reply: 'Every part at its limit, all in one direction.' },
      {
        id: 'c',
        text: band(row.padDb + row.meterDb),
        reply: 'One pad was counted. Four pads may all be off, and all the same way.',
      },
      {
        id: 'd',
        text: band(row.padDb),
        reply: 'That is the largest single part. The others come on top of it.',
      },
    ],
  };
}

/** A part without a limit. */
export function worstCertificate(): Question {
  const row: PadsInARow = { ...clubRow(), meterDb: 0.2, meterSays: 'certificate' };
  const pads = { ...row, meterDb: 0 };
  return {
    id: 'worst-certificate',
    stem: `Three pads with limits of ${band(row.padDb)}, and a meter whose certificate says U = ${band(row.meterDb).slice(1)} (k = 2). What can be guaranteed for the sum?`,
    answer: 'd',
    worked: `The pads guarantee ${band(sumOfStated(pads))} among themselves. The meter guarantees nothing: now and then its correction is off by more than U. So the sum has no end, and a coverage interval is all that can be stated.`,
    options: [
      {
        id: 'a',
        text: band(sumOfStated(row)),
        reply:
          'U was added as if it were a limit. It is the width of an interval that holds about 95 %, not all.',
      },
      {
        id: 'b',
        text: band(sumOfStated(pads) + row.meterDb / 2),
        reply: 'U divided by its k is a standard uncertainty. Of that, even more lies beyond.',
      },
      {
        id: 'c',
        text: band(sumOfStated(pads)),
        reply: 'That is true of the three pads. The meter was left out.',
      },
      { id: 'd', text: 'Nothing.', reply: 'One part without a limit, and the sum has none.' },
    ],
  };
}

/** From two pads to eight. */
export function worstEight(): Question {
  const of = (count: number): PadsInARow => ({ ...clubRow(), count, meterDb: 0 });
  const limits = sumOfStated(of(8)) / sumOfStated(of(2));
  const most = wholeRowOf(of(8)).halfWidth / wholeRowOf(of(2)).halfWidth;
  const grows = (one: number, other: number): string =>
    `The guarantee ${times(one)} times, what holds 95 % ${times(other)} times`;
  return {
    id: 'worst-two-to-eight',
    stem: `Instead of two pads you use eight, each within the same limits, all from different makers. How much wider does the guarantee become, and how much wider the band that holds 95 % of all such rows?`,
    answer: 'a',
    worked: `Limits add: four times as many, ${times(limits)} times as wide. Deviations that have nothing to do with one another partly cancel, and the band of 95 % grows about as the root of the number: from ${band(wholeRowOf(of(2)).halfWidth)} to ${band(wholeRowOf(of(8)).halfWidth)}, ${times(most)} times.`,
    options: [
      {
        id: 'a',
        text: `${grows(limits, most)}.`,
        reply: 'The one as the number, the other about as its root.',
      },
      {
        id: 'b',
        text: `${grows(limits, limits)}.`,
        reply:
          'So it would be if all eight erred alike, as pads of one batch may. These are from different makers.',
      },
      {
        id: 'c',
        text: `${grows(most, most)}.`,
        reply: 'A guarantee counts the case in which nothing cancels. It grows as the number of pads.',
      },
      {
        id: 'd',
        text: `${grows(most, 1)}.`,
        reply:
          'More parts never make a sum surer: each adds its variance. Only a mean gets better by more readings.',
      },
    ],
  };
}
