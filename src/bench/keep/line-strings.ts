/** Words of the line above the bench that are there before anything is fetched. */
export const lineStrings = {
  all: 'Kept sheets',
  /** Where the list of them is, from the bench. */
  allAt: 'sheets/',
} as const;
