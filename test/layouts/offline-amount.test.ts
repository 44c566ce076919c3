import { afterEach, expect, it, vi } from 'vitest';
import { tellAmount } from '../../src/layouts/offline-amount.ts';
import { offlineStrings } from '../../src/layouts/offline-strings.ts';
import type { NotKept } from '../../src/offline/messages.ts';

afterEach(() => vi.unstubAllGlobals());

/** A worker that answers how much it keeps, as the one at work does. */
const keeper = {
  postMessage: (_asked: unknown, [port]: readonly MessagePort[]) =>
    port?.postMessage({ files: 3, bytes: 5000 }),
};

/** The place on the page, and what tells it of the worker. */
function page() {
  const place = { textContent: '' };
  const container = new EventTarget();
  let ready = (_: { readonly active: unknown }): void => undefined;
  Object.assign(container, { ready: new Promise((resolve) => (ready = resolve)) });
  vi.stubGlobal('navigator', { serviceWorker: container });
  const worker = (notKept: NotKept): boolean =>
    container.dispatchEvent(Object.assign(new Event('message'), { data: { notKept } }));
  void tellAmount(place as HTMLElement);
  return { says: () => place.textContent, worker, ready: () => ready({ active: keeper }) };
}

const kept = offlineStrings.kept(3, '5.0\u00a0kB');

it('what is kept is told once it is there', async () => {
  const { says, ready } = page();
  expect(says()).toBe(offlineStrings.notYet);
  ready();
  await expect.poll(says).toBe(kept);
});

it('a host or a network that alters what was built is told, whether something is kept already or not', async () => {
  const { says, worker, ready } = page();
  worker('altered');
  expect(says()).toBe(`${offlineStrings.notYet} ${offlineStrings.altered}`);
  ready();
  await expect.poll(says).toBe(`${kept} ${offlineStrings.altered}`);
});

it('a network that failed is no such thing', () => {
  const { says, worker } = page();
  worker('network');
  expect(says()).toBe(offlineStrings.notYet);
});
