import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { given, givenPower, power } from '../write.ts';

/** Pads and lines to point at and to put in order. */
export const LINE_OTHERS: readonly BankQuestion[] = [
  other('lines', 'place', {
    id: 'point-at-hottest',
    lesson: 'measuring/pads-into-a-meter',
    syllabus: ['1.9'],
    difficulty: 2,
    given: {
      watts: oneOf(2, 4, 5, 8, 10),
      first: oneOf(6, 10, 20),
      second: oneOf(10, 20),
      cable: oneOf(0.1, 0.2, 0.3),
    },
    make: ({ watts, first, second, cable }) => {
      const boxes = [
        {
          id: 'cable',
          label: 'cable',
          note: given(cable, 'dB'),
          words: `the cable of ${given(cable, 'dB')}`,
        },
        {
          id: 'first',
          label: 'pad 1',
          note: given(first, 'dB'),
          words: `the first pad, of ${given(first, 'dB')}`,
        },
        {
          id: 'second',
          label: 'pad 2',
          note: given(second, 'dB'),
          words: `the second pad, of ${given(second, 'dB')}`,
        },
        { id: 'meter', label: 'meter', note: '', words: 'the power meter' },
      ];
      const losses = [cable, first, second];
      const reaches = (behind: number): string =>
        power(5)(watts * 10 ** (-losses.slice(0, behind).reduce((sum, each) => sum + each, 0) / 10));
      const heats = losses.map((loss, k) => {
        const before = losses.slice(0, k).reduce((sum, each) => sum + each, 0);
        return watts * (10 ** (-before / 10) - 10 ** (-(before + loss) / 10));
      });
      const replies = {
        cable: slip('all-is-heat', 'It gets all of the power, but takes only a few hundredths of it.'),
        first: { reply: 'It gets nearly all of the power and keeps most of it.', misconception: undefined },
        second: slip('pad-order', 'What reaches it is small already: the first pad has taken most.'),
        meter: slip('left-for-heat', 'What reaches it is the smallest part of all.'),
      };
      return {
        stem: `A power of ${givenPower(watts)} goes along this chain, from the transmitter down. In which link is the most heat made, in watts?`,
        payload: {
          kind: 'place',
          figure: {
            figure: 'chain',
            name: 'Transmitter, cable, two pads and a meter in a row',
            boxes: boxes.map(({ words, ...box }) => box),
          },
          places: boxes.map(({ id, words }) => ({ id, words, ...replies[id as keyof typeof replies] })),
          answer: 'first',
        },
        worked: [
          `Behind the cable: ${givenPower(watts)} times ten to the power of −${given(cable)}/10 is ${reaches(1)}; behind the first pad: ${givenPower(watts)} times ten to the power of −(${given(cable)} + ${given(first)})/10 is ${reaches(2)}; behind the second: ${givenPower(watts)} times ten to the power of −(${given(cable)} + ${given(first)} + ${given(second)})/10 is ${reaches(3)}.`,
          `Heat in the cable ${givenPower(watts)} − ${reaches(1)} = ${power()(heats[0] ?? 0)}, in the first pad ${reaches(1)} − ${reaches(2)} = ${power()(heats[1] ?? 0)}, in the second ${reaches(2)} − ${reaches(3)} = ${power()(heats[2] ?? 0)}.`,
        ],
        right: 'It gets nearly all of the power and keeps most of it.',
      };
    },
  }),
  other('lines', 'order', {
    id: 'order-at-bench',
    lesson: 'measuring/pads-into-a-meter',
    difficulty: 1,
    given: {},
    make: () => {
      const items = [
        {
          id: 'rating',
          text: 'work out the level at the meter, with the largest power and the smallest loss',
        },
        { id: 'connect', text: 'connect transmitter, pads and meter, with the key off' },
        { id: 'key', text: 'key the transmitter for as long as the reading takes' },
        { id: 'read', text: 'read the meter and write down the reading as shown' },
        { id: 'off', text: 'key off, and make sure that there is no power' },
        { id: 'swap', text: 'take the pads off' },
      ];
      return {
        stem: 'A transmitter is to be measured through pads. In what order do you work?',
        payload: inOrder({
          ends: ['first of all', 'last of all'],
          items,
          reversed: 'That is the way back from the end.',
          otherwise: slip(
            'hurry-at-the-bench',
            'Work out the level before anything is connected, and connect or take off only with the key off.',
          ),
        }),
        worked: ['Sum first, then connect, then key, read, key off, and only then touch the connectors.'],
        right: 'And nothing is connected or taken off with the key down.',
      };
    },
  }),
];
