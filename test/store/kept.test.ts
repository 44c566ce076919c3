import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Kept, type KeptChange, type KeptStore, keptStore, newId } from '../../src/store/kept.ts';
import { freshDatabase, type Note, noteForm, steadyClock } from './fresh-database.ts';

const opened: KeptStore<Note>[] = [];

/** One tab of a browser. */
function tab(now = steadyClock()): KeptStore<Note> {
  const store = keptStore('sheets', noteForm, now);
  opened.push(store);
  return store;
}

beforeEach(() => {
  freshDatabase();
});
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});

/** Keeps a note that is new, and answers with what was kept. */
async function kept(store: KeptStore<Note>, id: string, text: string): Promise<Kept<Note>> {
  const outcome = await store.put({ id, name: `note ${id}`, value: { text }, revision: undefined });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

const ids = async (store: KeptStore<Note>): Promise<readonly string[]> => {
  const list = await store.list();
  return list.ok ? list.value.items.map(({ id }) => id) : [list.problem];
};

/** Writes past the store what another version, or an accident, may have left. */
async function lay(record: unknown, store = 'sheets'): Promise<void> {
  await tab().list(); // the database is made
  const database = await openDB('how-sure-is-a-watt');
  await database.put(store, record);
  database.close();
}

const record = (id: string, change: object = {}) => ({
  id,
  name: 'laid',
  created: '2031-01-01T00:00:00.000Z',
  changed: '2031-01-01T00:00:00.000Z',
  revision: 7,
  version: 2,
  value: { text: 'laid' },
  ...change,
});

describe('what is kept', () => {
  it('comes back whole in another tab and after the connection was closed', async () => {
    const first = tab();
    const note = await kept(first, 'a', 'ten\nwatts “”');
    expect(await tab().get('a')).toEqual({ ok: true, value: note });
    first.close();
    expect(await first.get('a')).toEqual({ ok: true, value: note });
  });

  it('holds when it was first and when it was last kept', async () => {
    const store = tab();
    const { revision } = await kept(store, 'a', 'one');
    const second = await store.put({ id: 'a', name: 'new name', value: { text: 'two' }, revision });
    expect(second.ok && second.value).toMatchObject({
      name: 'new name',
      created: '2031-05-04T10:00:00.000Z',
      changed: '2031-05-04T10:00:01.000Z',
      value: { text: 'two' },
    });
  });

  it('is none where nothing was kept', async () => {
    expect(await tab().list()).toEqual({ ok: true, value: { items: [], unreadable: [] } });
    expect(await tab().get('a')).toEqual({ ok: false, problem: 'missing' });
  });

  it('is kept apart by kind', async () => {
    await kept(tab(), 'a', 'a sheet');
    const instruments = keptStore('instruments', noteForm);
    opened.push(instruments);
    expect(await ids(instruments)).toEqual([]);
    expect((await kept(instruments, 'a', 'an instrument')).revision, 'each kind counts for itself').toBe(1);
  });

  it('is listed by the latest change, whatever the clock says', async () => {
    const years = ['2031', '1970', '2099', '2030'];
    const store = tab(() => `${years.shift()}-01-01T00:00:00.000Z`);
    await kept(store, 'a', '');
    const { revision } = await kept(store, 'b', '');
    await kept(store, 'c', '');
    await store.put({ id: 'b', name: 'again', value: { text: '' }, revision });
    expect(await ids(store)).toEqual(['b', 'c', 'a']);
  });

  it('has a higher revision with every change, and none twice, also after something was removed', async () => {
    const change = fc.record({ id: fc.constantFrom('a', 'b', 'c'), remove: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { maxLength: 12 }), async (changes) => {
        freshDatabase();
        const store = tab();
        const now = new Map<string, number>();
        let last = 0;
        for (const { id, remove } of changes) {
          if (remove) {
            expect((await store.remove(id)).ok).toBe(now.delete(id));
            continue;
          }
          const put = await store.put({ id, name: id, value: { text: id }, revision: now.get(id) });
          expect(put.ok && put.value.revision).toBeGreaterThan(last);
          if (!put.ok) continue;
          last = put.value.revision;
          now.set(id, last);
        }
        expect(new Set(await ids(store))).toEqual(new Set(now.keys()));
        store.close();
      }),
      { numRuns: 25 },
    );
  });
});

