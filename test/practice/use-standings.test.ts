import { afterEach, expect, it, vi } from 'vitest';
import { useStandings } from '../../src/practice/use-book.ts';
import { probe } from '../hooks/probe.ts';

vi.mock('../../src/practice/schedule.ts', () => {
  throw new TypeError('no network');
});
afterEach(() => vi.doUnmock('../../src/practice/schedule.ts'));

const answer = { at: '2025-05-01T10:00:00.000Z', seed: 1, grade: 'right', mistake: '' } as const;
const answers = new Map([['halves', [answer]]]);

it('how questions stand is told to be lost where nothing could be fetched to know it with, until another try', async () => {
  const book = { answers, isRead: true } as unknown as Parameters<typeof useStandings>[0];
  const { now, does, end } = await probe(() => useStandings(book));
  await expect.poll(() => now().isLost).toBe(true);
  expect(now().standings).toBeUndefined();
  vi.doUnmock('../../src/practice/schedule.ts');
  await does(({ retry }) => retry());
  await expect.poll(() => now().standings?.size).toBe(1);
  expect(now().isLost).toBe(false);
  end();
});
