import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { KeptForm } from '../../src/store/kept.ts';

/** A browser that has kept nothing yet. */
export function freshDatabase(): IDBFactory {
  const factory = new IDBFactory();
  globalThis.indexedDB = factory;
  return factory;
}

/** A thing to keep: a note, which version 1 wrote as a bare text. */
export interface Note {
  readonly text: string;
}

export const noteForm: KeptForm<Note> = {
  version: 2,
  read(value, version) {
    if (version === 1) return typeof value === 'string' ? { text: value } : undefined;
    const isNote = typeof value === 'object' && value !== null && 'text' in value;
    return isNote && typeof value.text === 'string' ? { text: value.text } : undefined;
  },
};

/** A clock that is one second further with every look. */
export function steadyClock(from = '2031-05-04T10:00:00.000Z'): () => string {
  let seconds = 0;
  return () => new Date(Date.parse(from) + 1000 * seconds++).toISOString();
}
