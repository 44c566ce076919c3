import { describe, expect, test } from 'vitest';
import { freshWords, nextWord, wordsOf } from '../../../src/compute/combine/words.ts';
import { randomFrom } from '../../../src/compute/random.ts';

describe('words', () => {
  const all = new Int32Array(2000);
  randomFrom(3).fill(all);

  test('taken one by one are those of the generator, beyond what is drawn ahead too', () => {
    const supply = wordsOf(randomFrom(3), 10);
    expect(Array.from({ length: 1000 }, () => nextWord(supply))).toEqual([...all.subarray(0, 1000)]);
  });

  test('for a row are fresh ones each time, as many as asked for', () => {
    const supply = wordsOf(randomFrom(3), 10);
    expect([...freshWords(supply, 20)]).toEqual([...all.subarray(0, 20)]);
    expect([...freshWords(supply, 5)]).toEqual([...all.subarray(20, 25)]);
  });

  test('of a row and single ones are never the same', () => {
    const supply = wordsOf(randomFrom(3), 10);
    const single = nextWord(supply);
    const row = [...freshWords(supply, 20)];
    expect([single, ...row, nextWord(supply)]).toEqual([all[0], ...all.subarray(256, 276), all[1]]);
  });
});
