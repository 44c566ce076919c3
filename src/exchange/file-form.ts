import type { Fields } from '../address/field-spec.ts';

/** Largest file that is opened, and made, in bytes: a sheet of two hundred thousand readings has half of it. */
export const LARGEST_FILE = 5_000_000;

/** Stands in every file that this site makes, under `file`. */
export const FILE_MARK = 'how-sure-is-a-watt';

/** Most things of one kind in a file. */
export const MOST_THINGS = 1000;

/** Longest column of readings in a file, in characters: twenty thousand readings of twice the usual length. */
export const LONGEST_COLUMN = 400_000;

/** What a file may hold: by its list's name (`sheets`), the fields of one thing in it. */
export type FileLists = Readonly<Record<string, Fields>>;

/** One kind of file, with its present version. */
export interface FileForm<Lists extends FileLists = FileLists> {
  /** Raise it when a field gets another meaning or another default, not when one is added. */
  readonly version: number;
  readonly lists: Lists;
  /** By lists that files of another page have, the sentence that says where those are opened. */
  readonly elsewhere?: Readonly<Record<string, string>>;
  /** By old version, what brings one of its things up to the next version. */
  readonly older?: Readonly<Record<number, (list: string, thing: unknown) => unknown>>;
}
