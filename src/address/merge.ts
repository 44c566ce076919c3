/**
 * A query with the state of one instance exchanged and everything else left as it was. Without an instance, all keys without
 * one are exchanged.
 * @param query with or without its `?`.
 * @param encoded what `encode` gave for the same instance.
 */
export function mergeQuery({
  query,
  encoded,
  instance,
}: {
  query: string;
  encoded: string;
  instance?: string;
}): string {
  const others = query
    .replace(/^\?/, '')
    .split('&')
    .filter((piece) => piece !== '' && ownerOf(piece) !== instance);
  return [...others, encoded].filter((part) => part !== '').join('&');
}

const ownerOf = (piece: string): string | undefined => /^([a-z][a-z0-9]*)\./.exec(piece)?.[1];
