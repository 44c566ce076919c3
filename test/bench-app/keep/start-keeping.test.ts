import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { encodeEntries } from '../../../src/bench/address/address.ts';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import type { Keeper } from '../../../src/bench/keep/keeper.ts';
import { keptSheets } from '../../../src/bench/keep/kept-sheets.ts';
import { markIn } from '../../../src/bench/keep/mark.ts';
import { startKeeping } from '../../../src/bench/keep/start-keeping.ts';
import { demonstration } from '../../../src/bench/state/demonstration.ts';
import { type BenchAction, type BenchState, reduceBench } from '../../../src/bench/state/state.ts';
import type { SheetEntries } from '../../../src/sheet/entries.ts';
import type { KeptStore } from '../../../src/store/kept.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

/** As much of a page as keeping needs: an address with a history entry, events, and the bench's state. */
class FakePage {
  readonly events = new EventTarget();
  readonly document = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  readonly location = { hash: '', pathname: '/bench/', search: '' };
  readonly history = {
    state: null as unknown,
    replaceState: (state: unknown, _: string, url?: string): void => {
      this.history.state = state;
      if (url !== undefined) this.location.hash = url.includes('#') ? url.slice(url.indexOf('#')) : '';
    },
  };
  state: BenchState = demonstration();
  keeper: Keeper | undefined;
  arrivals = 0;

  send = (action: BenchAction): void => {
    this.state = reduceBench(this.state, action);
    this.keeper?.show(this.state.sheet, this.state.entries);
  };

  start(): () => void {
    for (const name of ['document', 'location', 'history'] as const) vi.stubGlobal(name, this[name]);
    vi.stubGlobal('addEventListener', this.events.addEventListener.bind(this.events));
    vi.stubGlobal('removeEventListener', this.events.removeEventListener.bind(this.events));
    return startKeeping({
      begun: this.state.entries,
      send: this.send,
      latest: () => this.state,
      onState: () => undefined,
      onArrived: (keeper) => {
        this.arrivals += 1;
        this.keeper = keeper;
        keeper.show(this.state.sheet, this.state.entries);
      },
    });
  }

  /** Goes to another entry of the history. */
  go(hash: string, state: unknown): void {
    this.location.hash = hash;
    this.history.state = state;
    this.events.dispatchEvent(new Event('hashchange'));
  }

  type(title: string): void {
    this.send({ type: 'edit', path: 'title', change: { title } });
  }
}

let store: KeptStore<SheetEntries>;
let page: FakePage;
let stop: () => void = () => undefined;
beforeEach(() => {
  freshDatabase();
  store = keptSheets();
  page = new FakePage();
});
afterEach(() => {
  stop();
  store.close();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const titled = (title: string): SheetEntries => ({ ...demonstrationEntries(), title });
const keep = (id: string) => store.put({ id, name: id, value: titled(id), revision: undefined });
const names = async (): Promise<readonly string[]> => {
  const list = await store.list();
  return list.ok ? list.value.items.map(({ name }) => name) : [];
};
const arrived = (times = 1) => expect.poll(() => page.arrivals).toBe(times);

describe('the page of the bench', () => {
  it('keeps what was typed before it was known what to open', async () => {
    await keep('earlier');
    stop = page.start();
    page.type('In haste');
    await arrived();
    await page.keeper?.flush();
    expect(page.state.entries.title).toBe('In haste');
    expect(await names()).toEqual(['In haste', 'earlier']);
  });

  it('notes in its history entry which sheet it shows', async () => {
    await keep('mine');
    stop = page.start();
    await arrived();
    expect(page.state.entries.title).toBe('mine');
    expect(markIn(page.history.state)).toEqual({ id: 'mine', revision: 1 });
    page.send({ type: 'fresh', method: 'inLine' });
    expect(markIn(page.history.state)).toBeUndefined();
  });

  it('goes back to the sheet of an earlier entry, and keeps the one it leaves', async () => {
    await keep('mine');
    stop = page.start();
    await arrived();
    const entry = page.history.state;
    page.send({ type: 'open', entries: titled('by address'), problems: [] });
    page.type('by address, changed');
    const begun = vi.spyOn(IDBObjectStore.prototype, 'put');
    void page.keeper?.flush();
    await expect.poll(() => begun.mock.calls.length, { interval: 1 }).toBeGreaterThan(0); // it is just being kept
    const noted = vi.spyOn(page.history, 'replaceState');
    page.go('', entry);
    await arrived(2);
    await page.keeper?.flush();
    const others = noted.mock.calls.filter(([state]) => markIn(state)?.id !== 'mine');
    expect(others, 'the sheet that was left is not noted in the entry of the other').toEqual([]);
    expect(page.state.entries.title).toBe('mine');
    expect(markIn(page.history.state)?.id).toBe('mine');
    expect(await names()).toEqual(['by address, changed', 'mine']);
  });

  it('stays with its sheet at a place on the page, and notes it there', async () => {
    await keep('mine');
    stop = page.start();
    await arrived();
    page.go('#main', null);
    await expect.poll(() => markIn(page.history.state)).toEqual({ id: 'mine', revision: 1 });
    expect(page.arrivals).toBe(1);
  });

  it('brings the address of an older entry of the same sheet up to date', async () => {
    await keep('mine');
    stop = page.start();
    await arrived();
    page.type('mine, later');
    await page.keeper?.flush();
    page.go(`#${encodeEntries(titled('mine'))}`, { kept: { id: 'mine', revision: 1 } });
    await expect.poll(() => page.location.hash).toBe(`#${encodeEntries(titled('mine, later'))}`);
    expect(page.state.entries.title).toBe('mine, later');
  });

  it('keeps at once what is waiting when it is left or hidden', async () => {
    stop = page.start();
    await arrived();
    page.type('left');
    page.events.dispatchEvent(new Event('pagehide'));
    await expect.poll(names).toEqual(['left']);
    page.type('hidden');
    page.document.visibilityState = 'hidden';
    page.document.dispatchEvent(new Event('visibilitychange'));
    await expect.poll(names).toEqual(['hidden']);
  });

  it('hears nothing any more once it is stopped', async () => {
    const end = page.start();
    await arrived();
    end();
    page.go('#kept-mine', null);
    await names();
    expect(page.arrivals).toBe(1);
  });
});
