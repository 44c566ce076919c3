import { breathe } from '../widgets/parts/breathe.ts';

/** Longest stretch of work between two chances for the page to answer its reader, in ms. */
const SLICE_MS = 6;

/** Longest wait for a frame, in ms: a page that is not seen paints none. */
const NO_FRAME_MS = 120;

/** Lets the page paint what has changed so far. */
export const afterPaint = (): Promise<void> =>
  new Promise((resolve) => {
    const go = (): void => {
      clearTimeout(timer);
      cancelAnimationFrame(frame);
      void breathe().then(resolve);
    };
    const timer = setTimeout(go, NO_FRAME_MS);
    const frame = requestAnimationFrame(go);
  });

/**
 * Runs steps one after the other in slices that leave the page alive, and stops between two of them once `signal` is aborted.
 * @param now clock in ms, for tests.
 * @returns whether every step was run.
 */
export async function inSlices({
  steps,
  signal,
  now = () => performance.now(),
  pause = breathe,
}: {
  steps: Iterable<() => void>;
  signal: AbortSignal;
  now?: () => number;
  pause?: () => Promise<void>;
}): Promise<boolean> {
  await pause();
  let started = now();
  for (const step of steps) {
    if (signal.aborted) return false;
    step();
    if (now() - started < SLICE_MS) continue;
    await pause();
    started = now();
  }
  return !signal.aborted;
}
