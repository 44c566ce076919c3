/** Words that every method shares: what is no number, the worst case, the largest part, and the table of parts. */
export const methodStrings = {
  noNumber: 'No number',
  noWorst: 'No worst case',
  noWorstWords: 'limits of parts add up to nothing where the method itself does not hold',
  helps: 'What helps',
  level: (watts: string): string => `${watts}; U with k = 2`,
  worst: (band: string): string => `${band} at worst`,
  worstWords: 'if every part were at its limit and all the same way',
  largest: ({ name, share }: { name: string; share: string }): string => `${name}: ${share}`,
  spokenLargest: (text: string): string => `${text} of the variance`,
  largestOfSeveral: (left: string): string =>
    `each, and no part has a larger share of the variance; without one of them ${left} would be left`,
  largestWords: (left: string): string =>
    `the largest share of the variance; without it ${left} would be left`,
  table: 'What each part may be wrong by',
  columns: { part: 'Part', stated: 'Stated', u: 'u', share: 'Share' },
  mark: 'largest',
  none: 'none',
} as const;
