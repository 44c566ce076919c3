import { type Channel, channelOf, type KeptChange } from './channel.ts';
import { type Connection, connection, type StoreName, type Work } from './database.ts';
import {
  isRecord,
  type Kept,
  type KeptForm,
  type KeptHead,
  type KeptRecord,
  type Reading,
  readRecord,
} from './kept-record.ts';
import { done, failed, type Outcome, problemOf } from './outcome.ts';
import { randomId } from './random-id.ts';

export type { KeptChange } from './channel.ts';
export type { Kept, KeptForm, KeptHead, KeptRecord } from './kept-record.ts';
export type { Outcome, StoreProblem } from './outcome.ts';

/** Everything of a kind that is kept, the latest change first, and what lies there but cannot be read. */
export interface KeptList<Value> {
  readonly items: readonly Kept<Value>[];
  readonly unreadable: readonly (KeptHead & { readonly problem: 'newer' | 'damaged' })[];
}

/** What is to be kept. */
export interface Keeping<Value> {
  readonly id: string;
  readonly name: string;
  readonly value: Value;
  /** The revision that the change was made on; undefined for a thing that is not kept yet. */
  readonly revision: number | undefined;
}

/** Things of one kind in this browser. No call throws where the browser refuses: it answers with the problem. */
export interface KeptStore<Value> {
  list(): Promise<Outcome<KeptList<Value>>>;
  get(id: string): Promise<Outcome<Kept<Value>>>;
  /** Keeps a thing, all of it or nothing; `changed` or `missing` where it is no longer as it was at that revision. */
  put(keeping: Keeping<Value>): Promise<Outcome<Kept<Value>>>;
  /** Makes a thing anew from what is kept of it, in one turn: whatever other tabs do comes before it or after it, never between. */
  change(id: string, make: (before: Value | undefined) => Value): Promise<Outcome<Kept<Value>>>;
  /** Removes a thing, readable or not, and answers with what `restore` needs to bring it back as it was. */
  remove(id: string): Promise<Outcome<KeptRecord>>;
  restore(record: KeptRecord): Promise<Outcome<KeptHead>>;
  /** Calls whenever something is kept or removed by somebody else, another tab say; ends with the function it answers with. */
  watch(onChange: (change: KeptChange) => void): () => void;
  close(): void;
}

/** An id that nothing else has. */
export const newId = (): string => randomId(12);

/**
 * The things of one kind; nothing is opened before the first call.
 * @param now the time as ISO 8601, of the device's clock unless given.
 */
export function keptStore<Value>(
  store: StoreName,
  form: KeptForm<Value>,
  now: () => string = () => new Date().toISOString(),
): KeptStore<Value> {
  const link = connection();
  const channel = channelOf(store);
  return {
    list: () => asked(() => listed(link, store, form)),
    get: (id) => asked(() => found(link, store, form, id)),
    put: (keeping) => told(channel, () => put({ link, store, form, at: now() }, keeping)),
    change: (id, make) => told(channel, () => change({ link, store, form, at: now() }, id, make)),
    remove: (id) => told(channel, () => removed(link, store, id), true),
    restore: (record) => told(channel, () => restored(link, store, record)),
    watch: (onChange) => channel.listen(onChange),
    close() {
      link.close();
      channel.close();
    },
  };
}

/** What came of it, with the browser's errors as problems. */
async function asked<Value>(ask: () => Promise<Outcome<Value>>): Promise<Outcome<Value>> {
  try {
    return await ask();
  } catch (error) {
    return failed(problemOf(error));
  }
}

/** The same, and the other tabs are told of it where something was changed. */
async function told<Head extends KeptHead>(
  channel: Channel,
  ask: () => Promise<Outcome<Head>>,
  gone = false,
): Promise<Outcome<Head>> {
  const outcome = await asked(ask);
  if (outcome.ok) channel.tell({ id: outcome.value.id, revision: gone ? undefined : outcome.value.revision });
  return outcome;
}

