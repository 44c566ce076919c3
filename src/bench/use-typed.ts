import { useCallback, useRef } from 'preact/hooks';
import type { BenchAction } from './actions.ts';

/** What a reader types letter by letter. */
const TYPING: readonly BenchAction['type'][] = ['edit', 'editPoint', 'editLink'];

/**
 * The way to send actions, and whether what is drawn now may wait a breath: after a letter that was typed the result comes first, and the
 * rest of the page follows it. Everything else is drawn at once.
 */
export function useTyped(send: (action: BenchAction) => void) {
  const typed = useRef(false);
  const act = useCallback(
    (action: BenchAction): void => {
      typed.current = TYPING.includes(action.type);
      send(action);
    },
    [send],
  );
  return { act, mayWait: typed.current };
}
