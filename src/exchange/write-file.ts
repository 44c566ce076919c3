import type { Fields, ScalarSpec, StateOf } from '../address/field-spec.ts';
import { sizeText } from '../text/size-text.ts';
import { FILE_MARK, type FileForm, type FileLists, LARGEST_FILE } from './file-form.ts';
import { fittingText } from './schema.ts';
import { exchangeStrings as strings } from './strings.ts';

type Scalars = Readonly<Record<string, unknown>>;

/** What is to be written, by list. */
type ToWrite<Lists extends FileLists> = { readonly [Name in keyof Lists]?: readonly StateOf<Lists[Name]>[] };

/** The text of a file, or why none is made. */
export type FileWritten =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: string };

/**
 * A file of the present version: JSON, a thing a block, what is at its default left out.
 * @param saved the time as ISO 8601, told for the reader's sake and never relied on.
 */
export function writeFile<Lists extends FileLists>(
  { version, lists }: FileForm<Lists>,
  things: ToWrite<Lists>,
  saved: string,
): FileWritten {
  const written = Object.entries<Fields>(lists).flatMap(([list, fields]) => {
    const list_ = things[list];
    return list_ === undefined ? [] : [[list, list_.map((thing) => leanThing(fields, thing))]];
  });
  const content = { file: FILE_MARK, version, saved, ...Object.fromEntries(written) };
  const text = `${JSON.stringify(content, undefined, 1)}\n`;
  const size = new TextEncoder().encode(text).length;
  if (size <= LARGEST_FILE) return { ok: true, text };
  return {
    ok: false,
    problem: strings.tooLargeToSave({ size: sizeText(size), most: sizeText(LARGEST_FILE) }),
  };
}

/** A thing with the fields alone that say something. */
function leanThing(fields: Fields, thing: Scalars): Scalars {
  const entries = Object.entries(fields).flatMap(([name, field]): readonly [string, unknown][] => {
    const value = thing[name];
    if (field.type !== 'list') {
      const fitted = fittingScalar(field, value);
      return Object.is(fitted, field.default) ? [] : [[name, fitted ?? null]];
    }
    const records: readonly Scalars[] = Array.isArray(value) ? value : [];
    return records.length === 0 && field.default.length === 0
      ? []
      : [[name, records.map((record) => leanThing(field.of, record))]];
  });
  return Object.fromEntries(entries);
}

const fittingScalar = (field: ScalarSpec, value: unknown): unknown =>
  field.type === 'text' && typeof value === 'string' ? fittingText(field, value) : value;
