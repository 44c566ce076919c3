import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import type { Keeper } from '../../../src/bench/keep/keeper.ts';
import { startKeeping } from '../../../src/bench/keep/start-keeping.ts';
import type { BenchAction } from '../../../src/bench/state/actions.ts';
import { openAddress } from '../../../src/bench/use-address.ts';
import { LOST_ADDRESS } from '../../../src/widgets/parts/opening.ts';
import { stubWindow } from '../../hooks/window.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

vi.mock('../../../src/bench/address/fragment.ts', () => {
  throw new TypeError('no network');
});
const told = { type: 'refuse', problems: [LOST_ADDRESS] } as const;

beforeEach(() => {
  freshDatabase();
  stubWindow();
  vi.stubGlobal('location', { hash: '#x=1&v=3', pathname: '/bench/', search: '' });
  vi.stubGlobal('history', { state: null, replaceState: () => undefined });
});
afterEach(() => vi.unstubAllGlobals());

it('an address that nothing could be fetched to read with is told, and counts as one', async () => {
  const sent: BenchAction[] = [];
  expect(await openAddress((action) => sent.push(action))).toBe(true);
  expect(sent).toEqual([told]);
});

it('then what is typed is kept all the same', async () => {
  const sent: BenchAction[] = [];
  let keeper: Keeper | undefined;
  const entries = demonstrationEntries();
  const stop = startKeeping({
    begun: entries,
    send: (action) => sent.push(action),
    latest: () => ({ sheet: 0, entries }),
    onState: () => undefined,
    onArrived: (made) => {
      keeper = made;
    },
  });
  await expect.poll(() => keeper).toBeDefined();
  expect(sent).toEqual([told]);
  stop();
});
