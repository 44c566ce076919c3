import {
  clubSpending,
  enoughFactor,
  expandedWith,
  neededExpanded,
  type Spending,
  shareOf,
  spentOn,
} from '../sheet/spend.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { levelText, numberText, percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const band = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
const uOf = (of: Spending): number => spentOn(of).expanded;
const level = (levelDbm: number): string => levelText('shown', { levelDbm, decimals: 2 });

/** The guess that opens the lesson: one evening, four offers. */
export function spendOnWhat(): Question {
  const club = clubSpending();
  const left = {
    meter: band(expandedWith(club, 'meter', 0.5)),
    pad: band(uOf({ ...club, pad: 0.1 })),
    readings: band(uOf({ ...club, count: 20 })),
    coax: band(expandedWith(club, 'coax', 0)),
  };
  return {
    id: 'spend-on-what',
    stem: `${level(club.levelDbm)} ${band(uOf(club))}: the club can’t tell. It has one evening to get below ${band(neededExpanded(club))}. The pad has limits of ${band(club.pad)}, the lent meter ${band(club.meter)}, the coax ${band(club.coax)}; a single reading scatters by ${band(club.scatter).slice(1)}, as is known from many evenings; four were taken. What should it do?`,
    wall: `${level(club.levelDbm)} ${band(uOf(club))}: the club can’t tell. It has one evening to get below ${band(neededExpanded(club))}. The pad has limits of ${band(club.pad)}; the lent meter is better, the coax better still, and four readings hardly scatter. What should it do?`,
    answer: 'b',
    worked: `The pad brings ${percentText('shown', { percent: 100 * shareOf(club, 'pad'), decimals: 0 })} of the variance. Measured to a tenth of a decibel it leaves ${left.pad}; nothing else on the list comes near.`,
    options: [
      {
        id: 'a',
        text: 'Borrow a meter that is twice as good.',
        reply: `That leaves ${left.meter}. The meter is not what makes the result unsure.`,
      },
      {
        id: 'b',
        text: 'Measure the pad with a multimeter.',
        reply: `That leaves ${left.pad}, and a verdict.`,
      },
      {
        id: 'c',
        text: 'Take twenty readings instead of four.',
        reply: `That leaves ${left.readings}. Readings make the scatter small; the pad is the same pad in each of them.`,
      },
      {
        id: 'd',
        text: 'Replace the thin coax by a good one.',
        reply: `Even a perfect one leaves ${left.coax}. Thin as it is, three metres of it are known well.`,
      },
    ],
  };
}

/** Halving a small part. */
export function spendHalved(): Question {
  const club = clubSpending();
  const [now, halved] = [uOf(club), expandedWith(club, 'meter', 0.5)];
  return {
    id: 'spend-halved',
    stem: `U is ${band(now)}. The meter’s limits, ${band(club.meter)}, are halved by a better one. How large is U then?`,
    answer: 'c',
    worked: `Standard uncertainties are squared before they are added. The meter brings ${percentText('shown', { percent: 100 * shareOf(club, 'meter'), decimals: 0 })} of the variance; halving it takes three quarters of that away. The square root of what is left: ${band(halved)}.`,
    options: [
      {
        id: 'a',
        text: band(now / 2),
        reply: 'Only if the meter were all there is. The others stay as they are.',
      },
      {
        id: 'b',
        text: band(now - club.meter / 2),
        reply: 'That takes the limits off as if uncertainties were added in a line.',
      },
      { id: 'c', text: band(halved), reply: 'A small part, halved, is hardly missed.' },
      {
        id: 'd',
        text: band(now),
        reply: 'Nearly. It does go down, though not by what the price suggests.',
      },
    ],
  };
}

/** More readings. */
export function spendReadings(): Question {
  const club = clubSpending();
  const more = uOf({ ...club, count: 16 });
  const now = uOf(club);
  return {
    id: 'spend-readings',
    stem: `Four readings give U = ${band(now).slice(1)}. Sixteen are taken instead, all with the same pad, meter and coax. How large is U then?`,
    answer: 'd',
    worked: `Four times as many readings halve what the scatter brings, and nothing else: ${band(more)}. Without any scatter at all it would still be ${band(expandedWith(club, 'readings', 0))} (GUM 4.2.3).`,
    options: [
      {
        id: 'a',
        text: band(now / 2),
        reply:
          'The root of four is two, but it divides the scatter alone. The pad is the same in all sixteen.',
      },
      {
        id: 'b',
        text: band(now / 4),
        reply: 'Not even the scatter falls like that: it goes with the square root of the number.',
      },
      {
        id: 'c',
        text: band(expandedWith(club, 'readings', 0) / 2),
        reply: 'There the scatter has gone, and everything else has been halved with it.',
      },
      { id: 'd', text: band(more), reply: 'Hardly worth the evening.' },
    ],
  };
}

/** How good the pad has to be. */
export function spendEnough(): Question {
  const club = clubSpending();
  const factor = enoughFactor(club, 'pad');
  if (factor === undefined) throw new RangeError('spendEnough: a better pad must do, got none');
  const needed = neededExpanded(club);
  const ratio = needed / uOf(club);
  const two = numberText('shown', { value: uOf(club) - needed, decimals: 2 });
  return {
    id: 'spend-enough',
    stem: `A verdict takes U = ${band(needed).slice(1)}; the chain has ${band(uOf(club)).slice(1)}. The pad’s limits are ${band(club.pad)}. How good must the pad be known, the rest as it is?`,
    answer: 'b',
    worked: `What the others bring stays: ${band(expandedWith(club, 'pad', 0))}. The square of the U that is needed less the square of that is left for the pad: ${band(factor * club.pad)} as limits.`,
    options: [
      {
        id: 'a',
        text: band(club.pad * ratio),
        reply: 'In proportion? Then everything else would have to shrink along with it.',
      },
      { id: 'b', text: band(factor * club.pad), reply: 'A multimeter does better than that.' },
      {
        id: 'c',
        text: band(club.pad - 2 * (uOf(club) - needed)),
        reply: `U has to come down by ${two} dB; limits, divided by the root of three and squared, are another measure.`,
      },
      {
        id: 'd',
        text: 'It cannot be done with the pad alone.',
        reply: `A perfect pad leaves ${band(expandedWith(club, 'pad', 0))}, well below what is needed.`,
      },
    ],
  };
}
