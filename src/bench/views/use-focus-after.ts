import { useCallback, useLayoutEffect, useRef } from 'preact/hooks';
import { focusAfter, type Shown } from '../form/focus-after.ts';
import type { BenchAction } from '../state/actions.ts';
import { stamped } from '../state/stamped.ts';

/**
 * Sends actions with the time, and keeps the focus at hand when what had it moves or goes. A pointer that drags has no focus to keep,
 * nor have the keys of undo as long as the control in use is still there. The function that sends is the same for ever, so that parts
 * which nothing has changed need not be drawn again.
 */
export function useFocusAfter(shown: Shown, send: (action: BenchAction) => void) {
  const pending = useRef<{ readonly action: BenchAction; readonly before: Shown }>();
  useLayoutEffect(() => {
    const last = pending.current;
    if (last === undefined || isDrawnAlike(last.before, shown)) return;
    pending.current = undefined;
    if (isKept(last.action)) return;
    const control = focusAfter(last.action, last.before, shown)
      .map((id) => document.getElementById(id))
      .find((found) => found !== null && !found.matches(':disabled'));
    control?.focus();
    // a new link or point has a name that waits to be typed over
    if (control instanceof HTMLInputElement && GIVES_NAME.includes(last.action.type)) control.select();
  });
  const latest = useRef({ shown, send });
  latest.current = { shown, send };
  return useCallback((action: BenchAction): void => {
    const byPointer = action.type === 'move' && !isOnButton();
    pending.current = byPointer ? undefined : { action, before: latest.current.shown };
    latest.current.send(stamped(action, new Date().toISOString()));
  }, []);
}

const isDrawnAlike = (before: Shown, after: Shown): boolean =>
  before.entries === after.entries && before.drawing === after.drawing;

const GIVES_NAME: readonly BenchAction['type'][] = ['add', 'duplicate', 'addPoint'];

const isOnButton = (): boolean => document.activeElement instanceof HTMLButtonElement;

/** Whether the focus may stay where it is: undo and redo take it only from what went away. */
function isKept({ type }: BenchAction): boolean {
  const active = document.activeElement;
  const lost = active === null || active === document.body || active.matches(':disabled');
  return (type === 'undo' || type === 'redo') && !lost;
}
