/** A file of the site: its path below the base (`learn/`, the start page is empty), a hash of its bytes, and how many they are. */
export type ListedFile = readonly [path: string, hash: string, bytes: number];

/** What the build lists to be kept for use without a network. */
export interface Listed {
  /** Base path with its slash at the end. */
  readonly base: string;
  readonly files: readonly ListedFile[];
}

/** Name of the cache of a site: one origin may carry several, each under its own path. */
export const cacheName = ({ base }: Listed): string => `how-sure-is-a-watt ${base}`;

/** The address under which a file is kept: two versions of it stand beside each other. */
export const keptAs = (origin: string, base: string, [path, hash]: ListedFile): string =>
  `${origin}${base}${path}?kept=${hash}`;

/** How many bytes the files have together. */
export const bytesOf = (files: readonly ListedFile[]): number =>
  files.reduce((sum, [, , bytes]) => sum + bytes, 0);

/** How many bytes of a SHA-256 tell a file. */
const HASH_BYTES = 9;

/** The hash by which the list tells a file, of its bytes: the first of its SHA-256, in the letters of an address. */
export async function hashOf(body: BufferSource): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', body));
  const letters = btoa(String.fromCharCode(...digest.subarray(0, HASH_BYTES)));
  return letters.replaceAll('+', '-').replaceAll('/', '_');
}