describe('two tabs with the same thing', () => {
  it('do not overwrite each other: who comes second learns of it, and what the first kept stays', async () => {
    const [one, two] = [tab(), tab()];
    const { revision } = await kept(one, 'a', 'at first');
    const first = await one.put({ id: 'a', name: 'n', value: { text: 'by one' }, revision });
    const second = await two.put({ id: 'a', name: 'n', value: { text: 'by two' }, revision });
    expect(second).toEqual({ ok: false, problem: 'changed' });
    expect(await two.get('a')).toEqual(first);
  });

  it('that keep at the same moment get one yes and one no', async () => {
    const [one, two] = [tab(), tab()];
    const { revision } = await kept(one, 'a', 'at first');
    const both = await Promise.all(
      [one, two].map((store, at) => store.put({ id: 'a', name: 'n', value: { text: `${at}` }, revision })),
    );
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('that bring a new thing of the same id get one yes and one no', async () => {
    await kept(tab(), 'a', 'first');
    expect(await tab().put({ id: 'a', name: 'n', value: { text: 'second' }, revision: undefined })).toEqual({
      ok: false,
      problem: 'changed',
    });
  });

  it('do not bring back what the other removed', async () => {
    const [one, two] = [tab(), tab()];
    const { revision } = await kept(one, 'a', 'at first');
    await one.remove('a');
    expect(await two.put({ id: 'a', name: 'n', value: { text: 'late' }, revision })).toEqual({
      ok: false,
      problem: 'missing',
    });
    expect(await ids(two)).toEqual([]);
  });

  it('hear of what the other keeps, removes and brings back, and not of their own', async () => {
    const [one, two] = [tab(), tab()];
    const heard = { one: [] as KeptChange[], two: [] as KeptChange[] };
    const stop = two.watch((change) => heard.two.push(change));
    one.watch((change) => heard.one.push(change));
    await kept(one, 'a', '');
    const gone = await one.remove('a');
    if (gone.ok) await one.restore(gone.value);
    await expect
      .poll(() => heard.two)
      .toEqual([
        { id: 'a', revision: 1 },
        { id: 'a', revision: undefined },
        { id: 'a', revision: 1 },
      ]);
    stop();
    await kept(one, 'b', '');
    await kept(two, 'c', '');
    await expect.poll(() => heard.one).toEqual([{ id: 'c', revision: 3 }]);
    expect(heard.two).toHaveLength(3);
  });

  it('are left alone by what says nothing of a change', async () => {
    const heard: KeptChange[] = [];
    tab().watch((change) => heard.push(change));
    const line = new BroadcastChannel('how-sure-is-a-watt:sheets');
    for (const nonsense of [null, 'a', 7, {}, { id: 7 }, { id: 'a', revision: 'x' }])
      line.postMessage(nonsense);
    line.postMessage({ id: 'real', revision: 1 });
    await expect.poll(() => heard).toEqual([{ id: 'real', revision: 1 }]);
    line.close();
  });
});

describe('a change in one turn', () => {
  const add = (store: KeptStore<Note>, letter: string) =>
    store.change('a', (before) => ({ text: `${before?.text ?? ''}${letter}` }));

  it('loses nothing, however many tabs change a thing at the same moment', async () => {
    const letters = [...'abcdefghij'];
    const changed = await Promise.all(letters.map((letter) => add(tab(), letter)));
    expect(changed.every(({ ok }) => ok)).toBe(true);
    const found = await tab().get('a');
    expect(found.ok && [...found.value.value.text].sort()).toEqual(letters);
    expect(found.ok && found.value.revision).toBe(letters.length);
  });

  it('keeps the name and when it was first kept, and is refused to who saw an earlier one', async () => {
    const store = tab();
    const first = await kept(store, 'a', '1');
    expect(await add(store, '2')).toMatchObject({
      ok: true,
      value: { name: 'note a', created: first.created, revision: 2, value: { text: '12' } },
    });
    expect(await store.put({ ...first, value: { text: '3' } })).toEqual({ ok: false, problem: 'changed' });
  });

  it('is told to other tabs', async () => {
    const heard: KeptChange[] = [];
    const end = tab().watch((change) => heard.push(change));
    await add(tab(), 'x');
    await expect.poll(() => heard).toEqual([{ id: 'a', revision: 1 }]);
    end();
  });

  it('is not made of what cannot be read, which stays', async () => {
    await lay(record('a', { version: 99 }));
    expect(await add(tab(), 'x')).toEqual({ ok: false, problem: 'newer' });
    await lay(record('a', { value: 7 }));
    expect(await add(tab(), 'x')).toEqual({ ok: false, problem: 'damaged' });
    await lay({ id: 'a' });
    expect(await add(tab(), 'x')).toEqual({ ok: false, problem: 'damaged' });
  });
});

describe('removing', () => {
  it('can be taken back, and everything is as it was', async () => {
    const store = tab();
    const note = await kept(store, 'a', 'dear');
    await kept(store, 'b', 'other');
    const gone = await store.remove('a');
    expect(await ids(store)).toEqual(['b']);
    expect(gone.ok && (await store.restore(gone.value)).ok).toBe(true);
    expect(await store.get('a')).toEqual({ ok: true, value: note });
    expect(await ids(store), 'at its old place').toEqual(['b', 'a']);
  });

  it('is not taken back over something that has its place', async () => {
    const store = tab();
    await kept(store, 'a', 'old');
    const gone = await store.remove('a');
    const fresh = await kept(store, 'a', 'new');
    expect(gone.ok && (await store.restore(gone.value))).toEqual({ ok: false, problem: 'changed' });
    expect(await store.get('a')).toEqual({ ok: true, value: fresh });
  });

  it('of what is not there says so', async () => {
    expect(await tab().remove('a')).toEqual({ ok: false, problem: 'missing' });
  });
});

describe('what another version wrote', () => {
  it('is read by the form of its time', async () => {
    await lay(record('a', { version: 1, value: 'as a text' }));
    const found = await tab().get('a');
    expect(found.ok && found.value.value).toEqual({ text: 'as a text' });
  });

  it('is kept untouched and told where it is newer', async () => {
    const newer = record('a', { version: 3, value: { text: 'x', rest: [1, 2] } });
    await lay(newer);
    const store = tab();
    expect(await store.get('a')).toEqual({ ok: false, problem: 'newer' });
    expect(await store.put({ id: 'a', name: 'n', value: { text: 'mine' }, revision: 7 })).toEqual({
      ok: false,
      problem: 'newer',
    });
    const list = await store.list();
    expect(list.ok && list.value.items).toEqual([]);
    expect(list.ok && list.value.unreadable).toMatchObject([{ id: 'a', name: 'laid', problem: 'newer' }]);
    const gone = await store.remove('a');
    expect(gone).toEqual({ ok: true, value: newer });
    if (gone.ok) await store.restore(gone.value);
    const database = await openDB('how-sure-is-a-watt');
    expect(await database.get('sheets', 'a')).toEqual(newer);
    database.close();
  });

  it('of the whole database is told, and nothing of it changed', async () => {
    const ahead = await openDB('how-sure-is-a-watt', 99, {
      upgrade: (database) => void database.createObjectStore('sheets', { keyPath: 'id' }),
    });
    await ahead.put('sheets', record('a'));
    ahead.close();
    const store = tab();
    for (const ask of [store.list(), store.get('a'), store.remove('a')])
      expect(await ask).toEqual({ ok: false, problem: 'newer' });
  });
});

describe('what lies there damaged', () => {
  it('is told beside what can be read', async () => {
    await lay(record('a', { value: 12 }));
    const store = tab();
    await kept(store, 'b', 'whole');
    expect(await ids(store)).toEqual(['b']);
    const list = await store.list();
    expect(list.ok && list.value.unreadable).toMatchObject([{ id: 'a', problem: 'damaged' }]);
    expect(await store.get('a')).toEqual({ ok: false, problem: 'damaged' });
  });

  it.each([{}, { name: 7 }, { revision: 0 }, { version: 'two' }, { changed: undefined }])(
    'harms nothing where it is not even a record: %j',
    async (change) => {
      await lay(Object.keys(change).length === 0 ? { id: 'a' } : record('a', change));
      const store = tab();
      expect(await store.list()).toEqual({ ok: true, value: { items: [], unreadable: [] } });
      expect(await store.get('a')).toEqual({ ok: false, problem: 'damaged' });
    },
  );
});

it('a new id is another one each time', () => {
  const some = Array.from({ length: 100 }, newId);
  expect(new Set(some).size).toBe(100);
  expect(some.every((id) => /^[0-9a-f]{24}$/.test(id))).toBe(true);
});
