import type { Place } from './fill.ts';
import { keptAs, type ListedFile } from './listed.ts';

type Site = Pick<Place, 'origin' | 'listed'>;

/** Paths of the files that are kept, each with the address it is kept as. */
export const keptPaths = ({ origin, listed }: Site): ReadonlyMap<string, string> =>
  new Map(listed.files.map((file: ListedFile) => [file[0], keptAs(origin, listed.base, file)]));

/** Whether the worker has to answer at all: what is read, from this site. */
export const isOurs = ({ method, url }: Pick<Request, 'method' | 'url'>, { origin, listed }: Site): boolean =>
  method === 'GET' && url.startsWith(`${origin}${listed.base}`);

async function notThere({ cache }: Place, paths: ReadonlyMap<string, string>): Promise<Response> {
  const key = paths.get('404.html');
  const page = key === undefined ? undefined : await cache.match(key);
  return page === undefined
    ? Response.error()
    : new Response(page.body, { status: 404, headers: page.headers });
}

/** A path in its plain letters, as hosts read it; a broken escape stays as it is. */
function plain(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

/** A part of the version before, for a page that was open before an update. */
const olderPart = async ({ cache, origin, listed }: Place, path: string): Promise<Response | undefined> =>
  path.startsWith('_astro/')
    ? cache.match(`${origin}${listed.base}${path}`, { ignoreSearch: true })
    : undefined;

/**
 * Answers a request of a page: from what is kept, else from the network, else with the site's own page for wrong addresses. What follows
 * `?` in an address is for the page and not for the host.
 */
export async function answer(
  request: Pick<Request, 'url' | 'mode'>,
  place: Place,
  paths: ReadonlyMap<string, string>,
): Promise<Response> {
  const { cache, origin, listed, fetch } = place;
  const { pathname, search } = new URL(request.url);
  const path = plain(pathname.slice(listed.base.length));
  const asked = request.mode === 'navigate';
  if (asked && !paths.has(path) && paths.has(`${path}/`)) {
    return Response.redirect(`${origin}${pathname}/${search}`, 301);
  }
  const key = paths.get(path) ?? paths.get(path.replace(/(^|\/)index\.html$/, '$1'));
  const kept = key !== undefined ? await cache.match(key) : await olderPart(place, path);
  if (kept !== undefined) return kept;
  try {
    return await fetch(request as Request);
  } catch {
    return asked ? notThere(place, paths) : Response.error();
  }
}
