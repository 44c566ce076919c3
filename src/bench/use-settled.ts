import { useEffect, useState } from 'preact/hooks';

/** Rest after a change before what need not follow each letter is worked out. */
const REST_MS = 120;

/**
 * What `make` makes of a key, worked out once the key has rested: undefined while it waits, so that nothing old is shown beside
 * something new. The first value is there at once, on the server as here.
 */
export function useSettled<Key extends object, Value>(
  key: Key,
  make: (key: Key) => Value,
): Value | undefined {
  const [made, setMade] = useState(() => ({ key, value: make(key) }));
  useEffect(() => {
    if (made.key === key) return;
    const timer = setTimeout(() => setMade({ key, value: make(key) }), REST_MS);
    return () => clearTimeout(timer);
  }, [key, make, made.key]);
  return made.key === key ? made.value : undefined;
}
