import type { ExampleNumbers } from '../../formulas/index.ts';
import { pocketText } from '../../text/pocket-text.ts';
import { readQuantity } from '../../text/read/quantity.ts';
import { strings } from './strings.ts';

/** What stands in the fields, by the name of the parameter; nothing typed is lost. */
export type Entries = Readonly<Record<string, string>>;

/** Texts for the numbers of an example: several numbers stand apart by semicolons. */
export const entriesOf = (given: ExampleNumbers): Entries =>
  Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, [value].flat().map(pocketText).join('; ')]),
  );

const READ = { kind: 'number', min: -1e30, max: 1e30, decimals: 0 } as const;

/** One number, or several where the example has several; or a sentence on what is wrong. */
export function readEntry(text: string, several: boolean): number | readonly number[] | string {
  const reads = (several ? text.split(';') : [text]).map((part) => readQuantity(part, READ));
  const bad = reads.find((read) => !read.ok);
  if (bad && !bad.ok) return bad.problem;
  const values = reads.map((read) => (read.ok ? read.value : Number.NaN));
  return several ? values : (values[0] ?? strings.nothing);
}

/** The numbers of all fields, or the name of the first bad one with its problem. */
export function readEntries(
  given: ExampleNumbers,
  entries: Entries,
):
  | { readonly ok: true; readonly numbers: ExampleNumbers }
  | { readonly ok: false; readonly name: string; readonly problem: string } {
  const numbers: Record<string, number | readonly number[]> = {};
  for (const [name, value] of Object.entries(given)) {
    const read = readEntry(entries[name] ?? '', Array.isArray(value));
    if (typeof read === 'string') return { ok: false, name, problem: read };
    numbers[name] = read;
  }
  return { ok: true, numbers };
}
