import type { Amount, Asked, Told } from '../offline/messages.ts';
import { sizeText } from '../text/size-text.ts';
import { offlineStrings } from './offline-strings.ts';

/** How much the worker at work keeps. */
const amountOf = (worker: ServiceWorker): Promise<Amount> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.addEventListener('message', ({ data }: MessageEvent<Amount>) => resolve(data), { once: true });
    port1.start();
    worker.postMessage('how much' satisfies Asked, [port2]);
  });

/** What keeps sites in this browser; undefined where it has nothing of the kind, or refuses at the mere name. */
function containerHere(): ServiceWorkerContainer | undefined {
  try {
    return navigator.serviceWorker;
  } catch {
    return undefined;
  }
}

/** Says in the place how much of the site is kept in this browser, and follows until it is; and where what came was not what was built. */
export async function tellAmount(place: HTMLElement): Promise<void> {
  const container = containerHere();
  if (!container) {
    place.textContent = isSecureContext ? offlineStrings.unable : offlineStrings.insecure;
    return;
  }
  let kept = offlineStrings.notYet;
  let isAltered = false;
  const say = (): void => {
    place.textContent = isAltered ? `${kept} ${offlineStrings.altered}` : kept;
  };
  say();
  container.addEventListener('message', ({ data }: MessageEvent<Told>) => {
    isAltered ||= data.notKept === 'altered';
    say();
  });
  const { active } = await container.ready;
  if (!active) return;
  const { files, bytes } = await amountOf(active);
  kept = offlineStrings.kept(files, sizeText(bytes));
  say();
}
