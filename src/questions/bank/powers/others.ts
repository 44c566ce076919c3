import { meanOverPeakEnvelope } from '#compute';
import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { given, givenPower, power } from '../write.ts';

/** Kinds of power to put in order. */
export const POWER_OTHERS: readonly BankQuestion[] = [
  other('powers', 'order', {
    id: 'order-of-means',
    lesson: 'decibels/which-power',
    syllabus: ['1.9'],
    difficulty: 2,
    given: { pep: oneOf(1, 2, 4, 5, 8, 10, 20, 50), share: oneOf(15, 20, 25, 30) },
    make: ({ pep, share }) => {
      const rows = [
        {
          id: 'few',
          text: `a beacon whose key is down for ${given(share, 'percent')} of the time`,
          mean: share / 100,
        },
        {
          id: 'paris',
          text: 'the word PARIS in Morse, over and over',
          mean: meanOverPeakEnvelope('parisWord'),
        },
        {
          id: 'tones',
          text: 'two equal tones on single sideband',
          mean: meanOverPeakEnvelope('twoEqualTones'),
        },
        { id: 'carrier', text: 'a steady carrier, frequency-modulated', mean: 1 },
      ];
      return {
        stem: `Four signals, all of ${givenPower(pep)} peak envelope power. Put them in the order of the heat that they make in a dummy load.`,
        payload: inOrder({
          ends: ['least heat first', 'most heat last'],
          items: rows.map(({ id, text }) => ({ id, text })),
          reversed: 'That begins with the most heat.',
          otherwise: slip(
            'mean-is-pep',
            'Heat goes with the mean power: ask of each what share of the peak envelope power it has on average.',
          ),
        }),
        worked: [
          `Mean powers: ${given(share, 'percent')} of ${givenPower(pep)} is ${power()((pep * share) / 100)}; PARIS has its key down for 22 of 50 units, and 22/50 × ${givenPower(pep)} = ${power()((pep * 22) / 50)}; for two tones 1/2 × ${givenPower(pep)} = ${power()(pep / 2)}; a steady carrier has all of its ${givenPower(pep)}.`,
        ],
        right: 'By their mean, which is what heats.',
      };
    },
  }),
];
