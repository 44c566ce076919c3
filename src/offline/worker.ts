import { answer, isOurs, keptPaths } from './answer.ts';
import { fill, NotKeptError, type Place, sweep } from './fill.ts';
import { bytesOf, cacheName, type Listed } from './listed.ts';
import type { Amount, Asked, NotKept, Told } from './messages.ts';

/** What the build puts in here. */
declare const __LISTED__: Listed;

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Event {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
/** The part of a service worker's world that is used here; the library of types for it would replace that of pages. */
interface World {
  readonly location: Location;
  readonly clients: {
    claim(): Promise<void>;
    matchAll(which: { includeUncontrolled: true }): Promise<readonly { postMessage(told: Told): void }[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: Lasting) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Asked>) => void): void;
}
const world = globalThis as unknown as World;

const listed = __LISTED__;
const { origin } = world.location;
const site = { origin, listed };
const paths = keptPaths(site);

const place = async (): Promise<Place> => ({
  ...site,
  cache: await caches.open(cacheName(listed)),
  fetch: (request) => fetch(request),
});

async function tell(notKept: NotKept): Promise<void> {
  for (const page of await world.clients.matchAll({ includeUncontrolled: true }))
    page.postMessage({ notKept });
}

async function install(): Promise<void> {
  try {
    const { quota, usage } = await navigator.storage.estimate();
    const here = await place().catch((error: unknown) => {
      throw new NotKeptError('refused', error);
    });
    await fill(here, quota === undefined || usage === undefined ? undefined : quota - usage);
  } catch (error) {
    await tell(error instanceof NotKeptError ? error.why : 'refused');
    throw error;
  }
}

async function activate(): Promise<void> {
  await sweep(await place());
  await world.clients.claim();
}

world.addEventListener('install', (event) => event.waitUntil(install()));
world.addEventListener('activate', (event) => event.waitUntil(activate()));
world.addEventListener('message', ({ data, ports }) => {
  if (data === 'take over') void world.skipWaiting();
  const amount: Amount = { files: listed.files.length, bytes: bytesOf(listed.files) };
  if (data === 'how much') ports[0]?.postMessage(amount);
});
world.addEventListener('fetch', (event) => {
  const { request } = event;
  if (!isOurs(request, site)) return;
  event.respondWith(
    place().then(
      (here) => answer(request, here, paths),
      () => fetch(request),
    ),
  );
});
