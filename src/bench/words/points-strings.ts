/** Words of the result over several points. */
export const pointsStrings = {
  heading: 'All points',
  caption: 'Estimate, band and verdict, point by point',
  region: 'All points, scrolls sideways',
  point: 'Point',
  estimate: 'Estimate',
  expanded: 'U',
  watts: 'Interval in watts',
  verdict: 'Verdict',
  probability: 'Conforms with',
  dominant: 'Widens it most',
  nothing: 'nothing',
  pending: 'being worked out',
  outOfRange: 'out of range',
  none: 'none',
  coverage: (share: string): string =>
    `U with k = 2 unless a row says another; U and interval in watts cover ${share}.`,
  unnamed: (position: number): string => `Point ${position}`,
  chartName: 'The band at each point and its specification',
  chartDescription: (summary: string): string =>
    `One row a point: the strip is the interval in dBm, the mark in it the estimate, firm lines the limits, hatched what lies outside them. ${summary}`,
  summary: (parts: readonly string[], byFrequency: boolean): string =>
    `Of the points${byFrequency ? ', in the order of their frequencies,' : ''} ${parts.join(', ')}.`,
  count: (count: number, what: string): string => `${count} ${count === 1 ? 'is' : 'are'} ${what}`,
  verdicts: {
    inside: 'inside',
    outside: 'outside',
    'cant-tell': 'undecided',
    outOfRange: 'out of the method’s range',
    pending: 'still being worked out',
  },
} as const;
