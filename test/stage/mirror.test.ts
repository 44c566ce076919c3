import { describe, expect, it } from 'vitest';
import { isMirrored } from '../../src/stage/mirror.ts';

const isOurs = isMirrored({ values: {}, before: undefined });

describe('what is told of a figure', () => {
  it('is how it stands, or a question', () => {
    const told = [{ state: { values: { pad: 0.5 }, before: undefined } }, { asks: true }];
    expect(told.map(isOurs)).toEqual([true, true]);
    expect(isMirrored({ typed: {}, open: false })({ state: { typed: { a: '0,5' }, open: true } })).toBe(true);
  });

  it.each([
    [undefined],
    [null],
    ['2'],
    [{}],
    [{ asks: 1 }],
    [{ state: null }],
    [{ state: 'values' }],
    // of another figure, or of a version that knew less
    [{ state: { typed: {}, open: true } }],
    [{ state: { values: {} } }],
    [{ values: {}, before: undefined }],
  ])('is not %j', (data) => expect(isOurs(data)).toBe(false));
});
