import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { fixed, given, givenBand } from '../write.ts';
import { expanded, limits, standard, swinging, uncertaintyOf } from './sum.ts';

/** Tolerances and bands to put in order. */
export const BAND_OTHERS: readonly BankQuestion[] = [
  other('bands', 'order', {
    id: 'order-of-parts',
    lesson: 'stacking/what-a-tolerance-says',
    difficulty: 3,
    given: { u: oneOf(0.1, 0.12), wide: oneOf(0.36, 0.4), swing: oneOf(0.45, 0.5), half: oneOf(0.9, 1) },
    make: ({ u, wide, swing, half }) => {
      const rows = [
        {
          id: 'standard',
          text: `a standard uncertainty of ${given(u, 'dB')}`,
          u: uncertaintyOf([standard(u)]),
        },
        { id: 'expanded', text: `U = ${given(wide, 'dB')} with k = 2`, u: uncertaintyOf([expanded(wide)]) },
        {
          id: 'swing',
          text: `mismatch of ${givenBand(swing, 'dB')} at most`,
          u: uncertaintyOf([swinging(swing)]),
        },
        {
          id: 'limits',
          text: `limits of ${givenBand(half, 'dB')}, nothing else known`,
          u: uncertaintyOf([limits(half)]),
        },
      ];
      return {
        stem: 'Four lines of a budget. Put them in the order in which they count.',
        payload: inOrder({
          ends: ['counts least', 'counts most'],
          items: rows.map(({ id, text }) => ({ id, text })),
          reversed: 'That begins with the one that counts most.',
          otherwise: slip(
            'limit-as-u',
            'Bring each to a standard uncertainty before you compare: U by its k, a flat limit by √3, a swinging one by √2.',
          ),
        }),
        worked: [
          `As standard uncertainties: ${given(u, 'dB')} as it is; ${given(wide, 'dB')}/2 = ${fixed('dB', 3)(wide / 2)}; ${given(swing, 'dB')}/√2 = ${fixed('dB', 3)(swing / Math.SQRT2)}; ${given(half, 'dB')}/√3 = ${fixed('dB', 3)(half / Math.sqrt(3))}.`,
        ],
        right: 'Compared as standard uncertainties.',
      };
    },
  }),
  other('bands', 'place', {
    id: 'point-at-dominant',
    lesson: 'measuring/where-to-spend',
    difficulty: 2,
    given: {
      pad: oneOf(0.3, 0.4, 0.5),
      cable: oneOf(0.05, 0.1),
      meter: oneOf(1, 1.5, 2),
      mismatch: oneOf(0.1, 0.2),
    },
    make: ({ pad, cable, meter, mismatch }) => {
      const boxes = [
        { id: 'pad', label: 'pad', note: givenBand(pad, 'dB'), words: `the pad, ${givenBand(pad, 'dB')}` },
        {
          id: 'cable',
          label: 'cable',
          note: givenBand(cable, 'dB'),
          words: `the cable, ${givenBand(cable, 'dB')}`,
        },
        {
          id: 'match',
          label: 'mismatch',
          note: givenBand(mismatch, 'dB'),
          words: `the mismatch, ${givenBand(mismatch, 'dB')}`,
        },
        {
          id: 'meter',
          label: 'meter',
          note: givenBand(meter, 'dB'),
          words: `the meter, ${givenBand(meter, 'dB')}`,
        },
      ];
      const wrong = slip('wrong-target', 'What is small already hardly shows among the squares.');
      return {
        stem: 'All four have limits and are independent. Which one is worth an evening’s work?',
        payload: {
          kind: 'place',
          figure: {
            figure: 'chain',
            name: 'Pad, cable, mismatch and meter in a row, each with its limits',
            boxes: boxes.map(({ words, ...box }) => box),
          },
          places: boxes.map(({ id, words }) =>
            id === 'meter'
              ? { id, words, reply: 'It has nearly all of the squares.', misconception: undefined }
              : { id, words, ...wrong },
          ),
          answer: 'meter',
        },
        worked: [
          `As standard uncertainties: pad ${given(pad, 'dB')}/√3 = ${fixed('dB', 3)(uncertaintyOf([limits(pad)]))}, cable ${given(cable, 'dB')}/√3 = ${fixed('dB', 3)(uncertaintyOf([limits(cable)]))}, mismatch ${given(mismatch, 'dB')}/√2 = ${fixed('dB', 3)(uncertaintyOf([swinging(mismatch)]))}, meter ${given(meter, 'dB')}/√3 = ${fixed('dB', 3)(uncertaintyOf([limits(meter)]))}.`,
        ],
        right: 'It has nearly all of the squares.',
      };
    },
  }),
];
