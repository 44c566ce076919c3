/** Words of a sheet that has no figure of its own yet, or one that rests on what the method brought along. */
export const blankStrings = {
  untitled: 'Your own measurement',
  needed: (count: number): string =>
    count === 1
      ? 'No figure yet: one entry is missing or cannot be used'
      : `No figure yet: ${count} entries are missing or cannot be used`,
  short: 'No figure yet',
  assumed: (count: number): string =>
    count === 1
      ? 'One link still stands as the method brought it: enter what your own data sheet says before you trust the figure.'
      : `${count} links still stand as the method brought them: enter what your own data sheets say before you trust the figure.`,
} as const;
