import { describe, expect, it } from 'vitest';
import { MOST_SHOWN, strings } from '../../src/search/strings.ts';

describe('how many there are is told', () => {
  it.each([
    [0, 'Nothing found. Fewer words, or another name for the thing, may help.'],
    [1, '1 result.'],
    [12, '12 results.'],
    [MOST_SHOWN, '30 results.'],
    [MOST_SHOWN + 1, '31 results, the first 30 are shown.'],
  ])('%i', (count, told) => expect(strings.told(count, true)).toBe(told));

  it('with a word on those that have only some of what was asked', () => {
    expect(strings.told(1, false)).toBe('Nothing has all of these words; 1 result has some.');
    expect(strings.told(40, false)).toBe(
      'Nothing has all of these words; 40 results have some, the first 30 are shown.',
    );
  });
});
