import { expect, test } from 'vitest';
import { filesBelow } from './sources.ts';

/** Words that a lesson's reader sees: without front matter, tags, code and comments. */
const words = (mdx: string): string =>
  mdx
    .replace(/^---[\s\S]*?\n---/, '')
    .replace(/\{\/\*[\s\S]*?\*\/\}/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(/`[^`]*`/g, '')
    .replace(/\b95[\s\u00a0]%/g, ''); // the usual coverage probability is a convention, not a result

/** A number with a unit of the trade behind it: it should come from a tag, which prints it as every other number is. */
const typedQuantity =
  /\d[\d.,]*[\s\u00a0\u202f]*(?:dBm?|dBi|[mµnk]?W|[mµk]?V|[kM]?Hz|Ω|ohms?|%|watts?|volts?|decibels?|percent)(?![\w-])/g;

test('the pattern finds typed quantities, and only those', () => {
  expect('about 3.0 dB and 500 mW, 27 dBm or 5 %'.match(typedQuantity)).toEqual([
    '3.0 dB',
    '500 mW',
    '27 dBm',
    '5 %',
  ]);
  expect('in 2019, VIM 2.40, k about 2, three dB'.match(typedQuantity)).toBeNull();
});

test('no quantity is typed into a lesson: values come by name, stated ones by their tag', () => {
  const typed = filesBelow('src/lessons', ['.mdx']).flatMap(({ path, text }) =>
    (words(text).match(typedQuantity) ?? []).map((quantity) => `${path}: ${quantity}`),
  );
  expect(typed, '<Value of> for what is computed, <Given value unit> for what is stated').toEqual([]);
});
