import { createHash } from 'node:crypto';
import type { Kept, Place } from '../../src/offline/fill.ts';
import type { Listed } from '../../src/offline/listed.ts';

export const origin = 'https://club.example';

/** A browser's cache in memory, with room for so many answers. */
export class MemoryCache implements Kept {
  readonly held = new Map<string, Response>();
  readonly room: number;
  constructor(room = Number.POSITIVE_INFINITY) {
    this.room = room;
  }
  private static urlOf = (asked: RequestInfo | URL): string =>
    asked instanceof Request ? asked.url : String(asked);
  keys = async (): Promise<readonly Request[]> => [...this.held.keys()].map((url) => new Request(url));
  put = async (asked: RequestInfo | URL, response: Response): Promise<void> => {
    if (this.held.size >= this.room) throw new DOMException('no room', 'QuotaExceededError');
    this.held.set(MemoryCache.urlOf(asked), response);
  };
  delete = async (asked: RequestInfo | URL): Promise<boolean> => this.held.delete(MemoryCache.urlOf(asked));
  match = async (asked: RequestInfo | URL, how?: CacheQueryOptions): Promise<Response | undefined> => {
    const url = MemoryCache.urlOf(asked);
    const plain = (address: string): string => address.replace(/\?.*$/, '');
    const key = how?.ignoreSearch ? [...this.held.keys()].find((held) => plain(held) === plain(url)) : url;
    return this.held.get(key ?? '')?.clone();
  };
}

/** A host that has the given files, and counts what it is asked for. */
export function host(files: Readonly<Record<string, string>>, base = '/') {
  const asked: string[] = [];
  const fetch = async ({ url }: Pick<Request, 'url'>): Promise<Response> => {
    const path = new URL(url).pathname.slice(base.length);
    asked.push(path);
    const body = files[path];
    return body === undefined ? new Response('none', { status: 404 }) : new Response(body);
  };
  return { asked, fetch };
}

/** The hash of a text as the list has it, by another library than the site's. */
export const hashOfText = (text: string): string =>
  createHash('sha256').update(text).digest('base64url').slice(0, 12);

export const listed = (files: Readonly<Record<string, string>>, base = '/'): Listed => ({
  base,
  files: Object.entries(files).map(([path, body]) => [path, hashOfText(body), body.length]),
});

export const place = (cache: Kept, list: Listed, fetch: Place['fetch']): Place => ({
  cache,
  listed: list,
  origin,
  fetch,
});
