import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';

/** What is kept, each kind in an object store of its own. */
const STORES = ['sheets', 'instruments', 'practice'] as const;
export type StoreName = (typeof STORES)[number];

/** Fixed for ever: another name would lose what readers kept. */
export const DATABASE = 'how-sure-is-a-watt';
/** Raised with each object store that is added: 2 has what was practised. */
export const DATABASE_VERSION = 2;

interface Schema extends DBSchema {
  sheets: { key: string; value: unknown };
  instruments: { key: string; value: unknown };
  practice: { key: string; value: unknown };
  /** The number of the latest change in each store. */
  counters: { key: StoreName; value: number };
}

export type Database = IDBPDatabase<Schema>;
type Mode = 'readonly' | 'readwrite';
export type Work<M extends Mode> = IDBPTransaction<Schema, (StoreName | 'counters')[], M>;

/** A connection that is made when it is first needed, and again after it was lost. */
export interface Connection {
  /** One transaction over a store and its counter: all of it happens, or none. @throws what the browser does. */
  transact<M extends Mode, Value>(
    store: StoreName,
    mode: M,
    work: (transaction: Work<M>) => Promise<Value>,
  ): Promise<Value>;
  close(): void;
}

function open(onLost: () => void): Promise<Database> {
  if (!globalThis.indexedDB) return Promise.reject(new Error('this browser keeps no data'));
  return openDB<Schema>(DATABASE, DATABASE_VERSION, {
    upgrade(database) {
      const { objectStoreNames: there } = database;
      for (const store of STORES)
        if (!there.contains(store)) database.createObjectStore(store, { keyPath: 'id' });
      if (!there.contains('counters')) database.createObjectStore('counters');
    },
    // A newer version of this site waits in another tab: make room for it. The next request here then learns of it.
    blocking: (_current, _blocked, { target }) => {
      onLost();
      if (target instanceof IDBDatabase) target.close();
    },
    terminated: onLost,
  });
}

/** A connection to the database of this site; nothing is opened before the first transaction. */
export function connection(): Connection {
  let opened: Promise<Database> | undefined;
  const forget = (): void => {
    opened = undefined;
  };
  const database = (): Promise<Database> => {
    if (opened !== undefined) return opened;
    const opening = open(forget);
    opened = opening;
    opening.catch(forget); // the next request tries again
    return opening;
  };
  const begin = async <M extends Mode>(store: StoreName, mode: M): Promise<Work<M>> =>
    // what is said to be kept is on the disk: a power cut a moment later must not lose it
    (await database()).transaction([store, 'counters'], mode, { durability: 'strict' });
  return {
    async transact(store, mode, work) {
      const transaction = await begin(store, mode).catch(() => {
        forget(); // the connection was lost without a word
        return begin(store, mode);
      });
      try {
        const value = await work(transaction);
        await transaction.done;
        return value;
      } catch (error) {
        throw await undone(transaction, error);
      }
    },
    close() {
      opened?.then((database) => database.close()).catch(() => undefined);
      forget();
    },
  };
}

/** Takes back what a transaction has done so far, and finds what the browser says of it. */
async function undone(transaction: Work<Mode>, error: unknown): Promise<unknown> {
  const ended = transaction.done.catch(() => undefined);
  try {
    transaction.abort();
  } catch {
    // it has ended already
  }
  await ended;
  return error;
}
