import { expect, test } from 'vitest';
import { answersAloud } from '../../src/text/answers-aloud.ts';

test('each answer is a sentence that begins with its result', () => {
  const answers = [
    { figure: 'minus 0.75 decibels', words: 'to be added to what it shows; U with k\u00a0=\u00a02.00' },
    { figure: '43 percent from the lender', words: 'of the squared uncertainty. More rounds do not help' },
  ];
  expect(answersAloud(answers)).toBe(
    'Minus 0.75 decibels, to be added to what it shows; expanded uncertainty with coverage factor 2.00. 43 percent from the lender, of the squared uncertainty. More rounds do not help.',
  );
  expect(answersAloud([])).toBe('');
});