async function listed<Value>(
  link: Connection,
  store: StoreName,
  form: KeptForm<Value>,
): Promise<Outcome<KeptList<Value>>> {
  const all = await link.transact(store, 'readonly', (work) => work.objectStore(store).getAll());
  const readings = all
    .filter(isRecord)
    .sort((a, b) => b.revision - a.revision)
    .map((record) => readRecord(record, form));
  return done({
    items: readings.flatMap((reading) => ('item' in reading ? [reading.item] : [])),
    unreadable: readings.flatMap((reading) =>
      'item' in reading ? [] : [{ ...reading.head, problem: reading.problem }],
    ),
  });
}

async function found<Value>(
  link: Connection,
  store: StoreName,
  form: KeptForm<Value>,
  id: string,
): Promise<Outcome<Kept<Value>>> {
  const record = await link.transact(store, 'readonly', (work) => work.objectStore(store).get(id));
  if (record === undefined) return failed('missing');
  if (!isRecord(record)) return failed('damaged');
  const reading: Reading<Value> = readRecord(record, form);
  return 'item' in reading ? done(reading.item) : failed(reading.problem);
}

interface Place<Value> {
  readonly link: Connection;
  readonly store: StoreName;
  readonly form: KeptForm<Value>;
  readonly at: string;
}

function put<Value>(place: Place<Value>, keeping: Keeping<Value>): Promise<Outcome<Kept<Value>>> {
  const { link, store, form } = place;
  return link.transact(store, 'readwrite', async (work) => {
    const old = await work.objectStore(store).get(keeping.id);
    const kept = isRecord(old) ? old : undefined;
    if (kept !== undefined && kept.version > form.version) return failed('newer');
    if (keeping.revision !== undefined && kept === undefined) return failed('missing');
    if (keeping.revision !== kept?.revision) return failed('changed');
    return done(await written(work, place, keeping, kept));
  });
}

function change<Value>(
  place: Place<Value>,
  id: string,
  make: (before: Value | undefined) => Value,
): Promise<Outcome<Kept<Value>>> {
  const { link, store, form } = place;
  return link.transact(store, 'readwrite', async (work) => {
    const old = await work.objectStore(store).get(id);
    if (old === undefined) return done(await written(work, place, { id, name: '', value: make(undefined) }));
    const reading: Reading<Value> | undefined = isRecord(old) ? readRecord(old, form) : undefined;
    if (reading === undefined || 'problem' in reading) return failed(reading?.problem ?? 'damaged');
    const { name, value } = reading.item;
    return done(await written(work, place, { id, name, value: make(value) }, reading.item));
  });
}

/** Writes a thing with the number of the next change. */
async function written<Value>(
  work: Work<'readwrite'>,
  { store, form, at }: Place<Value>,
  { id, name, value }: Pick<Keeping<Value>, 'id' | 'name' | 'value'>,
  kept?: KeptHead,
): Promise<Kept<Value>> {
  const head = { id, name, created: kept?.created ?? at, changed: at };
  const revision = await nextRevision(work, store, kept?.revision);
  await work.objectStore(store).put({ ...head, revision, version: form.version, value });
  return { ...head, revision, value };
}

/** Counts one change more. */
async function nextRevision(work: Work<'readwrite'>, store: StoreName, own = 0): Promise<number> {
  const counters = work.objectStore('counters');
  const next = Math.max((await counters.get(store)) ?? 0, own) + 1;
  await counters.put(next, store);
  return next;
}

const removed = (link: Connection, store: StoreName, id: string): Promise<Outcome<KeptRecord>> =>
  link.transact(store, 'readwrite', async (work) => {
    const record = await work.objectStore(store).get(id);
    if (!isRecord(record)) return failed('missing');
    await work.objectStore(store).delete(id);
    return done(record);
  });

/** Back as it was, with its revision: a tab that still has it open goes on as if nothing had happened. */
const restored = (link: Connection, store: StoreName, record: KeptRecord): Promise<Outcome<KeptHead>> =>
  link.transact(store, 'readwrite', async (work) => {
    if ((await work.objectStore(store).get(record.id)) !== undefined) return failed('changed');
    await work.objectStore(store).put(record);
    return done(record);
  });
