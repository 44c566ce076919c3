import { IDBDatabase, IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DATABASE, DATABASE_VERSION } from '../../src/store/database.ts';
import { type KeptStore, keptStore } from '../../src/store/kept.ts';
import { problemOf } from '../../src/store/outcome.ts';
import { freshDatabase, type Note, noteForm } from './fresh-database.ts';

const opened: KeptStore<Note>[] = [];
function tab(): KeptStore<Note> {
  const store = keptStore('sheets', noteForm);
  opened.push(store);
  return store;
}

beforeEach(() => {
  freshDatabase();
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  for (const store of opened.splice(0)) store.close();
});

const note = (text: string, revision: number | undefined) => ({
  id: 'a',
  name: 'n',
  value: { text },
  revision,
});

/** Everything that can be asked. */
const allCalls = (store: KeptStore<Note>) => [
  store.list(),
  store.get('a'),
  store.put(note('x', undefined)),
  store.remove('a'),
  store.restore({ id: 'a', name: 'n', created: '', changed: '', revision: 1, version: 1, value: 'x' }),
];

describe('a power cut while keeping', () => {
  it.each(['sheets', 'counters'])('leaves the last complete state: cut at the write to %s', async (at) => {
    const store = tab();
    const first = await store.put(note('complete', undefined));
    const write = IDBObjectStore.prototype.put;
    const cut = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      const request = write.apply(this, args);
      if (this.name === at) this.transaction.abort();
      return request;
    });
    expect(await store.put(note('half', 1))).toEqual({ ok: false, problem: 'refused' });
    cut.mockRestore();
    expect(await tab().get('a')).toEqual(first);
    const again = await store.put(note('whole', 1));
    expect(again.ok && again.value, 'and the count goes on').toMatchObject({ revision: 2 });
  });

  it('cannot take what was said to be kept: the browser is asked to write it through', async () => {
    const begin = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await tab().put(note('x', undefined));
    expect(begin.mock.calls.at(-1)).toEqual([['sheets', 'counters'], 'readwrite', { durability: 'strict' }]);
  });
});

describe('a full disk', () => {
  it('is told, and what was kept before stays', async () => {
    const store = tab();
    const first = await store.put(note('small', undefined));
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.put(note('large', 1))).toEqual({ ok: false, problem: 'full' });
    full.mockRestore();
    expect(await store.get('a')).toEqual(first);
    expect((await store.put(note('large', 1))).ok, 'with room again it goes on').toBe(true);
  });
});

describe('a browser that keeps nothing', () => {
  it.each([
    ['has no database', () => undefined],
    ['says null', () => null],
    [
      'refuses to show it',
      () => {
        throw new DOMException('denied', 'SecurityError');
      },
    ],
  ])('and %s is told at every call', async (_, database) => {
    vi.spyOn(globalThis, 'indexedDB', 'get').mockImplementation(database as unknown as () => IDBFactory);
    for (const call of allCalls(tab())) expect(await call).toEqual({ ok: false, problem: 'refused' });
  });

  it('and refuses to open is asked again the next time', async () => {
    const refusal = vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('not in this window', 'InvalidStateError');
    });
    const store = tab();
    for (const call of allCalls(store)) expect(await call).toEqual({ ok: false, problem: 'refused' });
    refusal.mockRestore();
    expect((await store.put(note('x', undefined))).ok).toBe(true);
  });

  it('of channels between tabs still guards what is kept', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const [one, two] = [tab(), tab()];
    two.watch(() => undefined)();
    expect((await one.put(note('x', undefined))).ok).toBe(true);
    expect(await two.put(note('y', undefined))).toEqual({ ok: false, problem: 'changed' });
  });
});

describe('a connection that is lost', () => {
  it('is made again', async () => {
    const store = tab();
    await store.put(note('x', undefined));
    const begin = IDBDatabase.prototype.transaction;
    const lost = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(function (
      this: IDBDatabase,
      ...args
    ) {
      this.close();
      return begin.apply(this, args);
    });
    expect((await store.get('a')).ok).toBe(true);
    expect(lost).toHaveBeenCalledTimes(2);
  });

  it('makes room for a newer version of the site, and tells of it afterwards', async () => {
    const store = tab();
    await store.put(note('x', undefined));
    const newer = await openDB(DATABASE, DATABASE_VERSION + 1);
    newer.close();
    expect(await store.get('a')).toEqual({ ok: false, problem: 'newer' });
  });
});

describe('a slip of the program', () => {
  it('is not taken for a problem of the browser', () => {
    expect(() => problemOf(new TypeError('slip'))).toThrow('slip');
    expect(() => problemOf(new DOMException('cannot be copied', 'DataCloneError'))).toThrow('copied');
    expect(problemOf(undefined)).toBe('refused');
    expect(problemOf('odd')).toBe('refused');
  });

  it('in what is kept is thrown, and nothing is kept', async () => {
    const store = tab();
    const slip = { id: 'a', name: 'n', value: { text: (() => 1) as unknown as string }, revision: undefined };
    await expect(store.put(slip)).rejects.toThrow();
    expect(await store.get('a')).toEqual({ ok: false, problem: 'missing' });
    const next = await store.put(note('x', undefined));
    expect(next.ok && next.value.revision, 'nor counted').toBe(1);
  });
});
