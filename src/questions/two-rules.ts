import { expansionUm } from '#compute';
import {
  claimOf,
  clubFrame,
  differenceMm,
  misfitMm,
  PROMISE_PERCENT,
  type TwoRules,
} from '../sheet/two-rules.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const mm = (value: number, decimals: number): string =>
  quantityText('shown', { value, decimals, unit: 'mm' });
const percent = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'percent' });

function claimText(rules: TwoRules): string {
  const { expanded } = claimOf(rules).propagation;
  return plusMinusText('shown', { halfWidth: expanded, decimals: decimalsFor(expanded), unit: 'mm' });
}

/** The guess that opens the lesson: both read it right, and yet it does not fit. */
export function whyNoFit(): Question {
  const frame = clubFrame();
  const misfit = misfitMm({ ...frame, lengthMm: 1500 });
  const warm = expansionUm({ lengthMm: 1500, expansionPerK: 11.5e-6, temperatureC: 30 }) / 1000;
  return {
    id: 'rules-why-no-fit',
    stem: `Two members build a frame: one measures the posts, the other the holes, each with a rule of their own, each to the nearest millimetre. The frame of ${mm(300, 0)} fits. The one of ${mm(1500, 0)} is off by ${mm(misfit, 1)}. Why?`,
    answer: 'c',
    worked: `The two rules are not the same length. They differ by ${percent(frame.firstPercent - frame.secondPercent)} of whatever they measure: ${mm(differenceMm({ ...frame, lengthMm: 300 }), 1)} at ${mm(300, 0)}, ${mm(misfit, 1)} at ${mm(1500, 0)}. Reading and temperature are too small, and would not grow like that.`,
    options: [
      {
        id: 'a',
        text: 'One of them misread a mark on the long piece.',
        reply: 'It could happen once. Here it comes back with every long piece, whoever reads.',
      },
      {
        id: 'b',
        text: 'A millimetre is too coarse: with tenths it would fit.',
        reply: `Each reading is at most half a millimetre off, at any length. That does not explain ${mm(misfit, 1)}, nor why it grows.`,
      },
      {
        id: 'c',
        text: 'The rules themselves differ, by a share of the length.',
        reply: 'A rule is a copy of a copy of the metre, and no two copies are alike.',
      },
      {
        id: 'd',
        text: 'One of them worked in the sun.',
        reply: `A steel rule that is ten kelvin warmer is ${mm(warm, 2)} longer over ${mm(1500, 0)}. It is there, and far too little.`,
      },
    ],
  };
}

/** How the misfit grows. */
export function frameMisfit(): Question {
  const frame = clubFrame();
  const at = (lengthMm: number): number => misfitMm({ ...frame, lengthMm });
  const [short, long] = [400, 1200];
  return {
    id: 'rules-misfit-grows',
    stem: `With the same two rules a frame of ${mm(short, 0)} is off by ${mm(at(short), 2)}. How far off is one of ${mm(long, 0)}?`,
    answer: 'd',
    worked: `A rule that reads too much or too little does so by a share of the length. Three times the length is three times the misfit: ${mm(at(long), 2)}.`,
    options: [
      {
        id: 'a',
        text: mm(at(short), 2),
        reply: 'That would be so if only the readings were to blame: they do not know how long the piece is.',
      },
      {
        id: 'b',
        text: mm(at(short) * Math.sqrt(long / short), 2),
        reply:
          'The root is for parts that err independently. Every centimetre of one rule errs the same way.',
      },
      {
        id: 'c',
        text: mm(2 * at(short), 2),
        reply: `The piece is longer by twice ${mm(short, 0)}, but the misfit began at nothing, not at ${mm(short, 0)}.`,
      },
      {
        id: 'd',
        text: mm(at(long), 2),
        reply: 'In proportion, as everything that the scale itself is wrong by.',
      },
    ],
  };
}

/** Which word is meant. */
export const whichWord = (): Question => ({
  id: 'rules-which-word',
  stem: `The second rule is laid beside a better one: it reads ${mm(0.6, 1)} too little in a metre. What has been found?`,
  answer: 'a',
  worked:
    'Measured value less reference value, with its sign, here minus: an error (VIM 2012, 2.16), here the part that comes back every time. It can be stated only because there was something better to compare with, and it is itself known only to the uncertainty of that comparison.',
  options: [
    {
      id: 'a',
      text: 'An error of the rule.',
      reply: 'And its correction has the opposite sign.',
    },
    {
      id: 'b',
      text: 'The uncertainty of the rule.',
      reply:
        'An uncertainty has no sign: it says how far apart the possible values lie, not where this one is.',
    },
    {
      id: 'c',
      text: 'The resolution of the rule.',
      reply:
        'Resolution is the smallest change that shows, here the distance of the marks. It is the same on a rule that is right.',
    },
    {
      id: 'd',
      text: 'The tolerance of the rule.',
      reply: 'A tolerance is what somebody allows for every rule of the kind. This was found on one.',
    },
  ],
});

/** What finer marks are worth. */
export function finerMarks(): Question {
  const rules = { ...clubFrame(), lengthMm: 1500, stepMm: 0.1, known: 'promise' } as const;
  const limit = (rules.lengthMm * PROMISE_PERCENT) / 100;
  const even = (halfWidth: number, decimals: number): string =>
    plusMinusText('shown', { halfWidth, decimals, unit: 'mm' });
  return {
    id: 'rules-finer-marks',
    stem: `Both members buy rules with marks every ${mm(0.1, 1)}. All that is known of their scales is what the makers promise: no more than ${percent(PROMISE_PERCENT)} off. Which expanded uncertainty (k = 2) may they state for the misfit at ${mm(1500, 0)}?`,
    answer: 'c',
    worked: `Each rule may be off by ${even(limit, 1)}: limits, nothing else known, so divided by the root of three. Two of them, and two readings to a tenth, squared and added; the root times 2 is ${claimText(rules)}. The marks hardly count.`,
    options: [
      {
        id: 'a',
        text: even(0.1, 1),
        reply: 'That is the distance of the marks: what can be told apart, not how far it is right.',
      },
      {
        id: 'b',
        text: claimText({ ...rules, known: 'nothing' }),
        reply: 'That counts the readings and believes the scales.',
      },
      {
        id: 'c',
        text: claimText(rules),
        reply: 'The scales decide. A comparison with a better rule would help; finer marks do not.',
      },
      {
        id: 'd',
        text: even(2 * limit, 1),
        reply:
          'That is the worst case, both promises used up in opposite directions: a limit, not an expanded uncertainty.',
      },
    ],
  };
}
