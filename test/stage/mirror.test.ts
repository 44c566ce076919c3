import { describe, expect, it } from 'vitest';
import { isTyped } from '../../src/stage/mirror.ts';

describe('what is told of the fields of a step', () => {
  it('is their texts, or a question', () => {
    expect([{ step: 2, typed: ['0,5', ''] }, { step: 0, typed: [] }, { asks: true }].map(isTyped)).toEqual([
      true,
      true,
      true,
    ]);
  });

  it.each([
    [undefined],
    [null],
    ['2'],
    [{}],
    [{ step: 1 }],
    [{ step: 1, blank: true }],
    [{ step: 0.5, typed: ['1'] }],
    [{ step: 1, typed: [1] }],
    [{ step: 1, typed: '1' }],
    [{ asks: 1 }],
  ])('is not %j', (data) => expect(isTyped(data)).toBe(false));
});
