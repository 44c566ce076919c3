import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { given, givenPower } from '../write.ts';

const WHERE = {
  a: { label: 'socket', note: '' },
  b: { label: 'in-line meter', note: '' },
  c: { label: 'cable', note: '' },
  d: { label: 'dummy load', note: '' },
} as const;

/** Methods to point at and to put in order. */
export const METHOD_OTHERS: readonly BankQuestion[] = [
  other('methods', 'place', {
    id: 'point-at-plane',
    lesson: 'decibels/which-power',
    syllabus: ['6.3', '8.1'],
    difficulty: 2,
    given: { watts: oneOf(0.5, 1, 2, 5, 10), loss: oneOf(0.3, 0.5, 0.8, 1.2) },
    make: ({ watts, loss }) => {
      const boxes = Object.entries(WHERE).map(([id, box]) => ({
        id,
        ...box,
        note: id === 'c' ? given(loss, 'dB') : box.note,
      }));
      return {
        stem: `The sheet says: “mean power at the transmitter’s socket, ${givenPower(watts)}”. The voltage was measured across the dummy load, behind the cable. Whose loss is to be added to the level at the load, so that the result holds where the sheet says?`,
        payload: {
          kind: 'place',
          figure: { figure: 'chain', name: 'Socket, in-line meter, cable and dummy load in a row', boxes },
          places: [
            {
              id: 'a',
              words: 'the socket',
              ...slip(
                'one-power-only',
                'That is where the result is to hold. What stands between it and the reading is the question.',
              ),
            },
            {
              id: 'b',
              words: 'the in-line meter',
              ...slip(
                'link-left-out',
                'A good one takes next to nothing, and none is stated here. The cable’s loss is.',
              ),
            },
            {
              id: 'c',
              words: `the cable, ${given(loss, 'dB')}`,
              reply: 'What it loses is added to the reading at the load.',
              misconception: undefined,
            },
            {
              id: 'd',
              words: 'the dummy load',
              ...slip(
                'load-assumed',
                'Its resistance is in the reading already. What was lost before it is not.',
              ),
            },
          ],
          answer: 'c',
        },
        worked: [
          `Between load and socket lies the cable: its ${given(loss, 'dB')} are added to the level found at the load.`,
        ],
        right: 'What it loses is added to the reading at the load.',
      };
    },
  }),
  other('methods', 'order', {
    id: 'order-of-dc-substitution',
    lesson: 'measuring/radio-watts-from-dc-watts',
    syllabus: ['8.1'],
    difficulty: 2,
    given: {},
    make: () => {
      const items = [
        { id: 'cold', text: 'read the temperature of the cold load and of the room' },
        { id: 'rf', text: 'key the transmitter into the load until the temperature stands still' },
        { id: 'off', text: 'key off and take the transmitter off the load' },
        { id: 'cool', text: 'let the load cool' },
        { id: 'dc', text: 'heat it with direct current to about the same rise' },
        { id: 'sum', text: 'volts times amperes, times the ratio of the two rises' },
      ];
      return {
        stem: 'A transmitter’s power is to be found from the warmth of its load, by direct current. In what order?',
        payload: inOrder({
          ends: ['first of all', 'last of all'],
          items,
          reversed: 'That is from the end to the beginning.',
          otherwise: slip(
            'heat-too-early',
            'Radio frequency and direct current never come together into the load, and each needs its time to settle.',
          ),
        }),
        worked: [
          'Cold, then radio frequency until it is steady, off, cool, then direct current to the same rise, and only then the sum.',
        ],
        right: 'And never both into the load at once.',
      };
    },
  }),
];
