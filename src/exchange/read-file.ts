import * as v from 'valibot';
import type { Fields, StateOf } from '../address/field-spec.ts';
import { sizeText } from '../text/size-text.ts';
import { FILE_MARK, type FileForm, type FileLists, LARGEST_FILE } from './file-form.ts';
import { otherKindOf } from './file-kind.ts';
import { issueWords, placeWords } from './place-words.ts';
import { thingsSchema } from './schema.ts';
import { exchangeStrings as strings } from './strings.ts';
import { unknownPaths } from './unknown-paths.ts';

/** What a file held, by its lists; a list that the file does not have is empty. */
type Held<Lists extends FileLists> = { readonly [Name in keyof Lists]: readonly StateOf<Lists[Name]>[] };

/** A file that was read, or the first thing that is wrong with it, in one sentence. */
export type FileRead<Lists extends FileLists> =
  | { readonly ok: true; readonly held: Held<Lists>; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** So many things that mean nothing here are named. */
const MOST_NOTES = 10;

const refused = (problem: string) => ({ ok: false as const, problem });

/** Whether a file is small enough to be looked at, or the sentence that refuses it. */
export const sizeProblem = (size: number): string | undefined =>
  size > LARGEST_FILE ? strings.tooLarge({ size: sizeText(size), most: sizeText(LARGEST_FILE) }) : undefined;

/** Reads a file that somebody chose. Never throws, whatever it is; all of it is taken, or nothing. */
export function readFile<Lists extends FileLists>(form: FileForm<Lists>, bytes: Uint8Array): FileRead<Lists> {
  const tooLarge = sizeProblem(bytes.length);
  if (tooLarge !== undefined) return refused(tooLarge);
  const kind = otherKindOf(bytes);
  if (kind !== undefined) return refused(strings.otherKind(kind));
  const text = new TextDecoder().decode(bytes);
  if (text.trim() === '') return refused(strings.empty);
  const parsed = parsedJson(text);
  if (parsed === undefined) return refused(text.includes(FILE_MARK) ? strings.cutOff : strings.noJson);
  return readContent(form, parsed.value);
}

function parsedJson(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

type Content = Readonly<Record<string, unknown>>;

const isContent = (value: unknown): value is Content =>
  typeof value === 'object' &&
  value !== null &&
  Object.hasOwn(value, 'file') &&
  'file' in value &&
  value.file === FILE_MARK;

function readContent<Lists extends FileLists>(form: FileForm<Lists>, value: unknown): FileRead<Lists> {
  if (!isContent(value)) return refused(strings.noMark);
  const elsewhere = elsewhereOf(form, value);
  if (elsewhere !== undefined) return refused(elsewhere);
  const { version } = value;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refused(strings.noVersion);
  if (version > form.version) return refused(strings.newer({ version, known: form.version }));
  const content = broughtUp(form, value, version);
  if (content === undefined) return refused(strings.olderLost(version));
  return readLists(form, content);
}

/** Where a file that has no list of this page is opened, as far as it is known. */
const elsewhereOf = ({ lists, elsewhere = {} }: FileForm, content: Content): string | undefined =>
  Object.keys(lists).some((list) => Object.hasOwn(content, list))
    ? undefined
    : Object.entries(elsewhere).find(([list]) => Object.hasOwn(content, list))?.[1];

/** The things of an older version in the words of the present one. */
function broughtUp(
  { version: now, lists, older }: FileForm,
  content: Content,
  version: number,
): Content | undefined {
  let current: Content = content;
  for (let step = version; step < now; step++) {
    const migrate = older?.[step];
    if (migrate === undefined) return undefined;
    const brought = Object.keys(lists).flatMap((list) => {
      const things = current[list];
      return Array.isArray(things) ? [[list, things.map((thing) => migrate(list, thing))]] : [];
    });
    current = { ...current, ...Object.fromEntries(brought) };
  }
  return current;
}

function readLists<Lists extends FileLists>({ lists }: FileForm<Lists>, content: Content): FileRead<Lists> {
  const schema = v.object(
    Object.fromEntries(
      Object.entries<Fields>(lists).map(([list, fields]) => [
        list,
        v.optional(thingsSchema(fields), () => []),
      ]),
    ),
  );
  const { success, output, issues } = v.safeParse(schema, content, { abortEarly: true });
  if (!success) return refused(issueWords(issues[0]));
  if (Object.values(output).every((things) => Array.isArray(things) && things.length === 0))
    return refused(strings.holdsNothing);
  // The schema is made of the lists; valibot sees only that there are some.
  return { ok: true, held: output as Held<Lists>, notes: notesOn(lists, content) };
}

function notesOn(lists: FileLists, content: Content): readonly string[] {
  const paths = unknownPaths(lists, content);
  const told = paths.slice(0, MOST_NOTES).map((path) => strings.unknown(placeWords(path)));
  const more = paths.length - told.length;
  return more > 0 ? [...told, strings.moreUnknown(more)] : told;
}
