/** Words of the live example on the formula sheet. */
export const strings = {
  legend: 'With numbers',
  several: 'several numbers, apart by semicolons',
  result: 'Result',
  nothing: 'A number is expected.',
  /** What the computation refused, in its own words but for the name of the function, which stands below. */
  refused: (message: string): string => `No result: ${message.replace(/^\w+: /, '')}.`,
  failed: 'The computation could not be loaded. Is the network gone?',
} as const;
