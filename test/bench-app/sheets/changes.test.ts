import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { keptSheets } from '../../../src/bench/keep/kept-sheets.ts';
import { type Shelf, withDuplicate, withRemoved, withRestored } from '../../../src/bench/sheets/changes.ts';
import { sheetStrings as strings } from '../../../src/bench/sheets/strings.ts';
import type { SheetEntries } from '../../../src/sheet/entries.ts';
import type { Kept, KeptStore } from '../../../src/store/kept.ts';
import { failed, type StoreProblem } from '../../../src/store/outcome.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

let store: KeptStore<SheetEntries>;
beforeEach(() => {
  freshDatabase();
  store = keptSheets();
});
afterEach(() => store.close());

const EMPTY: Shelf = { removed: [], note: '' };

async function kept(name: string): Promise<Kept<SheetEntries>> {
  const value = { ...demonstrationEntries(), title: name };
  const outcome = await store.put({ id: name, name, value, revision: undefined });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}
const names = async (): Promise<readonly string[]> => {
  const list = await store.list();
  return list.ok ? list.value.items.map(({ name }) => name) : [list.problem];
};

describe('the list of kept sheets', () => {
  it('duplicates a sheet whole, under a name and title that say so', async () => {
    const sheet = await kept('Fox');
    const shelf = await withDuplicate(store, EMPTY, sheet);
    expect(shelf.note).toBe(strings.duplicated('Copy of Fox'));
    const list = await store.list();
    const [copy] = list.ok ? list.value.items : [];
    expect(copy?.value).toEqual({ ...sheet.value, title: 'Copy of Fox' });
    expect(copy?.id).not.toBe(sheet.id);
    expect(await names()).toEqual(['Copy of Fox', 'Fox']);
  });

  it('cuts the name of a copy to what a title holds, and leaves no half of a letter', async () => {
    const sheet = await kept(`${'x'.repeat(191)}🦊🦊`);
    await withDuplicate(store, EMPTY, sheet);
    const [copy] = await names();
    expect(copy).toBe(`Copy of ${'x'.repeat(191)}`);
  });

  it('deletes, and brings back in turn what was deleted', async () => {
    const [a, b] = [await kept('a'), await kept('b')];
    const one = await withRemoved(store, EMPTY, a);
    const two = await withRemoved(store, one, b);
    expect(two).toMatchObject({ note: strings.removed('b'), removed: [{ id: 'a' }, { id: 'b' }] });
    expect(await names()).toEqual([]);
    const back = await withRestored(store, two);
    expect(back).toMatchObject({ note: strings.restored('b'), removed: [{ id: 'a' }] });
    expect(await withRestored(store, back)).toEqual({ note: strings.restored('a'), removed: [] });
    expect(await store.get('a')).toEqual({ ok: true, value: a });
    expect(await names()).toEqual(['b', 'a']);
  });

  it('has nothing to bring back where nothing was deleted', async () => {
    expect(await withRestored(store, EMPTY)).toBe(EMPTY);
  });

  it('says so where another tab was quicker', async () => {
    const sheet = await kept('a');
    await store.remove('a');
    expect(await withRemoved(store, EMPTY, sheet)).toEqual({ ...EMPTY, note: strings.problems.missing });
  });

  it.each<StoreProblem>(['refused', 'full', 'newer', 'changed', 'missing', 'damaged'])(
    'says what is wrong (%s) and forgets nothing',
    async (problem) => {
      const sheet = await kept('a');
      const gone = await withRemoved(store, EMPTY, sheet);
      const no = async () => failed(problem);
      const told = strings.problems[problem];
      expect(await withDuplicate({ put: no }, gone, sheet)).toEqual({ ...gone, note: told });
      expect(await withRemoved({ remove: no }, gone, sheet)).toEqual({ ...gone, note: told });
      expect(await withRestored({ restore: no }, gone)).toEqual({ ...gone, note: told });
    },
  );
});
