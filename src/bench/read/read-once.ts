/**
 * A memory for reading entries, which are never changed in place: the same entries are read once for each `key`, that is for whatever
 * else the reading hangs on. Only the last reading of each is kept, for as long as the entries themselves.
 */
export function readOnce<Entries extends object, Read>(): (
  entries: Entries,
  key: string,
  read: () => Read,
) => Read {
  const kept = new WeakMap<Entries, { readonly key: string; readonly value: Read }>();
  return (entries, key, read) => {
    const found = kept.get(entries);
    if (found?.key === key) return found.value;
    const value = read();
    kept.set(entries, { key, value });
    return value;
  };
}
