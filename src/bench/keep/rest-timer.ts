/** Rest after the last change before a sheet is kept, and the longest that someone who types on and on waits for it. */
export const REST_MS = 600;
export const LONGEST_MS = 5000;

/** Runs something once changes have rested, or have gone on for long. */
export interface RestTimer {
  /** There was a change. */
  start(): void;
  /** Nothing is waiting any more. */
  stop(): void;
}

/** A timer with nothing waiting. @param run called once for all the changes before it. */
export function restTimer(run: () => void): RestTimer {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let since: number | undefined;
  const stop = (): void => {
    clearTimeout(timer);
    timer = undefined;
    since = undefined;
  };
  return {
    start() {
      // not the clock of the day, which may be set meanwhile
      const now = performance.now();
      since ??= now;
      clearTimeout(timer);
      timer = setTimeout(
        () => {
          stop();
          run();
        },
        Math.max(0, Math.min(REST_MS, since + LONGEST_MS - now)),
      );
    },
    stop,
  };
}
