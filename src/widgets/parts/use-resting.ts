import { useEffect, useRef, useState } from 'preact/hooks';

/** How often is asked whether a held pointer has moved, in ms: it rests when it has not from one time to the next. */
const LOOK_MS = 250;

/**
 * A value that keeps still while a held pointer moves, so that a frame of a drag costs only what is drawn under the pointer. It
 * follows when the pointer rests, and at once when it lets go.
 * @param value the same object for as long as nothing has changed.
 */
export function useResting<Value>(value: Value, held: boolean): Value {
  const shown = useRef(value);
  const latest = useRef(value);
  const [, drawAgain] = useState(0);
  latest.current = value;
  if (!held) shown.current = value;
  // one clock for the whole of a drag: a timer a frame would cost more than some of what is drawn
  useEffect(() => {
    if (!held) return undefined;
    let before = latest.current;
    const clock = setInterval(() => {
      const now = latest.current;
      if (now === before && now !== shown.current) {
        shown.current = now;
        drawAgain((count) => count + 1);
      }
      before = now;
    }, LOOK_MS);
    return () => clearInterval(clock);
  }, [held]);
  return shown.current;
}
