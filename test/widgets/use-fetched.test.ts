import { useState } from 'preact/hooks';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { useEvaluated } from '../../src/widgets/parts/use-fetched.ts';
import { probe } from '../hooks/probe.ts';
import { stubWindow } from '../hooks/window.ts';

let page: EventTarget;
beforeEach(() => {
  page = stubWindow();
  Object.assign(document, { documentElement: { setAttribute: vi.fn(), removeAttribute: vi.fn() } });
});
afterEach(() => vi.unstubAllGlobals());

/** A figure of one number, whose double is computed by what is fetched. */
async function figure(fetched: () => Promise<(of: number) => number>) {
  return probe(() => {
    const [of, set] = useState(1);
    return { set, double: useEvaluated({ of, isPrepared: of === 1, prepared: 2, fetched }) };
  });
}

it('what a page was written with needs nothing fetched; anything else is there once what computes it is', async () => {
  const fetched = vi.fn(async () => (of: number) => 2 * of);
  const { now, does, end } = await figure(fetched);
  expect(now().double).toBe(2);
  expect(fetched).not.toHaveBeenCalled();
  await does(({ set }) => set(4));
  await expect.poll(() => now().double).toBe(8);
  await does(({ set }) => set(1));
  expect(now().double).toBe(2);
  end();
});

it('what could not be fetched is told of, and asked for again with the next change', async () => {
  let isOffline = true;
  const told = vi.fn();
  page.addEventListener('unfetched', told);
  const { now, does, end } = await figure(async () => {
    if (isOffline) throw new TypeError('no network');
    return (of) => 2 * of;
  });
  await does(({ set }) => set(4));
  expect(now().double).toBeUndefined();
  await expect.poll(() => told.mock.calls.length).toBe(1);
  isOffline = false;
  await does(({ set }) => set(5));
  await expect.poll(() => now().double).toBe(10);
  expect(told).toHaveBeenCalledOnce();
  end();
});
