import { vi } from 'vitest';

/** As much of a window as hooks listen to; taken away again by `vi.unstubAllGlobals()`. */
export function stubWindow(): EventTarget {
  const events = new EventTarget();
  for (const name of ['addEventListener', 'removeEventListener', 'dispatchEvent'] as const)
    vi.stubGlobal(name, events[name].bind(events));
  vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'visible' }));
  return events;
}

/** The page comes back as it was left. */
export const comesBack = (events: EventTarget): boolean =>
  events.dispatchEvent(Object.assign(new Event('pageshow'), { persisted: true }));
