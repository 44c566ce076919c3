/** Words of parts that are fetched when they are wanted. */
export const partStrings = {
  fetching: 'Being fetched …',
  failed: 'This part could not be fetched.',
  again: 'Try again',
} as const;
