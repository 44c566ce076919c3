import { useEffect, useState } from 'preact/hooks';
import { inSlices } from './slices.ts';

/**
 * A value that follows once the page has answered its reader: what is drawn with it does not hold up the keystroke that changed it.
 * A further change puts it off again. At first it is the value itself, on the server as here.
 */
export function useLate<Value>(value: Value): Value {
  const [late, setLate] = useState({ value });
  useEffect(() => {
    if (Object.is(late.value, value)) return undefined;
    const stop = new AbortController();
    void inSlices({ steps: [() => setLate({ value })], signal: stop.signal });
    return () => stop.abort();
  }, [late, value]);
  return late.value;
}
