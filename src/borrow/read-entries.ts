import type { EntryProblem } from '../bench/read/collector.ts';
import type { Checked } from './checked.ts';
import type { BorrowEntries } from './entries.ts';
import { readAlternation } from './read-alternation.ts';
import { fieldsOf } from './read-fields.ts';
import { readDc, readSwap } from './read-part.ts';

/** What the form came to: something to compute with, or what is wrong with it, field by field. */
export interface EntriesRead {
  readonly checked: Checked | undefined;
  readonly problems: readonly EntryProblem[];
}

/** Reads everything that the chosen kind asks for; never throws. Texts of the other kinds are not read. */
export function readEntries(entries: BorrowEntries): EntriesRead {
  const fields = fieldsOf(entries);
  const checked =
    entries.kind === 'alternation'
      ? readAlternation(fields)
      : entries.kind === 'dc'
        ? readDc(fields)
        : readSwap(fields);
  const { problems } = fields.collect;
  return { checked: problems.length === 0 ? checked : undefined, problems };
}
