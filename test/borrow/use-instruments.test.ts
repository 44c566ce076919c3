import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { useInstruments } from '../../src/borrow/use-instruments.ts';
import { blankInstrument } from '../../src/instruments/blank.ts';
import { probe } from '../hooks/probe.ts';
import { freshDatabase } from '../store/fresh-database.ts';

beforeEach(() => {
  freshDatabase();
});
afterEach(() => vi.unstubAllGlobals());

const pad = { ...blankInstrument('pad'), label: 'Pad A' };

it('a new instrument is made once, however often its button is pressed, and a second one when asked for later', async () => {
  const { now, does, end } = await probe(useInstruments);
  await does(({ open }) => open());
  await expect.poll(() => now().list).toEqual([]);
  await does(({ put }) => {
    put(undefined, pad);
    put(undefined, pad);
  });
  await expect.poll(() => now().list?.length).toBe(1);
  expect(now().told).toContain('Pad A');
  await expect
    .poll(async () => {
      if ((now().list?.length ?? 0) < 2) await does(({ put }) => put(undefined, pad));
      return now().list?.length;
    })
    .toBe(2);
  end();
});
