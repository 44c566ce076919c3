import { SITE_NAME } from '../../text/site-name.ts';

/** Words of the copied record, in ASCII: what a number is written as is each format's own. */
export const textStrings = {
  points: (count: number): string => `${count} points`,
  method: 'Method: ',
  demanded: 'Demanded: ',
  scatterKnown: (scatter: string): string =>
    `Scatter of one reading, known from earlier: ${scatter}; it counts where a point has one reading`,
  noScatter: 'Where a point has one reading only, nothing is known of its scatter and none is counted',
  alone: 'The measurement alone: ',
  withSpread: "; with the transmitter's own spread, as judged: ",
  chain: 'Chain, from the definition down: ',
  noChain: 'Chain: no links; only what the method and the readings bring themselves counts',
  assumed: 'assumed, no data sheet',
  cause: 'cause shared: ',
  against: ', against the others',
  off: 'Left out for a what-if: ',
  check: 'Check: ',
  cautionAt: 'Cautions reckoned at ',
  assumes: 'Assumed: parts that share no named cause are independent',
  rounding: 'Rounded: uncertainties to two digits, values to the same place (GUM 7.2.6)',
  made: (version: string): string => `Worked out with ${SITE_NAME} ${version}, bench`,
  noLink: 'The address of this sheet is too long for a forum: ask for the file',
  swr: ({ source, load }: { source: string; load: string }): string =>
    `SWR ${source} on ${load}, phase unknown`,
  tabled: {
    frequency: (count: number, most: string): string =>
      `corrections at ${count} frequencies, at most ${most}`,
    level: (count: number, most: string): string => `corrections at ${count} levels, at most ${most}`,
  },
  terms: {
    reading: (percent: string): string => `${percent} of reading`,
    fullScale: ({ percent, scale }: { percent: string; scale: string }): string =>
      `${percent} of ${scale} full scale`,
    digits: ({ count, step }: { count: string; step: string }): string =>
      `${count} ${count === '1' ? 'step' : 'steps'} of ${step}`,
    kelvin: ({ terms, temperature, range }: { terms: string; temperature: string; range: string }): string =>
      `(${terms}) per kelvin outside ${range}, at ${temperature}`,
    year: ({ terms, years }: { terms: string; years: string }): string =>
      `(${terms}) per year, ${years} ${years === '1' ? 'year' : 'years'} on`,
  },
  reliability: (percent: string): string => `itself known to ${percent}`,
} as const;
