import { type KeptForm, type KeptStore, keptStore } from '../store/kept.ts';
import type { InstrumentEntries } from './instrument.ts';
import { readEntries } from './read-kept.ts';

/** How instruments are kept: as they stand in their forms. Raise the version when an older page could not read what is written. */
const INSTRUMENT_FORM: KeptForm<InstrumentEntries> = { version: 1, read: readEntries };

/** The reader's instruments in this browser. */
export const instrumentStore = (now?: () => string): KeptStore<InstrumentEntries> =>
  keptStore('instruments', INSTRUMENT_FORM, now);
