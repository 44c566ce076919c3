/** Words of parts that are fetched when they are wanted. */
export const partStrings = {
  fetching: 'Being fetched …',
  noAnswers: 'What computes the results could not be fetched. What you type is kept.',
  failed: 'This part could not be fetched.',
  again: 'Try again',
} as const;
