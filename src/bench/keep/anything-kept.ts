import { DATABASE } from '../../store/database.ts';

/** What of a page and its browser tells whether something is kept. */
interface Place {
  readonly hash: string;
  /** State of the entry of the history. */
  readonly state: unknown;
  /** The names of all databases of this site; undefined where the browser does not tell. It may throw at the mere question. */
  readonly databases: () => Promise<readonly { readonly name?: string | undefined }[]> | undefined;
}

const here = (): Place => ({
  hash: location.hash,
  state: history.state,
  databases: () => globalThis.indexedDB?.databases?.(),
});

/** Whether there may be a kept sheet to open: an address or the history names a sheet, or this browser has kept something before. */
export async function anythingKept({ hash, state, databases }: Place = here()): Promise<boolean> {
  if (hash !== '' || state !== null) return true;
  try {
    const found = await databases();
    return found?.some(({ name }) => name === DATABASE) ?? true;
  } catch {
    return true; // a browser that refuses to say may refuse to keep, which the reader is told of
  }
}
