import { useEffect, useRef, useState } from 'preact/hooks';
import { afterPaint, inSlices } from './slices.ts';

/**
 * A value that follows once the page has answered its reader: what is drawn with it does not hold up the keystroke that changed it.
 * A further change puts it off again. At first it is the value itself, on the server as here.
 * @param atOnce whether this change is not to be put off: what is typed into the very part that is drawn with the value must not be drawn
 * over by an older one. What was shown once is never followed by something older.
 */
export function useLate<Value>(value: Value, atOnce: boolean): Value {
  const shown = useRef(value);
  // what follows is the value of that moment: a letter may be typed before the effect of the last one is undone
  const latest = useRef(value);
  latest.current = value;
  const [, drawAgain] = useState(0);
  if (atOnce || shown.current === undefined) shown.current = value;
  useEffect(() => {
    if (Object.is(shown.current, value)) return undefined;
    const stop = new AbortController();
    const follow = (): void => {
      shown.current = latest.current;
      drawAgain((count) => count + 1);
    };
    void inSlices({ steps: [follow], signal: stop.signal, pause: afterPaint });
    return () => stop.abort();
  }, [value]);
  return shown.current;
}
