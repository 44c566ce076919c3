import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LONGEST_MS, REST_MS } from '../../../src/bench/keep/rest-timer.ts';
import { freshDatabase } from '../../store/fresh-database.ts';
import { keptIn, opened, type Tab, tab } from './tabs.ts';

const tabs: Tab[] = [];
function newTab(): Tab {
  const made = tab();
  tabs.push(made);
  return made;
}

beforeEach(() => {
  freshDatabase();
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
  for (const one of tabs.splice(0)) one.close();
});

const idOf = ({ standing }: Tab): string => standing?.id ?? '';

describe('the bench', () => {
  it('keeps nothing before the reader changes something', async () => {
    const bench = newTab();
    await bench.keeper.flush();
    bench.send({ type: 'fresh', method: 'oscilloscope' });
    await bench.keeper.flush();
    bench.send({ type: 'demonstration' });
    await bench.keeper.flush();
    expect(await keptIn(bench)).toEqual([]);
    expect(bench.told.kind).toBe('unchanged');
    expect(bench.standing).toMatchObject({ revision: undefined, clean: true });
  });

  it('keeps what was changed, under its title, and says so', async () => {
    const bench = newTab();
    bench.type('Mine');
    expect(bench.told.kind).toBe('waiting');
    await bench.keeper.flush();
    expect(bench.told).toMatchObject({ kind: 'kept', head: { name: 'Mine', revision: 1 } });
    expect(bench.standing).toMatchObject({ revision: 1, clean: true });
    const found = await bench.store.get(idOf(bench));
    expect(found.ok && found.value.value).toEqual(bench.state.entries);
  });

  it('keeps a sheet without a change where the reader asks for it', async () => {
    const bench = newTab();
    await bench.keeper.keepNow();
    expect(await keptIn(bench)).toEqual(['The club’s hidden transmitter']);
    expect(bench.told.kind).toBe('kept');
  });

  it('keeps each sheet for itself: a new one leaves the old one alone, and undo goes back to it', async () => {
    const bench = newTab();
    await bench.keep('First');
    const first = idOf(bench);
    bench.send({ type: 'fresh', method: 'inLine' });
    expect(bench.told.kind).toBe('unchanged');
    expect(idOf(bench)).not.toBe(first);
    bench.send({ type: 'undo' });
    expect(idOf(bench)).toBe(first);
    expect(bench.told.kind).toBe('kept');
    bench.send({ type: 'redo' });
    await bench.keep('Second');
    expect(await keptIn(bench)).toEqual(['Second', 'First']);
  });

  it('keeps what is still waiting when another sheet takes its place', async () => {
    const bench = newTab();
    bench.type('In a hurry');
    bench.send({ type: 'fresh', method: 'inLine' });
    await bench.keeper.flush();
    expect(await keptIn(bench)).toEqual(['In a hurry']);
  });

  it('keeps a sheet that came by address as one of its own, and only once it is changed', async () => {
    const bench = newTab();
    await bench.keep('Kept');
    bench.send({ type: 'open', entries: structuredClone(bench.state.entries), problems: [] });
    await bench.keeper.flush();
    expect(await keptIn(bench)).toEqual(['Kept']);
    await bench.keep('Came by address');
    expect(await keptIn(bench)).toEqual(['Came by address', 'Kept']);
  });

  it('goes on with a kept sheet where it was left', async () => {
    const before = newTab();
    await before.keep('Going on');
    const bench = newTab();
    await opened(bench, idOf(before));
    expect(bench.state.past, 'undo does not lead out of it').toEqual([]);
    expect(bench.told.kind).toBe('kept');
    await bench.keep('Gone on');
    expect(await keptIn(bench)).toEqual(['Gone on']);
  });

  it('notes nothing in an entry of the history that the page has turned to, until something is shown', async () => {
    const bench = newTab();
    bench.type('Left');
    bench.standing = undefined;
    bench.keeper.leave();
    await bench.keeper.flush();
    expect(bench.standing).toBeUndefined();
    expect(await keptIn(bench)).toEqual(['Left']);
    bench.keeper.show(bench.state.sheet, bench.state.entries);
    expect(bench.standing).toMatchObject({ revision: 1, clean: true });
  });
});

describe('keeping waits', () => {
  const fake = () => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
  const puts = () => vi.spyOn(IDBObjectStore.prototype, 'put');
  const sheetsIn = (spy: ReturnType<typeof puts>): number =>
    spy.mock.contexts.filter((store) => store instanceof IDBObjectStore && store.name === 'sheets').length;

  it('until typing rests, and then keeps the last of it', async () => {
    fake();
    const bench = newTab();
    const spy = puts();
    for (const title of ['M', 'Mi', 'Mine']) {
      bench.type(title);
      await vi.advanceTimersByTimeAsync(REST_MS / 2);
    }
    expect(sheetsIn(spy)).toBe(0);
    await vi.advanceTimersByTimeAsync(REST_MS);
    await bench.keeper.flush();
    expect(sheetsIn(spy)).toBe(1);
    expect(await keptIn(bench)).toEqual(['Mine']);
  });

  it('not for ever: who types on and on is kept meanwhile', async () => {
    fake();
    const bench = newTab();
    const spy = puts();
    for (let passed = 0; passed <= LONGEST_MS; passed += REST_MS / 2) {
      bench.type(`after ${passed}`);
      await vi.advanceTimersByTimeAsync(REST_MS / 2);
    }
    await bench.keeper.check(); // what is under way has ended
    expect(sheetsIn(spy)).toBeGreaterThanOrEqual(1);
  });

  it('no longer once what was typed is taken back', async () => {
    fake();
    const bench = newTab();
    bench.type('A slip');
    bench.send({ type: 'undo' });
    await vi.advanceTimersByTimeAsync(2 * REST_MS);
    await bench.keeper.flush();
    expect(await keptIn(bench)).toEqual([]);
  });
});

describe('where the browser does not keep it, the sheet', () => {
  it.each([
    ['refused', 'SecurityError'],
    ['full', 'QuotaExceededError'],
  ])('is told to be %s, stays on the page, and is kept once there is room', async (problem, name) => {
    const bench = newTab();
    await bench.keep('Complete');
    const refusal = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no', name);
    });
    await bench.keep('Too much');
    expect(bench.told).toEqual({ kind: 'failed', problem });
    expect(bench.state.entries.title).toBe('Too much');
    expect(await keptIn(bench)).toEqual(['Complete']);
    refusal.mockRestore();
    await bench.keeper.keepNow();
    expect(bench.told.kind).toBe('kept');
    expect(await keptIn(bench)).toEqual(['Too much']);
  });

  it('is tried again with the next change', async () => {
    const bench = newTab();
    const refusal = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no', 'QuotaExceededError');
    });
    await bench.keep('One');
    refusal.mockRestore();
    await bench.keep('Two');
    expect(bench.told.kind).toBe('kept');
    expect(await keptIn(bench)).toEqual(['Two']);
  });

  it('comes back as it was kept last after a power cut while it was being kept', async () => {
    const bench = newTab();
    await bench.keep('Complete');
    const write = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      const request = write.apply(this, args);
      this.transaction.abort();
      return request;
    });
    await bench.keep('Half');
    vi.restoreAllMocks();
    const after = newTab();
    expect((await opened(after, idOf(bench))).value.title).toBe('Complete');
  });
});
