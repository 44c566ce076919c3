import { keptDecimal } from '../store/decimal.ts';
import type { Asked, Told } from './messages.ts';

/** What the note at the foot of a page can say; its words stand in the page. */
type Note = 'newer' | 'full' | 'older' | 'refused' | 'unfetched';

const place = (): Element | null => document.querySelector('#offline-says');

/** Says a note; a page without the place for it (the stage) keeps quiet. */
function say(note: Note, act?: () => void): void {
  const words = document.querySelector<HTMLTemplateElement>(`#offline-${note}`);
  if (!words) return;
  place()?.replaceChildren(words.content.cloneNode(true));
  if (act) place()?.querySelector('button')?.addEventListener('click', act);
}

/** What is typed rests before it is kept or written into the address, at most so long; only what is there comes back. */
const REST_MS = 700;
const reload = (): unknown => setTimeout(() => location.reload(), REST_MS);

/** Offers a version that waits, and reloads the page once it is at work: at once where the reader said so, on request elsewhere. */
function follow(container: ServiceWorkerContainer, registration: ServiceWorkerRegistration): void {
  let had = container.controller !== null;
  let wanted = false;
  const takeOver = (): void => {
    wanted = true;
    registration.waiting?.postMessage('take over' satisfies Asked);
  };
  const offer = (): void => {
    if (had && registration.waiting) say('newer', takeOver);
  };
  const watch = (): void => registration.installing?.addEventListener('statechange', offer);
  offer();
  // it may have been found while this page was still on its way
  watch();
  registration.addEventListener('updatefound', watch);
  container.addEventListener('controllerchange', () => {
    if (wanted) reload();
    else if (had) say('newer', reload);
    had = true;
  });
}

function listen(container: ServiceWorkerContainer): void {
  container.addEventListener('message', ({ data }: MessageEvent<Told>) => {
    // where a version is at work, all of it works on
    if (data.notKept === 'full') say(container.controller ? 'older' : 'full');
    if (data.notKept === 'refused') say('refused');
  });
}

/** Has the browser keep the whole site, once the page itself is there. In a frame of another site nothing is kept. */
async function start(place: string): Promise<void> {
  if (window !== top) return;
  try {
    const container = navigator.serviceWorker; // some browsers refuse at the mere name
    if (!container) return;
    listen(container);
    const worker = new URL('offline-worker.js', place);
    follow(container, await container.register(worker, { updateViaCache: 'none' }));
  } catch {
    // without a network nothing is told: what is kept is kept; and a host or a network that has something else at this address is no
    // refusal of the browser's, which would refuse this too
    try {
      await caches.keys();
    } catch {
      say('refused');
    }
  }
}

const script = document.currentScript;
if (script instanceof HTMLScriptElement) {
  const { src } = script;
  // pages are written with a point: whoever has chosen a comma, here or in another tab, has this page's numbers turned
  const inSign = (): void => {
    if (keptDecimal() === 'comma') void import(/* @vite-ignore */ new URL('sign.js', src).href);
  };
  inSign();
  addEventListener('storage', inSign);
  addEventListener('unfetched', () => {
    say('unfetched', () => place()?.replaceChildren());
    // it lies over the foot of the window, where the reader may be at work
    document.querySelector('main :focus')?.scrollIntoView({ block: 'nearest' });
  });
  // a page that comes back as it was left was told of nothing meanwhile: whoever follows what is kept looks again
  addEventListener('pageshow', ({ persisted }) => persisted && dispatchEvent(new Event('storage')));
  addEventListener('load', () => setTimeout(() => void start(src)));
}
