import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Keeper, keeper } from '../../../src/bench/instruments/keeper.ts';
import {
  emptyShelf,
  reduceShelf,
  type Shelf,
  type ShelfAction,
} from '../../../src/bench/instruments/shelf.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { instrumentStore } from '../../../src/instruments/kept.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

beforeEach(() => {
  freshDatabase();
});
afterEach(() => {
  vi.unstubAllGlobals();
});

const pad = (label: string) => ({ ...blankInstrument('pad'), label });

/** One tab: a page with its keeper. */
class Tab {
  shelf: Shelf = emptyShelf();
  busy = false;
  readonly store = instrumentStore();
  readonly keeper: Keeper = keeper({
    store: this.store,
    send: (action) => this.send(action),
    onWaiting: (waiting) => {
      this.busy = waiting;
    },
  });

  send(action: ShelfAction): void {
    this.shelf = reduceShelf(this.shelf, action);
  }

  async add(id: string, label: string): Promise<void> {
    this.send({ type: 'add', items: [{ id, value: pad(label) }] });
    this.keeper.change(id, pad(label));
    await this.keeper.flush();
  }

  async type(id: string, label: string): Promise<void> {
    this.send({ type: 'edit', id, change: { label } });
    const item = this.shelf.items?.find((each) => each.id === id);
    if (item !== undefined) this.keeper.change(id, item.value);
    await this.keeper.flush();
  }

  labels(): readonly string[] {
    return (this.shelf.items ?? []).map(({ value }) => value.label);
  }
}

async function tab(): Promise<Tab> {
  const opened = new Tab();
  await opened.keeper.load();
  return opened;
}

describe('what is typed', () => {
  it('is there when the page is opened again', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    await first.type('a', 'Pad B');
    expect((await tab()).labels()).toEqual(['Pad B']);
  });

  it('is kept by itself after a moment of rest, and said to wait until then', async () => {
    const first = await tab();
    first.send({ type: 'add', items: [{ id: 'a', value: pad('Pad A') }] });
    first.keeper.change('a', pad('Pad A'));
    expect(first.busy).toBe(true);
    await expect.poll(() => first.busy).toBe(false);
    expect((await tab()).labels()).toEqual(['Pad A']);
  });

  it('is kept as it stood last where it changes while it is being kept', async () => {
    const first = await tab();
    await first.add('a', 'P');
    const once = first.type('a', 'Pa');
    await Promise.all([once, first.type('a', 'Pad')]);
    expect((await tab()).labels()).toEqual(['Pad']);
    expect(first.shelf.items?.[0]?.problem).toBeUndefined();
  });
});

describe('what is deleted', () => {
  it('is gone, and comes back by undo to where it stood, also from the browser', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    await first.add('b', 'Pad B');
    first.send({ type: 'remove', id: 'a' });
    await first.keeper.remove('a');
    expect((await tab()).labels()).toEqual(['Pad B']);
    const item = first.shelf.removed?.item;
    first.send({ type: 'restore' });
    if (item !== undefined) await first.keeper.restore(item.id, item.value);
    expect(first.labels()).toEqual(['Pad A', 'Pad B']);
    expect((await tab()).labels()).toEqual(['Pad A', 'Pad B']);
    await first.type('a', 'Pad C');
    expect((await tab()).labels()).toEqual(['Pad B', 'Pad C']);
  });

  it('right after it was typed does not come back by itself', async () => {
    const first = await tab();
    first.send({ type: 'add', items: [{ id: 'a', value: pad('Pad A') }] });
    first.keeper.change('a', pad('Pad A'));
    first.send({ type: 'remove', id: 'a' });
    await first.keeper.remove('a');
    await first.keeper.flush();
    expect((await tab()).labels()).toEqual([]);
  });
});

describe('while the page looks what is kept, as when another tab has kept something', () => {
  it('what is deleted stays deleted', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    const looking = first.keeper.load();
    first.send({ type: 'remove', id: 'a' });
    await Promise.all([looking, first.keeper.remove('a')]);
    expect(first.labels()).toEqual([]);
    expect((await tab()).labels()).toEqual([]);
  });

  it('what is brought back stays there', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    first.send({ type: 'remove', id: 'a' });
    await first.keeper.remove('a');
    const looking = first.keeper.load();
    first.send({ type: 'restore' });
    await Promise.all([looking, first.keeper.restore('a', pad('Pad A'))]);
    expect(first.labels()).toEqual(['Pad A']);
    expect((await tab()).labels()).toEqual(['Pad A']);
    await first.type('a', 'Pad B');
    expect(first.shelf.items?.[0]?.problem).toBeUndefined();
  });
});

describe('two tabs', () => {
  it('do not overwrite each other: the later one is told, and keeps what it has typed', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    const second = await tab();
    await first.type('a', 'by the first');
    await second.type('a', 'by the second');
    expect(second.shelf.items?.[0]).toMatchObject({ problem: 'changed', value: { label: 'by the second' } });
    expect((await tab()).labels()).toEqual(['by the first']);
    // what the browser keeps does not take the place of what was typed and could not be kept
    await second.keeper.load();
    expect(second.labels()).toEqual(['by the second']);
  });

  it('agree again once the later one takes what is kept', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    const second = await tab();
    await first.type('a', 'by the first');
    await second.type('a', 'by the second');
    await second.keeper.reread('a');
    expect(second.shelf.items?.[0]).toMatchObject({ value: { label: 'by the first' } });
    expect(second.shelf.items?.[0]?.problem).toBeUndefined();
    await second.type('a', 'again');
    expect((await tab()).labels()).toEqual(['again']);
  });

  it('see what the other has added', async () => {
    const first = await tab();
    const second = await tab();
    await first.add('a', 'Pad A');
    await second.keeper.load();
    expect(second.labels()).toEqual(['Pad A']);
  });

  it('tell of what the other has deleted', async () => {
    const first = await tab();
    await first.add('a', 'Pad A');
    const second = await tab();
    await first.keeper.remove('a');
    await second.type('a', 'Pad B');
    expect(second.shelf.items?.[0]).toMatchObject({ problem: 'missing', value: { label: 'Pad B' } });
    await second.keeper.reread('a');
    expect(second.shelf.items?.[0]).toMatchObject({ problem: 'missing', value: { label: 'Pad B' } });
  });
});

describe('a browser that keeps nothing', () => {
  it('is told, and the page goes on with what is typed', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const first = await tab();
    expect(first.shelf).toMatchObject({ items: [], problem: 'refused' });
    await first.add('a', 'Pad A');
    await first.type('a', 'Pad B');
    expect(first.shelf.items?.[0]).toMatchObject({ problem: 'refused', value: { label: 'Pad B' } });
    first.send({ type: 'remove', id: 'a' });
    await first.keeper.remove('a');
    first.send({ type: 'restore' });
    await first.keeper.restore('a', pad('Pad B'));
    expect(first.labels()).toEqual(['Pad B']);
  });
});
