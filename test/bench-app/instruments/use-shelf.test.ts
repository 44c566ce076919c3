import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useKeptInstruments } from '../../../src/bench/instruments/use-instruments.ts';
import { useShelf } from '../../../src/bench/instruments/use-shelf.ts';
import { blankInstrument } from '../../../src/instruments/blank.ts';
import { instrumentStore } from '../../../src/instruments/kept.ts';
import { probe } from '../../hooks/probe.ts';
import { comesBack, stubWindow } from '../../hooks/window.ts';
import { freshDatabase } from '../../store/fresh-database.ts';

let events: EventTarget;
beforeEach(() => {
  freshDatabase();
  events = stubWindow();
  vi.stubGlobal('BroadcastChannel', undefined); // a page that is away hears nothing
});
afterEach(() => vi.unstubAllGlobals());

async function otherPage(): Promise<void> {
  const store = instrumentStore();
  await store.put({ id: 'a', name: 'Pad A', value: blankInstrument('pad'), revision: undefined });
  store.close();
}

const shelf = () => useShelf().shelf.items?.map(({ id }) => id);
function choice(): readonly string[] | undefined {
  const kept = useKeptInstruments();
  return kept?.ok ? kept.value.items.map(({ id }) => id) : undefined;
}

describe.each([
  ['the shelf', shelf],
  ['the choice for a link', choice],
])('%s', (_, use) => {
  it('has what another page kept, once the browser’s back button leads to it again', async () => {
    const { now, end } = await probe(use);
    await expect.poll(now).toEqual([]);
    await otherPage();
    comesBack(events);
    await expect.poll(now).toEqual(['a']);
    end();
  });
});
