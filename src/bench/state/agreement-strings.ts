/** Words of what was agreed before the first reading, for the log of changes. Numbers come in as text. */
export const agreementStrings = {
  between: (lower: string, upper: string): string => `${lower} to ${upper}`,
  around: (nominal: string, tolerance: string): string => `${nominal} ± ${tolerance}`,
  uneven: (nominal: string, above: string, below: string): string => `${nominal} +${above} −${below}`,
  atMost: (limit: string): string => `at most ${limit}`,
  atLeast: (limit: string): string => `at least ${limit}`,
  licence: (limit: string): string => `maximum of the licence ${limit}`,
  simple: 'simple acceptance',
  guardBand: (multiplier: string): string => `guard band of ${multiplier} × U`,
  probability: (percent: string): string => `conformity at least ${percent} probable`,
  nothing: 'nothing agreed',
} as const;
