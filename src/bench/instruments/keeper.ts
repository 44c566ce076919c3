import type { InstrumentEntries } from '../../instruments/instrument.ts';
import type { KeptRecord, KeptStore } from '../../store/kept.ts';
import { inLine } from '../keep/in-line.ts';
import { nameOf } from './instrument-words.ts';
import type { ShelfAction } from './shelf.ts';

/** Rest after the last change before it is kept: typing is one change, not one for each letter. */
const REST_MS = 300;

/** Keeps what stands on the page, one thing after the other, and tells the page what came of it. */
export interface Keeper {
  /** Reads all that is kept. */
  load(): Promise<void>;
  /** Something was changed or is new: it is kept after a moment of rest. */
  change(id: string, value: InstrumentEntries): void;
  remove(id: string): Promise<void>;
  /** Brings back what was removed, as it stood on the page. */
  restore(id: string, value: InstrumentEntries): Promise<void>;
  /** Takes what is kept in place of what stands on the page. */
  reread(id: string): Promise<void>;
  /** Keeps all that waits, now; resolves when nothing is left to do. */
  flush(): Promise<void>;
}

interface Tools {
  readonly store: KeptStore<InstrumentEntries>;
  readonly send: (action: ShelfAction) => void;
  /** Told whether anything waits to be kept. */
  readonly onWaiting?: (waiting: boolean) => void;
}

/** What a keeper remembers of each instrument. */
class Memory {
  readonly revisions = new Map<string, number>();
  /** Changes that are to be kept. */
  readonly waiting = new Map<string, InstrumentEntries>();
  /** Ids of what could not be kept: it stands on the page alone, and must not be overwritten by what is kept. */
  readonly stuck = new Set<string>();
  /** Ids of what is about to be removed: it lies in the browser still, and is gone from the page. */
  readonly leaving = new Set<string>();
  readonly gone = new Map<string, KeptRecord>();
}

async function keep({ store, send }: Tools, memory: Memory): Promise<void> {
  const { revisions, waiting, stuck } = memory;
  for (const [id, value] of [...waiting]) {
    const outcome = await store.put({ id, name: nameOf(value), value, revision: revisions.get(id) });
    if (waiting.get(id) === value) waiting.delete(id);
    if (outcome.ok) {
      revisions.set(id, outcome.value.revision);
      stuck.delete(id);
      send({ type: 'kept', id });
    } else {
      stuck.add(id);
      send({ type: 'notKept', id, problem: outcome.problem });
    }
  }
}

async function load({ store, send }: Tools, { revisions, waiting, stuck, leaving }: Memory): Promise<void> {
  const outcome = await store.list();
  if (!outcome.ok) return send({ type: 'refused', problem: outcome.problem });
  const { unreadable } = outcome.value;
  const items = outcome.value.items.filter(({ id }) => !leaving.has(id));
  const mine = [...new Set([...waiting.keys(), ...stuck])];
  for (const { id, revision } of items) if (!mine.includes(id)) revisions.set(id, revision);
  send({ type: 'found', items, unreadable: unreadable.length, waiting: mine });
}

async function remove({ store }: Tools, memory: Memory, id: string) {
  const { revisions, waiting, stuck, leaving, gone } = memory;
  waiting.delete(id);
  stuck.delete(id);
  const outcome = await store.remove(id);
  leaving.delete(id);
  revisions.delete(id);
  if (outcome.ok) gone.set(id, outcome.value);
}

async function restore(tools: Tools, memory: Memory, [id, value]: readonly [string, InstrumentEntries]) {
  const record = memory.gone.get(id);
  memory.gone.delete(id);
  const outcome = record && (await tools.store.restore(record));
  if (outcome?.ok) memory.revisions.set(id, outcome.value.revision);
  memory.waiting.set(id, value);
  await keep(tools, memory);
}

async function reread({ store, send }: Tools, { revisions, waiting, stuck }: Memory, id: string) {
  const outcome = await store.get(id);
  if (!outcome.ok) return send({ type: 'notKept', id, problem: outcome.problem });
  waiting.delete(id);
  stuck.delete(id);
  revisions.set(id, outcome.value.revision);
  send({ type: 'replace', id, value: outcome.value.value });
}

/** A keeper over a store. What it is asked is done in that order; nothing that another tab has changed is overwritten. */
export function keeper(tools: Tools): Keeper {
  const memory = new Memory();
  const { waiting } = memory;
  const tell = (): void => tools.onWaiting?.(line.busy() || waiting.size > 0);
  const line = inLine(tell);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const flush = (): Promise<void> => {
    clearTimeout(timer);
    return waiting.size > 0 ? line.add(() => keep(tools, memory)) : line.done();
  };
  return {
    load: () => line.add(() => load(tools, memory)),
    change(id, value) {
      waiting.set(id, value);
      tell();
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), REST_MS);
    },
    // a list that was asked for before knows nothing of either
    remove(id) {
      memory.leaving.add(id);
      return line.add(() => remove(tools, memory, id));
    },
    restore(id, value) {
      waiting.set(id, value);
      return line.add(() => restore(tools, memory, [id, value]));
    },
    reread: (id) => line.add(() => reread(tools, memory, id)),
    flush,
  };
}
