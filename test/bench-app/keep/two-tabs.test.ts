import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { freshDatabase } from '../../store/fresh-database.ts';
import { keptIn, opened, type Tab, tab } from './tabs.ts';

const tabs: Tab[] = [];
function newTab(): Tab {
  const made = tab();
  tabs.push(made);
  return made;
}

/** Two tabs with the same kept sheet. */
async function twoTabs(): Promise<readonly [Tab, Tab]> {
  const [one, two] = [newTab(), newTab()];
  await one.keep('At first');
  await opened(two, one.standing?.id ?? '');
  return [one, two];
}

beforeEach(() => {
  freshDatabase();
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  for (const one of tabs.splice(0)) one.close();
});

const untilTold = (of: Tab, told: object) => expect.poll(() => of.told).toMatchObject(told);

describe('a tab whose sheet was changed in another', () => {
  it('is told at once, also if nothing was changed there', async () => {
    const [one, two] = await twoTabs();
    await one.keep('By one');
    await untilTold(two, { kind: 'elsewhere', problem: 'changed', mine: false });
    expect(one.told.kind).toBe('kept');
  });

  it('overwrites nothing while the reader has not chosen, whatever is typed', async () => {
    const [one, two] = await twoTabs();
    await one.keep('By one');
    await untilTold(two, { problem: 'changed' });
    const put = vi.spyOn(two.store, 'put');
    await two.keep('By two');
    await two.keep('By two again');
    expect(put, 'nor does it try').not.toHaveBeenCalled();
    expect(two.told).toEqual({ kind: 'elsewhere', problem: 'changed', mine: true });
    expect(await keptIn(one)).toEqual(['By one']);
  });

  it('is told as well where the tabs cannot hear each other: the revision says it', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const [one, two] = await twoTabs();
    await one.keep('By one');
    expect(two.told.kind).toBe('kept');
    await two.keeper.check();
    expect(two.told).toMatchObject({ kind: 'elsewhere', problem: 'changed', mine: false });
    const third = newTab();
    await opened(third, one.standing?.id ?? '');
    await one.keep('By one again');
    await third.keep('By a third');
    expect(third.told).toMatchObject({ problem: 'changed', mine: true });
    expect(await keptIn(one)).toEqual(['By one again']);
  });

  it('may show what the other kept, and undo brings back its own', async () => {
    const [one, two] = await twoTabs();
    await one.keep('By one');
    await two.keep('By two');
    const entries = await two.keeper.takeKept();
    expect(entries?.title).toBe('By one');
    if (entries !== undefined) two.send({ type: 'adopt', entries });
    expect(two.told.kind).toBe('kept');
    await two.keeper.flush();
    expect(await keptIn(one), 'nothing was written').toEqual(['By one']);
    two.send({ type: 'undo' });
    expect(two.state.entries.title).toBe('By two');
    await two.keeper.flush();
    expect(await keptIn(one)).toEqual(['By two']);
    await untilTold(one, { problem: 'changed' });
  });

  it('may keep its own beside it', async () => {
    const [one, two] = await twoTabs();
    await one.keep('By one');
    await two.keep('By two');
    await two.keeper.keepBeside();
    expect(two.told.kind).toBe('kept');
    expect(await keptIn(one)).toEqual(['By two', 'By one']);
    await two.keep('By two, later');
    expect(await keptIn(one)).toEqual(['By two, later', 'By one']);
    expect(one.told.kind).toBe('kept');
  });

  it('may keep its own in place of it, and then the other is told', async () => {
    const [one, two] = await twoTabs();
    await one.keep('By one');
    await two.keep('By two');
    await two.keeper.keepInstead();
    expect(two.told.kind).toBe('kept');
    expect(await keptIn(one)).toEqual(['By two']);
    await untilTold(one, { kind: 'elsewhere', problem: 'changed', mine: false });
  });

  it('is told where the choice comes too late, because the other is gone meanwhile', async () => {
    const [one, two] = await twoTabs();
    await one.keep('By one');
    await two.keep('By two');
    await one.store.remove(one.standing?.id ?? '');
    expect(await two.keeper.takeKept()).toBeUndefined();
    expect(two.told).toMatchObject({ kind: 'elsewhere', problem: 'missing' });
    await two.keeper.keepInstead();
    expect(await keptIn(one)).toEqual(['By two']);
  });
});

describe('a tab whose sheet was deleted in another', () => {
  it('is told, keeps what is typed on the page, and goes on once the deletion is undone', async () => {
    const [one, two] = await twoTabs();
    const gone = await one.store.remove(one.standing?.id ?? '');
    await untilTold(two, { kind: 'elsewhere', problem: 'missing', mine: false });
    await two.keep('Typed on');
    expect(await keptIn(one), 'it is not brought back behind the reader’s back').toEqual([]);
    if (gone.ok) await one.store.restore(gone.value);
    await expect.poll(() => two.told).toMatchObject({ kind: 'kept' });
    expect(await keptIn(one)).toEqual(['Typed on']);
  });

  it('may keep it as a sheet of its own', async () => {
    const [one, two] = await twoTabs();
    await one.store.remove(one.standing?.id ?? '');
    await untilTold(two, { problem: 'missing' });
    await two.keeper.keepBeside();
    expect(await keptIn(one)).toEqual(['At first']);
    expect(two.told.kind).toBe('kept');
  });
});

describe('a sheet that a newer version of the site has taken over meanwhile', () => {
  it('is left as it is there, and may be kept beside it', async () => {
    const [one, two] = await twoTabs();
    const id = one.standing?.id ?? '';
    const database = await openDB('how-sure-is-a-watt');
    const newer = {
      ...(await database.get('sheets', id)),
      version: 99,
      value: 'in another form',
      revision: 50,
    };
    await database.put('sheets', newer);
    await two.keep('Of this version');
    expect(two.told).toMatchObject({ kind: 'elsewhere', problem: 'newer', mine: true });
    await two.keeper.keepInstead();
    expect(two.told).toMatchObject({ problem: 'newer' });
    expect(await database.get('sheets', id)).toEqual(newer);
    await two.keeper.keepBeside();
    expect(two.told.kind).toBe('kept');
    expect(await database.get('sheets', id)).toEqual(newer);
    database.close();
  });
});

describe('the same sheet opened twice on one page', () => {
  it('is behind where it was opened first, and asks there as well', async () => {
    const bench = newTab();
    await bench.keep('Once');
    const found = await bench.store.get(bench.standing?.id ?? '');
    if (!found.ok) throw new Error(found.problem);
    bench.keeper.expect(found.value);
    bench.send({ type: 'open', entries: found.value.value, problems: [] });
    await bench.keep('Twice');
    bench.send({ type: 'undo' });
    bench.send({ type: 'undo' });
    expect(bench.state.entries.title).toBe('Once');
    expect(bench.told).toMatchObject({ kind: 'elsewhere', problem: 'changed' });
    expect(await keptIn(bench)).toHaveLength(1);
  });
});
