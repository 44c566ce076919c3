import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { encodeEntries } from '../../../src/bench/address/address.ts';
import { demonstrationEntries } from '../../../src/bench/entries/fresh.ts';
import { type Arrived, arrive } from '../../../src/bench/keep/arrive.ts';
import { type Keeper, keeper } from '../../../src/bench/keep/keeper.ts';
import { keptSheets } from '../../../src/bench/keep/kept-sheets.ts';
import type { KeptMark } from '../../../src/bench/keep/mark.ts';
import { openingAt } from '../../../src/bench/keep/opening.ts';
import type { BenchAction } from '../../../src/bench/state/actions.ts';
import type { SheetEntries } from '../../../src/sheet/entries.ts';
import type { Kept, KeptStore } from '../../../src/store/kept.ts';
import { failed, type StoreProblem } from '../../../src/store/outcome.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

let store: KeptStore<SheetEntries>;
beforeEach(() => {
  freshDatabase();
  store = keptSheets(() => '2031-05-04T10:00:00.000Z');
});
afterEach(() => {
  vi.unstubAllGlobals();
  store.close();
});

const titled = (title: string): SheetEntries => ({ ...demonstrationEntries(), title });
const addressOf = (title: string): string => `#${encodeEntries(titled(title)) ?? ''}`;

