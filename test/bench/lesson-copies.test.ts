import { expect, test } from 'vitest';
import { copyOfLesson, costPerLesson } from './lesson-copies.ts';

test('a copy of a lesson has a title of its own and is the same below', () => {
  expect(copyOfLesson('---\ntitle: Why add?\nsummary: a\n---\n\ntitle: b', 7)).toBe(
    '---\ntitle: Copy 7 of Why add?\nsummary: a\n---\n\ntitle: b',
  );
  expect(copyOfLesson("---\ntitle: 'Why: add?'\n---", 1)).toBe("---\ntitle: 'Copy 1 of Why: add?'\n---");
  const long = 'Can a torch battery measure a transmitter?';
  expect(copyOfLesson(`---\ntitle: ${long}\n---`, 128)).toBe(
    '---\ntitle: Copy 128 of Can a torch battery measure a\n---',
  );
  expect(() => copyOfLesson('no front matter', 1)).toThrow('wish a lesson with a title');
});

test('the cost of a lesson is what the next build takes more, for each lesson that it has more', () => {
  const [first, second, third] = costPerLesson([
    { lessons: 50, seconds: 30, megabytes: 1000 },
    { lessons: 200, seconds: 90, megabytes: 1300 },
    { lessons: 800, seconds: 450, megabytes: 1900 },
  ]);
  expect(first).toMatchObject({ lessons: 50, 's a further lesson': '' });
  expect(second).toMatchObject({
    'times the step before': '',
    'processor s': 90,
    's a further lesson': 0.4,
    'MB a further lesson': 2,
  });
  expect(third).toMatchObject({
    's a further lesson': 0.6,
    'MB a further lesson': 1,
    'times the step before': 1.5,
  });
});
