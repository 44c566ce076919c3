const kilo = 1000;

/** The most script that a kind of page may load, by its address; the first that fits counts. */
const budgets: readonly (readonly [RegExp, number])[] = [
  [/^\/stage\//, 45 * kilo],
  [/^\/bench\//, 90 * kilo],
  [
    /^\/(learn\/[^/]+\/[^/]+|examples\/[^/]+|practice|practice\/[^/]+|practice\/q\/[^/]+|embed\/[^/]+)\/$/,
    40 * kilo,
  ],
  [/^\/$/, 40 * kilo],
  [/^\/search\/$/, 25 * kilo],
  [/^\/reference\/(formulas\/[^/]+|tables)\/$/, 40 * kilo],
];

/** Bytes of script, compressed, that a page may load by itself; a page of text stays a page of text. */
export const scriptBudget = (path: string): number =>
  budgets.find(([pattern]) => pattern.test(path))?.[1] ?? 3 * kilo;
