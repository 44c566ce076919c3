import { levelDbm, levelToPower, powerRatioToDb } from '#compute';
import { inOrder, other, slip } from '../define.ts';
import { oneOf, steps } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { fixed, given, power } from '../write.ts';

/** Ratios and levels to put in order or to point at. */
export const RATIO_OTHERS: readonly BankQuestion[] = [
  other('ratios', 'order', {
    id: 'order-of-levels',
    lesson: 'decibels/levels-and-gains',
    syllabus: ['1.9'],
    difficulty: 1,
    given: {
      a: steps(-9, -2, 1),
      b: steps(3, 8, 1),
      c: steps(12, 17, 1),
      d: oneOf(0.1, 0.2, 0.25, 0.5),
      e: steps(31, 36, 1),
    },
    make: ({ a, b, c, d, e }) => {
      const items = [
        { id: 'minus', text: fixed('dBm', 0)(a) },
        { id: 'one', text: `${power(1)(0.001)}` },
        { id: 'low', text: given(b, 'dBm') },
        { id: 'middle', text: given(c, 'dBm') },
        { id: 'watts', text: power(3)(d) },
        { id: 'high', text: given(e, 'dBm') },
      ];
      const inMilliwatts = (level: number): string => power()(levelToPower(levelDbm(level)));
      return {
        stem: 'Put these powers in order.',
        payload: inOrder({
          ends: ['smallest first', 'largest last'],
          items,
          reversed: 'That is from the largest to the smallest.',
          otherwise: slip(
            'zero-is-nothing',
            'Bring all of them to milliwatts: a minus in front of dBm is a small power, not a negative one, and one milliwatt is nought dBm.',
          ),
        }),
        worked: [
          `In milliwatts and watts: ${items[0]?.text} is ${inMilliwatts(a)}, ${given(b, 'dBm')} is ${inMilliwatts(b)}, ${given(c, 'dBm')} is ${inMilliwatts(c)}, ${given(e, 'dBm')} is ${inMilliwatts(e)}.`,
        ],
        right: 'All of them are positive powers; the minus only says less than a milliwatt.',
      };
    },
  }),
  other('ratios', 'place', {
    id: 'point-at-ratio',
    lesson: 'decibels/ratios-that-add',
    syllabus: ['1.9'],
    difficulty: 1,
    given: { ratio: oneOf(2, 4, 5, 8, 10) },
    make: ({ ratio }) => {
      const at = powerRatioToDb(ratio);
      const decibels = fixed('dB', 1);
      const marks = [
        { id: 'half', at: at / 2 },
        { id: 'right', at },
        { id: 'twice', at: 2 * at },
        { id: 'number', at: ratio === 10 ? 1 : ratio },
      ]
        .toSorted((one, two) => one.at - two.at)
        .map((mark, k) => ({ ...mark, label: 'ABCD'[k] ?? '' }));
      const replies = {
        half: slip('one-step-short', 'That is the root of the ratio: half of the decibels.'),
        right: { reply: 'Ten times the logarithm of the ratio.', misconception: undefined },
        twice: slip('twenty-for-ten'),
        number: slip(
          'ratio-as-db',
          ratio === 10
            ? 'That is one decibel. Ten times is ten of them.'
            : 'That is where the plain number stands on the scale. The ratio has its place at ten times its logarithm.',
        ),
      };
      return {
        stem: `A ruler in decibels. Where on it does “${given(ratio)} times the power” stand?`,
        payload: {
          kind: 'place',
          figure: {
            figure: 'ruler',
            name: 'A ruler in decibels with four marks',
            unit: 'dB',
            from: 0,
            to: 20,
            step: 2,
            marks,
          },
          places: marks.map(({ id, label, at: place }) => ({
            id,
            words: `${label}, at ${decibels(place)}`,
            ...replies[id as keyof typeof replies],
          })),
          answer: 'right',
        },
        worked: [`10 lg ${given(ratio)} = ${decibels(at)}.`],
        right: 'Ten times the logarithm of the ratio.',
      };
    },
  }),
];
