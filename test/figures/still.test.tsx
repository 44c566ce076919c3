import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { isAlike, still } from '../../src/figures/still.ts';

const any = fc.object({
  maxDepth: 3,
  values: [fc.integer(), fc.double({ noNaN: true }), fc.string(), fc.boolean()],
});

describe('what a part of a figure is drawn from', () => {
  it('is alike where it says the same, whatever it is made of', () => {
    fc.assert(fc.property(any, (value) => isAlike(value, structuredClone(value))));
  });

  it('is not alike where anything in it is another, or is there once more', () => {
    fc.assert(
      fc.property(any, fc.string(), fc.integer(), (value, name, other) => {
        const before = { inner: [value, { [name]: other }] };
        expect(isAlike(before, { inner: [value, { [name]: other + 1 }] })).toBe(false);
        expect(isAlike(before, { inner: [value, { [name]: other }, 0] })).toBe(false);
      }),
    );
    expect(isAlike({ one: undefined }, { other: undefined })).toBe(false);
    expect(isAlike({ x: 1 }, { x: '1' })).toBe(false);
    expect(isAlike(null, {})).toBe(false);
  });
});

describe('a part that stands still', () => {
  const Part = still(({ bar }: { readonly bar: { readonly x: number } }) => <b>{bar.x}</b>);

  it('is drawn again only for what says something else', () => {
    const part = new Part({ bar: { x: 1 } });
    expect(part.shouldComponentUpdate({ bar: { x: 1 } })).toBe(false);
    expect(part.shouldComponentUpdate({ bar: { x: 2 } })).toBe(true);
  });

  it('is drawn from what it is given', () => expect(render(<Part bar={{ x: 7 }} />)).toBe('<b>7</b>'));
});
