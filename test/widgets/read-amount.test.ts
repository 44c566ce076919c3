import { expect, it } from 'vitest';
import { readerOf } from '../../src/widgets/parts/read-amount.ts';

const spec = { kind: 'halfWidthDb', min: 0, max: 3, decimals: 2 } as const;

it('a number that is typed is read, or it is said what is wrong with it', async () => {
  expect(await readerOf(spec)('0,5 dB')).toMatchObject({ ok: true, value: 0.5 });
  expect(await readerOf(spec)('much')).toMatchObject({ ok: false });
});

it('a number that cannot be read without a network is not taken in silence', async () => {
  const offline = readerOf(spec, () => Promise.reject(new TypeError('no network')));
  expect(await offline('0.5')).toEqual({
    ok: false,
    problem: expect.stringContaining('network'),
  });
});
