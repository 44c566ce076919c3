import {
  CLUB_READINGS,
  clubBorrowed,
  correctionFor,
  INFLUENCES,
  laterResult,
  lenderExpanded,
  readingsAlone,
} from '../sheet/borrowed.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { changeText, levelText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const level = (levelDbm: number, decimals = 2): string => levelText('shown', { levelDbm, decimals });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const band = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });

/** The guess that opens the lesson: how good can a borrowed calibration be? */
export function borrowedHowGood(): Question {
  const of = clubBorrowed();
  return {
    id: 'borrowed-how-good',
    stem: `A neighbouring club lends a meter with limits of ${band(of.lender)}. All evening the two are compared, level by level, in many rounds. How well can the club’s own meter be known afterwards?`,
    answer: 'b',
    worked: `Whatever is wrong with the lent meter is wrong in every round, in the same direction. By the readings alone the correction is known to ${band(readingsAlone(of).expanded)}; with the lender’s part (${band(lenderExpanded(of))}), the room’s warmth and the mismatch of the two inputs (each within ${band(INFLUENCES.mismatch)}) it is ${band(correctionFor(of).expanded)}. However many rounds, it never comes below the lender’s part.`,
    options: [
      {
        id: 'a',
        text: 'As well as one likes: it takes enough rounds.',
        reply: 'More rounds shrink the scatter. The lent meter’s own error sits in all of them alike.',
      },
      {
        id: 'b',
        text: 'Never better than the meter that was lent.',
        reply: 'What is borrowed comes with its doubt.',
      },
      {
        id: 'c',
        text: 'Better: the errors of the two partly cancel.',
        reply:
          'They would have to know of each other. The difference of the two is known well; which of them is right, it does not say.',
      },
      {
        id: 'd',
        text: 'Exactly as well as the lent meter.',
        reply: 'A little worse: scatter, display, warmth and mismatch of the comparison come on top.',
      },
    ],
  };
}

/** One round of three readings. */
export function borrowedRound(): Question {
  const [first = []] = CLUB_READINGS;
  const [before = 0, own = 0, after = 0] = first.slice(-3).map(Number);
  const right = (before + after) / 2 - own;
  return {
    id: 'borrowed-round',
    stem: `One round: the lent meter shows ${level(before)}, your own ${level(own)}, the lent one again ${level(after)}. What correction does this round give?`,
    answer: 'c',
    worked: `Reference less own, with the reference as it was at the time of the own reading: the mean of before and after. ${level((before + after) / 2, 3)} less ${level(own)} is ${change(right)}, to be added (VIM 2012, 2.53).`,
    options: [
      {
        id: 'a',
        text: change(-right),
        reply: 'That is the error of your meter. A correction has the opposite sign: it is added.',
      },
      {
        id: 'b',
        text: change(before - own),
        reply: 'By the first reading alone: a drift of the source between the two goes into it whole.',
      },
      { id: 'c', text: change(right), reply: 'A drift that is straight in time has dropped out.' },
      {
        id: 'd',
        text: change((before + own + after) / 3),
        reply: 'The mean of all three mixes the two meters instead of comparing them.',
      },
    ],
  };
}

/** What is written down later. */
export function borrowedLater(): Question {
  const of = clubBorrowed();
  const { estimate, expanded } = laterResult(of);
  const correction = correctionFor(of);
  return {
    id: 'borrowed-later',
    stem: `The same night your meter shows ${level(of.readingDbm, 1)}. The line gives a correction of ${change(correction.estimate)} ${band(correction.expanded)} there. A single reading, its display, warmth and mismatch bring ${band(Math.sqrt(expanded ** 2 - correction.expanded ** 2))} more. What do you write down?`,
    answer: 'd',
    worked: `The reading with the correction added: ${level(estimate)}. Its uncertainty has both: that of the correction, and that of this reading, squared and added: ${band(expanded)}.`,
    options: [
      {
        id: 'a',
        text: `${level(estimate)} ${band(correction.expanded)}`,
        reply: 'That forgets that today’s reading scatters too.',
      },
      {
        id: 'b',
        text: `${level(estimate)} ${band(of.lender)}`,
        reply: 'The lent meter’s own figure. Yours comes on top of it.',
      },
      {
        id: 'c',
        text: `${level(of.readingDbm - correction.estimate)} ${band(expanded)}`,
        reply: 'The sign is turned: a correction is added.',
      },
      { id: 'd', text: `${level(estimate)} ${band(expanded)}`, reply: 'Corrected, and honest.' },
    ],
  };
}

/** Where and how long a line of corrections holds. */
export function borrowedBeyond(): Question {
  const of = clubBorrowed();
  const [low, high] = [laterResult(of).expanded, laterResult({ ...of, months: 24 }).expanded];
  return {
    id: 'borrowed-beyond',
    stem: `Compared was from ${level(Number(CLUB_READINGS[0]?.[1] ?? 0), 0)} to ${level(Number(CLUB_READINGS.at(-1)?.[1] ?? 0), 0)}. Two years later your meter shows ${level(20, 0)}. What does the line of corrections give for it?`,
    answer: 'a',
    worked: `Nothing: no level so high was compared, and a line through what was measured is no promise about what was not. Within the levels it still holds, but with two years of drift: ${band(low)} has become ${band(high)}.`,
    options: [
      {
        id: 'a',
        text: 'Nothing. It ends where the comparison ended.',
        reply: 'A detector that runs out of its range does not tell the line.',
      },
      {
        id: 'b',
        text: 'The value of the line, drawn on.',
        reply: 'It is easily drawn on, and nobody has been there.',
      },
      {
        id: 'c',
        text: 'The correction of the last level.',
        reply: 'That one belongs to the last level.',
      },
      {
        id: 'd',
        text: 'The line drawn on, with a wider band.',
        reply: 'How much wider? The readings say nothing of it.',
      },
    ],
  };
}
