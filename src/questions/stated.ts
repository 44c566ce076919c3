import { clubPad, type Stated, saidDb, shareWithin, standardDb } from '../sheet/stated.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { changeText, dbText, numberText, percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const sized = (db: number): string => dbText('shown', { db, decimals: decimalsFor(db) });
const limit = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

const end = (db: number): string => changeText('shown', { value: db, decimals: 2, unit: 'dB' });

/** The guess that opens the lesson: where do the lumps sit? */
export function statedLumps(): Question {
  const pad = clubPad();
  const a = pad.halfWidthDb;
  return {
    id: 'stated-lumps',
    stem: `A pad’s data sheet says ${limit(a)} and nothing else. Draw that as an even bar, from ${end(-a)} to ${end(a)}, and twirl it about its middle. Then melt it into two equal lumps, one on each side. How far out must they sit to be just as hard to twirl?`,
    answer: 'b',
    worked: `Hard to twirl means weight times distance squared, and squares count what lies far out. The lumps sit at the half-width divided by the root of 3, ${sized(standardDb(pad))}: farther out than half way, and well inside the ends. That distance is what this lesson is about.`,
    options: [
      {
        id: 'a',
        text: `${sized(a / 2)}, half way along each arm`,
        reply:
          'There the pieces lie on the average. But a piece at the end is four times as hard to twirl as one half way, so the lumps have to go farther out.',
      },
      {
        id: 'b',
        text: `${sized(standardDb(pad))}, a little beyond half way`,
        reply: 'The half-width divided by the root of 3. Why that root, you will see in a moment.',
      },
      {
        id: 'c',
        text: `${sized((2 * a) / 3)}, two thirds of each arm`,
        reply:
          'There is the point at which a triangle balances. Nothing balances here: distances are squared, and then their mean is taken.',
      },
      {
        id: 'd',
        text: `${sized(a)}, at the ends`,
        reply: `Only if all of the weight were there. Taking the limit itself for the spread makes it ${numberText('shown', { value: a / standardDb(pad), decimals: 2 })} times too large.`,
      },
    ],
  };
}

/** A step of a display: which half-width is it? */
export function statedDisplay(): Question {
  const step = 0.1;
  const half: Stated = { meaning: 'nothing', halfWidthDb: step / 2, slip: 'none' };
  return {
    id: 'stated-display',
    stem: `A power meter shows tenths of a decibel. What standard uncertainty does that last digit bring?`,
    answer: 'a',
    worked: `A shown number stands for everything that rounds to it: half a step to either side, ${limit(step / 2)}, and nothing else known. Divided by the root of 3 that is ${sized(standardDb(half))}.`,
    options: [
      {
        id: 'a',
        text: sized(standardDb(half)),
        reply: 'Half a step is the limit, and the root of 3 does the rest.',
      },
      {
        id: 'b',
        text: sized(standardDb({ ...half, halfWidthDb: step })),
        reply:
          'The whole step was taken for the half-width: twice too much. The number may be off by half a step at most.',
      },
      {
        id: 'c',
        text: sized(step / 2),
        reply: 'That is the limit itself. Few values lie that far out; the standard uncertainty is smaller.',
      },
      {
        id: 'd',
        text: sized(step),
        reply:
          'One digit is not an uncertainty of one digit: the limit is half of it, and the divisor is still to come.',
      },
    ],
  };
}

/** A mismatch, whose shape is another one. */
export function statedMismatch(): Question {
  const wave: Stated = { meaning: 'wave', halfWidthDb: 0.2, slip: 'rootThree' };
  const right = standardDb(wave);
  const said = saidDb(wave) ?? right;
  const a = wave.halfWidthDb;
  return {
    id: 'stated-mismatch',
    stem: `Two reflections meet at a phase that nobody knows. Their sizes are known, and say that the reading may be off by ${limit(a)} at most. What is the standard uncertainty?`,
    answer: 'c',
    worked: `A wave spends most of its turn near its ends, so values there are the likeliest (U-shaped). The lumps sit farther out than those of an even bar: ${limit(a)} divided by the root of 2 is ${sized(right)}.`,
    options: [
      {
        id: 'a',
        text: sized(a / 2),
        reply:
          'That halves it, as if it were an expanded uncertainty with k = 2. It is a limit, and of a shape that sits at its ends.',
      },
      {
        id: 'b',
        text: sized(said),
        reply: `The root of 3 belongs to limits of which nothing else is known. Here something is known, and it makes the result ${percentText('shown', { percent: 100 * (1 - said / right), decimals: 0 })} too small.`,
      },
      {
        id: 'c',
        text: sized(right),
        reply: 'The root of 2, as for the RMS value of a sine: it is the same sum.',
      },
      {
        id: 'd',
        text: sized(a),
        reply: 'That is the limit. It is reached at one phase in a whole turn and at its opposite.',
      },
    ],
  };
}

/** A certificate's number, which is no limit. */
export function statedCertificate(): Question {
  const paper: Stated = { meaning: 'certificate', halfWidthDb: 0.2, slip: 'rootThree' };
  const a = paper.halfWidthDb;
  const beyond = percentText('shown', { percent: 100 * (1 - shareWithin(paper, 2)), decimals: 1 });
  return {
    id: 'stated-certificate',
    stem: `A certificate gives the correction of a pad and beside it U = ${sized(a)} (k = 2). What does that number say?`,
    answer: 'd',
    worked: `U is k times a standard uncertainty: ${sized(a)} divided by 2 is ${sized(standardDb(paper))}. For a bell, ${beyond} of the values lie beyond U. It is no limit, and no sum of limits may lean on it.`,
    options: [
      {
        id: 'a',
        text: `u = ${sized(saidDb(paper) ?? a)}; the correction is certainly within ${limit(a)}.`,
        reply: 'Two slips: the root of 3 is for limits, and U is none.',
      },
      {
        id: 'b',
        text: `u = ${sized(a)}; nothing is said about limits.`,
        reply: 'The k behind it was not read: U is twice u here.',
      },
      {
        id: 'c',
        text: `u = ${sized(standardDb(paper))}; the correction is certainly within ${limit(a)}.`,
        reply: `The division is right. But certain is nothing: ${beyond} of the values lie beyond.`,
      },
      {
        id: 'd',
        text: `u = ${sized(standardDb(paper))}; now and then the correction is off by more than ${sized(a)}.`,
        reply: 'Divided by its k, and not taken for a promise.',
      },
    ],
  };
}