async function kept(id: string, title: string): Promise<Kept<SheetEntries>> {
  const old = await store.get(id);
  const revision = old.ok ? old.value.revision : undefined;
  const outcome = await store.put({ id, name: title, value: titled(title), revision });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

const at = (hash: string, mark?: KeptMark) => openingAt(store, { hash, mark });

describe('the bench opens', () => {
  it('with the demonstration where nothing is kept and nothing asked for', async () => {
    expect(await at('')).toEqual({ kind: 'address' });
    expect(await at('#main')).toEqual({ kind: 'address' });
  });

  it('with what was kept last, by the order of the changes', async () => {
    await kept('a', 'A');
    await kept('b', 'B');
    const last = await kept('a', 'A again');
    expect(await at('')).toEqual({ kind: 'kept', kept: last });
    expect(await at('#main'), 'a place on the page is no sheet').toEqual({ kind: 'kept', kept: last });
  });

  it('with the sheet that is asked for', async () => {
    const a = await kept('a', 'A');
    await kept('b', 'B');
    expect(await at('#kept-a')).toEqual({ kind: 'kept', kept: a });
    expect(await at('', { id: 'a', revision: 1 })).toEqual({ kind: 'kept', kept: a });
    const noted = { id: 'a', revision: 1 };
    expect(await at('#kept-b', noted), 'what was noted in the entry counts').toEqual({
      kind: 'kept',
      kept: a,
    });
  });

  it('with an address that carries a sheet, whatever is kept, even the same', async () => {
    await kept('a', 'A');
    expect(await at(addressOf('A'))).toEqual({ kind: 'address' });
    expect(await at('#t=Later&v=9'), 'also where it cannot be opened').toEqual({ kind: 'address' });
  });

  it('with what is kept, and not with the older address of the same entry', async () => {
    const { revision } = await kept('a', 'A');
    const later = await kept('a', 'A, by another tab');
    expect(await at(addressOf('A'), { id: 'a', revision })).toEqual({ kind: 'kept', kept: later });
  });

  it('with the address that was written after the sheet was kept last', async () => {
    const { value: _, ...head } = await kept('a', 'A');
    const opening = await at(addressOf('A, typed on'), { id: 'a', revision: head.revision, ahead: true });
    expect(opening).toMatchObject({ kind: 'ahead', head, entries: { title: 'A, typed on' } });
  });

  it('with what is kept where that address says the same', async () => {
    const a = await kept('a', 'A');
    expect(await at(addressOf('A'), { id: 'a', revision: 1, ahead: true })).toEqual({
      kind: 'kept',
      kept: a,
    });
    expect(await at('', { id: 'a', revision: 1, ahead: true }), 'or nothing').toEqual({
      kind: 'kept',
      kept: a,
    });
  });

  it('with the address where the sheet that was asked for is gone, and says so', async () => {
    await kept('b', 'B');
    expect(await at('#kept-a')).toEqual({ kind: 'address', problem: 'missing' });
    expect(await at(addressOf('A'), { id: 'a', revision: 1 })).toEqual({
      kind: 'address',
      problem: 'missing',
    });
  });

  it.each<StoreProblem>(['refused', 'newer', 'damaged'])(
    'with the address where the store says “%s”',
    async (problem) => {
      const refusing = { get: async () => failed(problem), list: async () => failed(problem) };
      expect(await openingAt(refusing, { hash: '#kept-a', mark: undefined })).toEqual({
        kind: 'address',
        problem,
      });
      expect(await openingAt(refusing, { hash: '', mark: undefined })).toEqual({ kind: 'address' });
    },
  );
});

describe('a page that arrives', () => {
  const sent: BenchAction[] = [];
  let made: Keeper;
  beforeEach(() => {
    sent.length = 0;
    made = keeper({ store, onState: () => undefined, onStanding: () => undefined });
  });
  afterEach(() => made.stop());

  function come({ hash = '', state = null as unknown, untouched = true }): Promise<Arrived> {
    vi.stubGlobal('location', { hash });
    vi.stubGlobal('history', { state });
    return arrive({
      store,
      keeper: made,
      send: (action) => sent.push(action),
      isUntouched: () => untouched,
    });
  }

  it('opens nothing where nothing is kept, and leaves an address to who reads addresses', async () => {
    expect(await come({})).toEqual({ opened: false });
    expect(await come({ hash: addressOf('A') })).toEqual({ opened: false });
    expect(sent).toEqual([]);
  });

  it('goes on with what was kept last', async () => {
    const { value } = await kept('a', 'A');
    expect(await come({})).toEqual({ opened: true });
    expect(sent).toEqual([{ type: 'resume', entries: value }]);
  });

  it('opens nothing over what was typed before it was ready', async () => {
    await kept('a', 'A');
    expect(await come({ untouched: false })).toEqual({ opened: false });
    expect(sent).toEqual([]);
  });

  it('opens what was asked for also then, so that undo brings back what was typed', async () => {
    const { value } = await kept('a', 'A');
    await come({ hash: '#kept-a', untouched: false });
    expect(sent).toEqual([{ type: 'open', entries: value, problems: [] }]);
  });

  it('keeps at once what the address was ahead by', async () => {
    await kept('a', 'A');
    await come({ hash: addressOf('A, on'), state: { kept: { id: 'a', revision: 1, ahead: true } } });
    const [action] = sent;
    if (action?.type !== 'resume') throw new Error('nothing was opened');
    made.show(1, action.entries);
    await made.flush();
    const found = await store.get('a');
    expect(found.ok && found.value).toMatchObject({ name: 'A, on', revision: 2 });
  });

  it('overwrites nothing where another tab has kept the same sheet meanwhile', async () => {
    await kept('a', 'A');
    await kept('a', 'A, by another tab');
    await come({ hash: addressOf('A, on'), state: { kept: { id: 'a', revision: 1, ahead: true } } });
    const [action] = sent;
    if (action?.type !== 'resume') throw new Error('nothing was opened');
    expect(action.entries.title, 'what was typed stands there').toBe('A, on');
    made.show(1, action.entries);
    await made.flush();
    const found = await store.get('a');
    expect(found.ok && found.value.name).toBe('A, by another tab');
  });

  it('opens the address where the sheet of the entry is gone, and says so', async () => {
    const arrived = await come({ hash: addressOf('A'), state: { kept: { id: 'a', revision: 1 } } });
    expect(arrived).toEqual({ opened: true, problem: 'missing' });
    expect(sent).toMatchObject([{ type: 'open', entries: { title: 'A' } }]);
  });
});
