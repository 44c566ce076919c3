import { bytesOf, hashOf, keptAs, type Listed, type ListedFile } from './listed.ts';
import type { NotKept } from './messages.ts';

/** What of a browser's cache is used here. */
export type Kept = Pick<Cache, 'keys' | 'put' | 'delete' | 'match'>;

export interface Place {
  readonly cache: Kept;
  readonly listed: Listed;
  readonly origin: string;
  readonly fetch: (request: Request) => Promise<Response>;
}

/** How many files are fetched at a time: the page that the reader looks at goes first. */
const AT_A_TIME = 4;
/** Where the list of the version at work is kept. */
const listAt = ({ origin, listed }: Place): string => `${origin}${listed.base}?kept-list`;

/** The site could not be kept. */
export class NotKeptError extends Error {
  readonly why: NotKept;
  constructor(why: NotKept, cause?: unknown) {
    super(`not kept: ${why}`, { cause });
    this.why = why;
  }
}

const whyOf = (error: unknown): NotKept => {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  return name === 'SecurityError' || name === 'InvalidStateError' ? 'refused' : 'network';
};

/** The file from the host, byte for byte as it was built; undefined where the host has no page of ours for wrong addresses. */
async function fetched(
  { origin, listed, fetch }: Place,
  [path, hash]: ListedFile,
): Promise<Response | undefined> {
  // a file with a hash in its name is what it was; of others the host is asked whether they have changed
  const cache = path.startsWith('_astro/') ? 'default' : 'no-cache';
  const response = await fetch(new Request(`${origin}${listed.base}${path}`, { cache }));
  // what answers may be a network that wants a login first, or a host that has only a part of this version yet
  const isOurs = (await hashOf(await response.clone().arrayBuffer())) === hash;
  const isMissingPage = path === '404.html' && response.status === 404;
  if (isMissingPage && !isOurs) return undefined;
  // some hosts send their page for wrong addresses as one
  if (!isOurs && response.ok) throw new NotKeptError('altered', path);
  if (!isOurs || !(response.ok || isMissingPage)) throw new Error(`${path}: ${response.status}`);
  // what came by way of another address may not answer for this one
  return response.redirected ? new Response(response.body, { headers: response.headers }) : response;
}

/** The addresses that the version at work keeps; none before the first. */
async function atWork(place: Place): Promise<ReadonlySet<unknown>> {
  const list: unknown = await (await place.cache.match(listAt(place)))?.json();
  return new Set(Array.isArray(list) ? list : []);
}

/** Takes out what is there of a version that is not at work, from this try and from those before it. */
async function takeOut(place: Place): Promise<void> {
  const { cache, listed, origin } = place;
  const needed = await atWork(place);
  const mine = listed.files.map((file) => keptAs(origin, listed.base, file));
  for (const address of mine) if (!needed.has(address)) await cache.delete(address);
}

/**
 * Fetches what is not kept yet, and keeps it beside what is. After a failure of the network the next try goes on from there; where there is no
 * room, what is there of this version is taken out again, for the reader's own sheets need it.
 * @param room bytes that the browser says are left
 * @throws NotKeptError
 */
export async function fill(place: Place, room = Number.POSITIVE_INFINITY): Promise<void> {
  const { cache, listed, origin } = place;
  try {
    const have = new Set((await cache.keys()).map(({ url }) => url));
    const missing = listed.files.filter((file) => !have.has(keptAs(origin, listed.base, file)));
    if (2 * bytesOf(missing) > room) throw new NotKeptError('full');
    const queue = missing.values();
    let goesOn = true;
    const work = async (): Promise<void> => {
      for (const file of queue) {
        if (!goesOn) return;
        const response = await fetched(place, file);
        if (response !== undefined) await cache.put(keptAs(origin, listed.base, file), response);
      }
    };
    const works = Array.from({ length: AT_A_TIME }, () =>
      work().catch((error: unknown) => {
        goesOn = false;
        throw error;
      }),
    );
    await Promise.allSettled(works);
    await Promise.all(works);
  } catch (error) {
    const why = error instanceof NotKeptError ? error.why : whyOf(error);
    if (why === 'full') await takeOut(place).catch(() => undefined);
    throw new NotKeptError(why, error);
  }
}

/**
 * Takes out what neither this version nor the one before it needs: a page that was open before an update may still fetch its
 * own parts.
 */
export async function sweep(place: Place): Promise<void> {
  const { cache, listed, origin } = place;
  const mine = listed.files.map((file) => keptAs(origin, listed.base, file));
  const keep = new Set([...mine, listAt(place), ...(await atWork(place))]);
  for (const request of await cache.keys()) if (!keep.has(request.url)) await cache.delete(request);
  await cache.put(listAt(place), Response.json(mine));
}
