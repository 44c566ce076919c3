import { useEffect, useState } from 'preact/hooks';
import { useFetched } from './views/use-fetched.ts';

export type Answering = typeof import('./answering.ts');

/** On the server it is at hand: the page is written with its results. */
const onServer: Answering | undefined = import.meta.env.SSR ? await import('./answering.ts') : undefined;

const load = (): Promise<Answering> => import('./answering.ts');

/** What tells that somebody begins to use the page: a pointer that moves, a finger, a key, a focus. */
const SIGNS = ['pointermove', 'pointerdown', 'keydown', 'focusin'] as const;

/** Whether the page is in use: from the first sign of a reader on. */
export function useInUse(): boolean {
  const [inUse, setInUse] = useState(false);
  useEffect(() => {
    const stop = new AbortController();
    const begin = (): void => {
      stop.abort();
      setInUse(true);
    };
    for (const sign of SIGNS) addEventListener(sign, begin, { signal: stop.signal, passive: true });
    return () => stop.abort();
  }, []);
  return inUse;
}

/** What answers, and whether it could not be fetched. */
export interface FetchedAnswering {
  readonly answering: Answering | undefined;
  readonly failed: boolean;
  readonly again: () => void;
}

/**
 * What computes and shows results. A page that is only looked at does without: it stands there as it was written.
 * @param changed whether the page shows another sheet than it was written with.
 */
export function useAnswering(changed: boolean): FetchedAnswering {
  const inUse = useInUse();
  const { module, failed, again } = useFetched(load, onServer === undefined && (inUse || changed));
  return { answering: onServer ?? module, failed, again };
}
