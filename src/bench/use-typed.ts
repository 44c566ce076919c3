import { useCallback, useRef } from 'preact/hooks';
import type { BenchAction } from './state/actions.ts';

/** What a reader types letter by letter. */
const TYPING: readonly BenchAction['type'][] = ['edit', 'editPoint', 'editLink'];

/**
 * The way to send actions, and whether what is drawn now may wait a breath: after a letter that was typed the result comes first, and the
 * rest of the page follows it. Everything else is drawn at once. With the first of it after letters the fields are drawn as a whole (`again`
 * counts that): a field shows its letters by itself, and where they were taken back before they were drawn, nothing else would put it right.
 */
export function useTyped(send: (action: BenchAction) => void) {
  const typed = useRef(false);
  const again = useRef(0);
  const act = useCallback(
    (action: BenchAction): void => {
      const typing = TYPING.includes(action.type);
      if (typed.current && !typing) again.current += 1;
      typed.current = typing;
      send(action);
    },
    [send],
  );
  return { act, mayWait: typed.current, again: again.current };
}
