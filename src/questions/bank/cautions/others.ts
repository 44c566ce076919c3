import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { given, givenPower } from '../write.ts';

/** Cautions to put in order and to point at. */
export const CAUTION_OTHERS: readonly BankQuestion[] = [
  other('cautions', 'order', {
    id: 'order-of-swap',
    lesson: 'measuring/borrowing-a-calibration',
    difficulty: 1,
    given: {},
    make: () => {
      const items = [
        { id: 'off', text: 'key off' },
        { id: 'prove', text: 'make sure on the meter that there is no power' },
        { id: 'undo', text: 'take the old instrument off' },
        { id: 'look', text: 'look at the connectors, clean what needs it' },
        { id: 'fit', text: 'connect the new instrument' },
        { id: 'on', text: 'key again, with low power first if it can be set' },
      ];
      return {
        stem: 'Behind the same pads a power meter is to be swapped for another that bears as much. In what order?',
        payload: inOrder({
          ends: ['first of all', 'last of all'],
          items,
          reversed: 'That is from the end to the beginning.',
          otherwise: slip(
            'hurry-at-the-bench',
            'Nothing is undone before the power is off and seen to be off; and a connector is looked at before it is fitted.',
          ),
        }),
        worked: [
          'Off, proved off, old one off, a look at the connectors, new one on, and then key with little.',
        ],
        right: 'Off first, and proved to be off.',
      };
    },
  }),
  other('cautions', 'place', {
    id: 'point-at-first-to-fail',
    lesson: 'measuring/pads-into-a-meter',
    difficulty: 2,
    given: { watts: oneOf(4, 5, 8, 10), first: oneOf(10, 20), second: oneOf(10, 20) },
    make: ({ watts, first, second }) => {
      const boxes = [
        {
          id: 'small',
          label: 'pad 1',
          note: given(0.25, 'W'),
          words: `the first pad, ${given(first, 'dB')}, rated ${given(0.25, 'W')}`,
        },
        {
          id: 'large',
          label: 'pad 2',
          note: given(20, 'W'),
          words: `the second pad, ${given(second, 'dB')}, rated ${given(20, 'W')}`,
        },
        {
          id: 'meter',
          label: 'meter',
          note: given(20, 'dBm'),
          words: `the power meter, good for ${given(20, 'dBm')}`,
        },
      ];
      const says = {
        small: {
          reply: 'It gets nearly all of the heat, and is rated for a small part of it.',
          misconception: undefined,
        },
        large: slip(
          'pad-order',
          'It could bear all of the power, and gets only what the first one lets through.',
        ),
        meter: slip(
          'left-for-heat',
          'While the pads are sound, little reaches it. It comes next, if they fail.',
        ),
      };
      return {
        stem: `Somebody has put the pads the wrong way round and keys ${givenPower(watts)}. Which link is the first in danger?`,
        payload: {
          kind: 'place',
          figure: {
            figure: 'chain',
            name: 'A small pad, a large pad and a meter in a row',
            boxes: boxes.map(({ words, ...box }) => box),
          },
          places: boxes.map(({ id, words }) => ({ id, words, ...says[id as keyof typeof says] })),
          answer: 'small',
        },
        worked: [
          `Of ${givenPower(watts)} nearly all turns into heat in the first pad, which bears ${given(0.25, 'W')}: key off, and put the large one first.`,
        ],
        right: 'It gets nearly all of the heat, and is rated for a small part of it.',
      };
    },
  }),
];
