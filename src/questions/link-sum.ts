import { normalShareBelow } from '#compute';
import { shareWithin, wholeSumOf } from '../sheet/evaluated-link-sum.ts';
import {
  badMatch,
  bellOf,
  comparedChain,
  halfDecibels,
  longChain,
  receiverChain,
} from '../sheet/link-sum.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { numberText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const even = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
const db = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'dB' });
const percent = (share: number): string => percentText('shown', { percent: 100 * share, decimals: 1 });

/** The guess that opens the lesson: how often the sum is far out. */
export function beyondHalf(): Question {
  const sum = halfDecibels(4);
  const worst = bellOf(sum).worstCase.interval.upper;
  const half = worst / 2;
  const beyond = 1 - shareWithin(sum, half);
  return {
    id: 'shape-beyond-half',
    stem: `Four links stand one behind the other. Each may be off by up to ${db(0.5)} to either side, nothing more is known, and none knows of the others. At the very worst they are off by ${db(worst)} together. Think of a great many such chains: in how many of them is the sum off by more than half of that, ${db(half)}?`,
    answer: 'c',
    worked: `In ${percent(beyond)} of them, one in ${Math.round(1 / beyond)}. To be far out the links have to be off in the same direction, and most of them by much. There are many more ways to be off in both directions and to cancel.`,
    options: [
      {
        id: 'a',
        text: `In ${percent(0.5)}.`,
        reply: 'That is for one link, which is as likely anywhere between its limits. A sum is not.',
      },
      {
        id: 'b',
        text: `In ${percent(2 * (1 - normalShareBelow(1)))}.`,
        reply: `That takes ${even(half)}, the root of the sum of the squares of the limits, for one standard uncertainty. It is more: a limit is the root of three, 1.73, standard uncertainties.`,
      },
      {
        id: 'c',
        text: `In ${percent(beyond)}.`,
        reply: 'It does happen, and much less often than a single link would make one think.',
      },
      {
        id: 'd',
        text: `In ${percent(2 * 0.25 ** 4)}.`,
        reply:
          'That is how often all four are beyond half of their limits on the same side. They need not be: one at its end makes up for another in the middle.',
      },
    ],
  };
}

/** One link alone: its middle 95 % ends inside its limits. */
export function oneBox(): Question {
  const limit = 2;
  const sum = {
    links: [{ shape: 'rectangular', sizeDb: limit }],
    sizes: 'stated',
    coverage: 'ninetyFive',
  } as const;
  const { standardUncertainty: u, expanded } = bellOf(sum).propagation;
  const { interval, factor } = wholeSumOf(sum);
  return {
    id: 'shape-one-box',
    stem: `A receiver shows levels with limits of ${even(limit)} and nothing more is known; all else in the chain is tiny beside it. Which interval about the reading holds 95 in a hundred?`,
    answer: 'b',
    worked: `A box holds as much in any tenth of its width as in any other: 95 in a hundred are the middle 95 in a hundred of its width, ${even(interval.upper)}. That is ${numberText('shown', { value: factor, decimals: 2 })} standard uncertainties of ${db(u)}.`,
    options: [
      {
        id: 'a',
        text: even(u),
        reply: `That is one standard uncertainty. Of a box it holds ${percent(shareWithin(sum, u))}.`,
      },
      {
        id: 'b',
        text: even(interval.upper),
        reply: 'Inside the limits, as it must be: they hold all of it.',
      },
      {
        id: 'c',
        text: even(expanded),
        reply: 'That is the factor of a bell. It reaches beyond the limits, where nothing is.',
      },
      {
        id: 'd',
        text: even(limit),
        reply: 'The limits hold all of it, not 95 in a hundred.',
      },
    ],
  };
}

/** Which sum a bell may stand in for. */
export function whichBell(): Question {
  const sums = { long: longChain(), match: badMatch(), receiver: receiverChain(), like: comparedChain() };
  const held = (of: keyof typeof sums): string => percent(wholeSumOf(sums[of]).covered);
  return {
    id: 'shape-which-bell',
    stem: 'k = 2 is meant to hold 95.45 in a hundred. For which of these sums does it come nearest to that?',
    answer: 'd',
    worked: `The last holds ${held('like')}: no part outweighs all others together. The others are ruled by one part, and what counts then is the shape of that part.`,
    options: [
      {
        id: 'a',
        text: `Five links with limits: a receiver of ${even(2)}, and four of ${even(0.1)}.`,
        reply: `There are five, but four of them hardly count. The sum is nearly a box, and k = 2 holds ${held('long')}.`,
      },
      {
        id: 'b',
        text: `A bad match of ${even(0.9)}, U-shaped, and a meter with limits of ${even(0.2)}.`,
        reply: `The U shape rules: k = 2 reaches beyond the worst case, and holds ${held('match')}.`,
      },
      {
        id: 'c',
        text: `A receiver of ${even(2)}, two pads of ${even(0.5)}, a cable of ${even(0.1)}, a small mismatch.`,
        reply: `Still ruled by the receiver: k = 2 holds ${held('receiver')}.`,
      },
      {
        id: 'd',
        text: `A receiver of ${even(0.3)}, two pads and a cable of ${even(0.1)}, a mismatch of ${even(0.2)}.`,
        reply: 'No part outweighs the rest. This is what the rule of two was made for.',
      },
    ],
  };
}

/** Where a mismatch of unknown phase is likeliest. */
export function likeliestPlace(): Question {
  const limit = 0.9;
  const sum = {
    links: [{ shape: 'arcsine', sizeDb: limit }],
    sizes: 'stated',
    coverage: 'two',
  } as const;
  const outer = 1 - shareWithin(sum, 0.9 * limit);
  const inner = shareWithin(sum, 0.1 * limit);
  return {
    id: 'shape-likeliest-place',
    stem: `A bad match makes the reading wrong by up to ${db(limit)} to either side, as the phase will have it, and nobody knows the phase. Where is the error likeliest to be?`,
    answer: 'a',
    worked: `Near its limits. A sine spends most of its time near its crests: the outermost tenth of the width, half of it on either side, holds ${percent(outer)}, the tenth about nothing ${percent(inner)}.`,
    options: [
      {
        id: 'a',
        text: 'Near one of its limits.',
        reply: 'And as likely the upper as the lower one; so no correction can be made of it.',
      },
      {
        id: 'b',
        text: 'Near nothing.',
        reply: 'The mean is nothing, and the mean is the least likely place of all.',
      },
      {
        id: 'c',
        text: 'As likely anywhere between its limits.',
        reply: 'The phase is as likely anywhere. The error goes with its cosine, which dwells at its ends.',
      },
      {
        id: 'd',
        text: `Near ${even(limit / Math.SQRT2)}, its standard uncertainty.`,
        reply:
          'A standard uncertainty says how wide a shape is, not where its values are. Nothing special happens there.',
      },
    ],
  };
}
