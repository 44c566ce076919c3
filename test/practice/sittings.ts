import { type ShownSitting, shown } from '../../src/practice/shown.ts';
import type { Payload, Sitting } from '../../src/questions/bank/types.ts';

/** An invented question of each kind, in the form in which the bank hands it out. */
const sitting = (payload: Payload, change: Partial<Sitting> = {}): ShownSitting =>
  shown({
    id: `invented-${payload.kind}`,
    topic: 'ratios',
    lesson: 'decibels/ratios-that-add',
    syllabus: ['1.9'],
    difficulty: 1,
    kind: payload.kind,
    seed: 1,
    drawn: { pad: 20 },
    stem: `An invented question to answer by ${payload.kind}.`,
    worked: ['First one thing.', 'Then the other: 7 dBm.'],
    right: 'That is it.',
    payload,
    ...change,
  });

export const choiceSitting = sitting({
  kind: 'choice',
  answer: 'b',
  options: [
    { id: 'a', text: '27 dBm', reply: 'The pad was left out.', misconception: 'link-left-out' },
    { id: 'b', text: '7 dBm', reply: 'That is it.', misconception: undefined },
    { id: 'c', text: '47 dBm', reply: 'A pad takes away.', misconception: 'sign-of-loss' },
  ],
});

export const typedSitting = sitting({
  kind: 'typed',
  quantity: 'level',
  unit: 'dBm',
  value: 7,
  tolerance: { of: 'value', size: 0.1 },
  within: 'within 0.1 dB',
  answer: '7.0 dBm',
  near: [{ value: 47, misconception: 'sign-of-loss', reply: 'A pad takes away.' }],
});

export const orderSitting = sitting({
  kind: 'order',
  first: 'smallest first',
  last: 'largest last',
  items: [
    { id: 'two', text: '2 W' },
    { id: 'one', text: '1 mW' },
    { id: 'three', text: '3 W' },
  ],
  answer: ['one', 'two', 'three'],
  reversed: { misconception: 'negative-power', reply: 'The other way round.' },
  otherwise: { misconception: 'prefix-slip', reply: 'Look at the prefixes.' },
});

export const placeSitting = sitting({
  kind: 'place',
  answer: 'right',
  figure: {
    figure: 'ruler',
    name: 'A ruler of decibels',
    unit: 'dB',
    from: 0,
    to: 20,
    step: 2,
    marks: [
      { id: 'left', label: 'A', at: 3 },
      { id: 'right', label: 'B', at: 10 },
    ],
  },
  places: [
    { id: 'left', words: 'at A, near 3 dB', reply: 'That is twice.', misconception: 'ten-per-doubling' },
    { id: 'right', words: 'at B, at 10 dB', reply: 'That is it.', misconception: undefined },
  ],
});

export const allSittings: readonly ShownSitting[] = [choiceSitting, typedSitting, orderSitting, placeSitting];
