import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { given } from '../write.ts';

/** Calibration and traceability to put in order and to point at. */
export const TRACE_OTHERS: readonly BankQuestion[] = [
  other('traceability', 'order', {
    id: 'order-of-chain',
    lesson: 'traceability/the-chain-to-the-definition',
    difficulty: 1,
    given: {},
    make: () => {
      const items = [
        { id: 'definition', text: 'the definition of the units, by constants of nature' },
        { id: 'national', text: 'a national standard of radio-frequency power' },
        { id: 'laboratory', text: 'the reference of a calibration laboratory' },
        { id: 'lent', text: 'a power meter that was lent' },
        { id: 'own', text: 'your own meter' },
        { id: 'reading', text: 'a reading of your transmitter' },
      ];
      return {
        stem: 'Put the calibration chain in order, from the definition down to your reading.',
        payload: inOrder({
          ends: ['the definition first', 'the reading last'],
          items,
          reversed: 'That goes up. Asked is the way down.',
          otherwise: slip(
            'chain-gets-better',
            'Each is compared with the one above it, and is less certain than it.',
          ),
        }),
        worked: [
          'Definition, national standard, laboratory, lent meter, your meter, reading: each is compared with the one before, and the band grows at every step.',
        ],
        right: 'Each compared with the one above it.',
      };
    },
  }),
  other('traceability', 'order', {
    id: 'order-of-transfer',
    lesson: 'measuring/borrowing-a-calibration',
    difficulty: 2,
    given: {},
    make: () => {
      const items = [
        { id: 'warm', text: 'let both meters and the source warm up' },
        { id: 'first', text: 'read the lent meter on the source' },
        { id: 'own', text: 'read your own meter on the source' },
        { id: 'again', text: 'read the lent meter on the source once more' },
        { id: 'mean', text: 'mean of the lent one’s two readings, less your own' },
        { id: 'write', text: 'write down the correction with its uncertainty, frequency and date' },
      ];
      return {
        stem: 'You carry a calibration over from a lent meter to your own, key off at each change. In what order?',
        payload: inOrder({
          ends: ['first of all', 'last of all'],
          items,
          reversed: 'That is from the end to the beginning.',
          otherwise: slip(
            'drift-ignored',
            'Yours is read between two readings of the lent one, so that a steady drift drops out.',
          ),
        }),
        worked: ['Warm up, lent, own, lent, mean less own, and write it down with all that belongs to it.'],
        right: 'Yours between two of the lent one’s.',
      };
    },
  }),
  other('traceability', 'place', {
    id: 'point-at-own-step',
    lesson: 'traceability/the-chain-to-the-definition',
    difficulty: 2,
    given: {
      laboratory: oneOf(0.02, 0.05),
      lent: oneOf(0.1, 0.15, 0.2),
      own: oneOf(0.4, 0.5, 0.6),
      pad: oneOf(0.1, 0.15),
    },
    make: ({ laboratory, lent, own, pad }) => {
      const boxes = [
        {
          id: 'laboratory',
          label: 'laboratory',
          note: given(laboratory, 'dB'),
          words: `the laboratory’s calibration, ${given(laboratory, 'dB')}`,
        },
        {
          id: 'lent',
          label: 'lent meter',
          note: given(lent, 'dB'),
          words: `the lent meter, ${given(lent, 'dB')}`,
        },
        {
          id: 'own',
          label: 'own meter',
          note: given(own, 'dB'),
          words: `your own meter, ${given(own, 'dB')}`,
        },
        { id: 'pad', label: 'pad', note: given(pad, 'dB'), words: `the pad, ${given(pad, 'dB')}` },
      ];
      const says = {
        laboratory: slip(
          'wrong-target',
          'A better laboratory would cost most and change nothing that you could see.',
        ),
        lent: slip('wrong-target', 'Better, but still hidden behind your own meter’s part.'),
        own: { reply: 'It has by far the largest square.', misconception: undefined },
        pad: slip('wrong-target', 'Its square is a small part of the whole.'),
      };
      return {
        stem: 'Each step of the chain adds the expanded uncertainty beside it. Where does an evening’s work help most?',
        payload: {
          kind: 'place',
          figure: {
            figure: 'chain',
            name: 'Laboratory, lent meter, own meter and pad, each with what it adds',
            boxes: boxes.map(({ words, ...box }) => box),
          },
          places: boxes.map(({ id, words }) => ({ id, words, ...says[id as keyof typeof says] })),
          answer: 'own',
        },
        worked: [
          `Squares count: ${given(own, 'dB')} against ${given(lent)}, ${given(pad)} and ${given(laboratory, 'dB')}.`,
        ],
        right: 'It has by far the largest square.',
      };
    },
  }),
];
