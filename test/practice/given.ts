import fc from 'fast-check';
import {
  type Answer,
  type Answers,
  GRADES,
  joinedAnswers,
  LARGEST_SEED,
} from '../../src/practice/answers.ts';

/** Any answer that can be kept, in a few years around now. */
export const anAnswer: fc.Arbitrary<Answer> = fc.record({
  at: fc
    .integer({ min: Date.parse('2026-01-01'), max: Date.parse('2036-01-01') })
    .map((ms) => new Date(ms).toISOString()),
  seed: fc.integer({ min: 1, max: LARGEST_SEED }),
  grade: fc.constantFrom(...GRADES),
  mistake: fc.constantFrom('', 'ten-for-twenty', 'peak-for-rms'),
});

/** Answers to a few questions, none of them without any. */
export const answersOf: fc.Arbitrary<Answers> = fc
  .uniqueArray(fc.constantFrom('a', 'ratio-of-volts', 'q3'), { maxLength: 3 })
  .chain((ids) =>
    fc.tuple(
      ...ids.map((id) => fc.tuple(fc.constant(id), fc.array(anAnswer, { minLength: 1, maxLength: 9 }))),
    ),
  )
  .map((pairs) => new Map(pairs.map(([id, answers]) => [id, joinedAnswers(answers, [])])));
