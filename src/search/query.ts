/** Longest query that is looked at, in characters: what is longer was not typed. */
export const LONGEST_QUERY = 200;

/** The query that an address carries, cut to what is looked at. */
export const queryIn = (search: string): string =>
  (new URLSearchParams(search).get('q') ?? '').slice(0, LONGEST_QUERY);
