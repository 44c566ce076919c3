/** Words of the simulation before it is asked for; those of its results are fetched with it. */
export const openingStrings = {
  intro:
    'A fourth way needs no formula for the sum: draw every part at random as its statement says, add, and do it again, until the result has settled (JCGM 101, clause 7). It runs beside the page and can be stopped.',
  start: 'Try it a million times',
  failed: (message: string): string => `The simulation could not run: ${message}`,
  notFetched: 'its script could not be fetched',
} as const;
