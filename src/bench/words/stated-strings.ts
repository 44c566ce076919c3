/** Words of the stated result. Numbers come in as finished text. */
export const statedStrings = {
  heading: 'The result as one states it',
  names: {
    withStandard: 'With the standard uncertainty (GUM 7.2.2, first form)',
    digits: 'Its digits in brackets (GUM 7.2.2, second form)',
    brackets: 'Its value in brackets (GUM 7.2.2, third form)',
    expanded: 'With the expanded uncertainty (GUM 7.2.3 and 7.2.4)',
    watts: 'In watts, end by end',
    whole: 'By the whole distribution (JCGM 101, 5.5)',
  },
  withStandard: ({ value, u }: { value: string; u: string }): string =>
    `${value} with a combined standard uncertainty of ${u}`,
  digits: ({ value, unit }: { value: string; unit: string }): string =>
    `${value} ${unit}, the bracket being the combined standard uncertainty in units of the last digits`,
  brackets: ({ value, unit }: { value: string; unit: string }): string =>
    `${value} ${unit}, the bracket being the combined standard uncertainty in dB`,
  expanded: ({
    value,
    u,
    coverage,
    freedom,
  }: {
    value: string;
    u: string;
    coverage: string;
    freedom: string;
  }): string =>
    `${value}, expanded uncertainty U = k × u with u = ${u} (${coverage}${freedom}); the interval is estimated to hold the level with that probability`,
  freedomOf: (freedom: string): string => `, Student’s t with ${freedom} effective degrees of freedom`,
  watts: ({ value, interval, coverage }: { value: string; interval: string; coverage: string }): string =>
    `${value} (${interval}; ${coverage})`,
  whole: ({
    value,
    u,
    interval,
    share,
  }: {
    value: string;
    u: string;
    interval: string;
    share: string;
  }): string => `${value}, standard deviation ${u}, ${share} coverage interval ${interval}, equal tails`,
  exact: ({ value }: { value: string }): string => `${value}; no uncertainty is stated`,
  /** How numbers are cut. */
  rounding:
    'Uncertainties to two significant digits and values to the same place, to the nearest, ties to the even digit (GUM 7.2.6; ISO 80000-1, annex B). Ends in watts are rounded from the unrounded level.',
  copy: 'Copy',
  copyOf: (name: string): string => `Copy: ${name}`,
  done: 'Copied.',
  refused: 'The browser did not allow copying: the text is selected, copy it yourself.',
} as const;
