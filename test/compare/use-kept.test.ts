import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { decodeEntries } from '../../src/bench/address/address.ts';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { keptSheets } from '../../src/bench/keep/kept-sheets.ts';
import { useKept } from '../../src/compare/use-kept.ts';
import { probe } from '../hooks/probe.ts';
import { freshDatabase } from '../store/fresh-database.ts';

beforeEach(() => {
  freshDatabase();
});
afterEach(() => vi.unstubAllGlobals());

it('a sheet is taken as it is kept by then, or as it was listed where it is no longer kept', async () => {
  const otherTab = keptSheets();
  const put = async (title: string, revision: number | undefined) => {
    const value = { ...demonstrationEntries(), title };
    const kept = await otherTab.put({ id: 'a', name: title, value, revision });
    return kept.ok ? kept.value.revision : undefined;
  };
  const revision = await put('at first', undefined);
  const titles: string[] = [];
  const { now, does, end } = await probe(() =>
    useKept((address) => void titles.push(decodeEntries(address).entries.title)),
  );
  await does(({ open }) => open());
  await expect.poll(() => now().list?.length).toBe(1);
  const take = () => does(({ list, take: taken }) => list?.[0] && taken(list[0]));
  await put('by now', revision);
  await take();
  await expect.poll(() => titles).toEqual(['by now']);
  await otherTab.remove('a');
  await take();
  await expect.poll(() => titles).toEqual(['by now', 'at first']);
  otherTab.close();
  end();
});
