/** What is said of readings that cannot be used. */
export const readingStrings = {
  expected: 'the reference comes first and last, so that an odd number is expected, 3 or more',
  none: 'No reading yet: readings in turn are expected, reference, own, reference, for example 7.34 8.10 7.36.',
  mixed: 'Some readings have a unit and some have none: give all of them one, or none.',
  tooMany: (most: number): string => `More than ${most} readings: split them into places.`,
  notInTurn: (count: number): string =>
    `${count === 1 ? 'One reading' : `${count} readings`}: ${readingStrings.expected}.`,
  lineNotInTurn: (line: number, count: number): string =>
    `Line ${line} of readings has ${count === 1 ? 'one' : count}: in each line ${readingStrings.expected}.`,
  table: (places: number): string =>
    `This looks like a whole table, with ${places === 1 ? 'a place' : `${places} places`} in its first column.`,
} as const;
