import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { keptSheets } from '../../../src/bench/keep/kept-sheets.ts';
import { useSheets } from '../../../src/bench/sheets/use-sheets.ts';
import { probe } from '../../hooks/probe.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

beforeEach(async () => {
  freshDatabase();
  const events = new EventTarget();
  vi.stubGlobal('addEventListener', events.addEventListener.bind(events));
  vi.stubGlobal('removeEventListener', events.removeEventListener.bind(events));
  const store = keptSheets();
  for (const id of ['a', 'b'])
    await store.put({ id, name: id, value: demonstrationEntries(), revision: undefined });
  store.close();
});
afterEach(() => vi.unstubAllGlobals());

/** The page with its list, once that is there. */
async function page() {
  const use = await probe(useSheets);
  const items = () => {
    const { list } = use.now();
    return list?.ok ? list.value.items : [];
  };
  await expect.poll(() => use.now().list?.ok).toBe(true);
  return { ...use, items, ids: () => items().map(({ id }) => id) };
}

describe('sheets that are deleted at once', () => {
  it('can all be brought back', async () => {
    const { now, does, items, ids, end } = await page();
    const both = items();
    await does(({ remove }) => Promise.all(both.map((sheet) => remove(sheet))));
    expect(ids()).toEqual([]);
    expect(
      now()
        .shelf.removed.map(({ id }) => id)
        .sort(),
    ).toEqual(['a', 'b']);
    await does(({ restore }) => Promise.all([restore(), restore()]));
    expect([...ids()].sort()).toEqual(['a', 'b']);
    expect(now().shelf.removed).toEqual([]);
    end();
  });
});
