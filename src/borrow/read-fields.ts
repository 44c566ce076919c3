import { type Collector, collector } from '../bench/read/collector.ts';
import type { CheckedAlternation, Notes } from './checked.ts';
import type { BorrowEntries } from './entries.ts';
import { type NumberKey, SPECS } from './specs.ts';
import { strings } from './strings.ts';

/** Reads fields by their key. */
export interface Fields {
  readonly entries: BorrowEntries;
  readonly collect: Collector;
  number(key: NumberKey): number;
  /** Nothing where the field is empty. */
  optional(key: NumberKey): number | undefined;
  /** Tells what is wrong with a field. */
  tell(path: string, label: string, problem: string): void;
}

/** The fields of a form, with nothing wrong found yet. */
export function fieldsOf(entries: BorrowEntries): Fields {
  const collect = collector();
  const field = (key: NumberKey) => ({
    path: key,
    label: strings.labels[key],
    text: entries[key],
    spec: SPECS[key],
  });
  return {
    entries,
    collect,
    number: (key) => collect.number(field(key)),
    optional: (key) => collect.optional(field(key)),
    tell: (path, label, problem) => collect.add({ path, label, problem }),
  };
}

/** What the reader calls things. */
export const notesOf = ({ own, part, lender, date, conditions, kind }: BorrowEntries): Notes => ({
  name: (kind === 'alternation' ? own : part).trim(),
  lender: lender.trim(),
  date: date.trim(),
  conditions: conditions.trim(),
});

/** A scatter known from earlier: both of its fields, or none. */
export function earlierOf({ number, entries }: Fields): CheckedAlternation['earlier'] {
  if (entries.scatter.trim() === '' && entries.repeats.trim() === '') return undefined;
  return { standardDeviation: number('scatter'), degreesOfFreedom: number('repeats') - 1 };
}
