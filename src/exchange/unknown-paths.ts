import type { Fields } from '../address/field-spec.ts';
import type { FileLists } from './file-form.ts';

type Path = readonly (string | number)[];

/** What every file says of itself. */
const OF_FILE: readonly string[] = ['file', 'version', 'saved'];

const ownKeys = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null ? Object.keys(value) : [];

const own = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null
    ? Object.getOwnPropertyDescriptor(value, key)?.value
    : undefined;

/** Places in a file that no field speaks of, in their order. */
export const unknownPaths = (lists: FileLists, content: unknown): readonly Path[] => [
  ...ownKeys(content)
    .filter((key) => !OF_FILE.includes(key) && !Object.hasOwn(lists, key))
    .map((key): Path => [key]),
  ...Object.entries(lists).flatMap(([list, fields]) => inList([list], own(content, list), fields)),
];

const inList = (at: Path, things: unknown, fields: Fields): readonly Path[] =>
  Array.isArray(things) ? things.flatMap((thing, index) => inThing([...at, index], thing, fields)) : [];

function inThing(at: Path, thing: unknown, fields: Fields): readonly Path[] {
  return ownKeys(thing).flatMap((key): readonly Path[] => {
    const field = Object.hasOwn(fields, key) ? fields[key] : undefined;
    if (field === undefined) return [[...at, key]];
    return field.type === 'list' ? inList([...at, key], own(thing, key), field.of) : [];
  });
}
