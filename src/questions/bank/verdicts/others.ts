import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { given, givenBand } from '../write.ts';

const two = (value: number): number => Number(value.toPrecision(8));
const ASKED = ['inside', 'outside', 'can’t tell'] as const;

/** Readings and verdicts to point at and to put in order. */
export const VERDICT_OTHERS: readonly BankQuestion[] = [
  other('verdicts', 'place', {
    id: 'point-at-verdict',
    lesson: 'measuring/inside-outside-cant-tell',
    difficulty: 2,
    given: { nominal: oneOf(24, 27, 30), wide: oneOf(0.4, 0.5, 0.6), asked: oneOf(0, 1, 2) },
    make: ({ nominal, wide, asked }) => {
      const [lower, upper] = [nominal - 1.5, nominal + 1.5];
      const rows = [
        { id: 'outside', is: 'outside', label: 'A', at: two(lower - 2 * wide) },
        { id: 'inside', is: 'inside', label: 'B', at: two(nominal + 0.2) },
        { id: 'over', is: 'can’t tell', label: 'C', at: two(upper - wide / 2) },
      ] as const;
      const wanted = ASKED[asked] ?? 'inside';
      const reply = {
        outside: 'All of its band lies below the lower limit.',
        inside: 'All of its band lies between the limits.',
        over: 'Its band reaches over the upper limit.',
      };
      const mistake = {
        outside: 'one-side-only',
        inside: 'reading-decides',
        over: wanted === 'inside' ? 'straddle-is-inside' : 'straddle-is-outside',
      } as const;
      const places = rows.map(({ id, is, label, at }) => ({
        id,
        words: `${label}, at ${given(at, 'dBm')} ${givenBand(wide, 'dB')}`,
        ...(is === wanted
          ? { reply: reply[id], misconception: undefined }
          : slip(mistake[id], `${reply[id]} That makes it “${is}”.`)),
      }));
      const right = rows.find(({ is }) => is === wanted) ?? rows[0];
      return {
        stem: `Limits ${given(lower)} and ${given(upper, 'dBm')}, three readings with their expanded uncertainty, guard band U. Which of them is “${wanted}”?`,
        payload: {
          kind: 'place',
          figure: {
            figure: 'zones',
            name: 'Two limits and three readings with their bands',
            unit: 'dBm',
            from: lower - 2.5,
            to: upper + 1.5,
            lower,
            upper,
            readings: rows.map(({ id, label, at }) => ({ id, label, at, halfWidth: wide })),
          },
          places,
          answer: right.id,
        },
        worked: [
          `A lies wholly beyond its limit, B wholly between, C reaches over one: outside, inside, can’t tell. Asked was “${wanted}”, ${right.label}.`,
        ],
        right: reply[right.id],
      };
    },
  }),
  other('verdicts', 'order', {
    id: 'order-of-verdict',
    lesson: 'measuring/inside-outside-cant-tell',
    difficulty: 2,
    given: {},
    make: () => {
      const items = [
        { id: 'measurand', text: 'say which power is meant, and what its limits are' },
        { id: 'rule', text: 'agree on the rule: how far from the limit “inside” ends' },
        { id: 'measure', text: 'take the readings' },
        { id: 'budget', text: 'work out value and uncertainty' },
        { id: 'compare', text: 'compare the band with the limits by that rule' },
        { id: 'say', text: 'say inside, outside or can’t tell, and by which rule' },
      ];
      return {
        stem: 'Is the transmitter inside its limits? Put the steps in order.',
        payload: inOrder({
          ends: ['first of all', 'last of all'],
          items,
          reversed: 'That is from the end to the beginning.',
          otherwise: slip(
            'rule-afterwards',
            'What is meant and by which rule it is judged comes before the first reading; the verdict comes last.',
          ),
        }),
        worked: ['Measurand and limits, rule, readings, value and uncertainty, comparison, verdict.'],
        right: 'The rule stands before the first reading is taken.',
      };
    },
  }),
];
