/** Words of a simulation that was run on the bench. Numbers come in as finished text. */
export const tryStrings = {
  outOfRange: 'The method is out of range: there is no model to try.',
  stale:
    'Of an earlier state: something has been changed since it was started. Try again for what stands here now.',
  alike: (apart: string): string =>
    `Simulation and whole distribution differ by ${apart} at most at their ends: no more than the noise of so many trials.`,
  differs: (apart: string): string =>
    `Simulation and whole distribution differ by ${apart} at their ends: more than the noise of so many trials. One of the two is not right for this sheet, and we should like to know.`,
  validated: ({ apart, tolerance }: { apart: string; tolerance: string }): string =>
    `Propagation differs from it by ${apart} at most. ${tolerance} is allowed for a standard uncertainty with one significant digit (JCGM 101, clause 8): propagation may be used here.`,
  notValidated: ({ apart, tolerance }: { apart: string; tolerance: string }): string =>
    `Propagation differs from it by ${apart}, and ${tolerance} is allowed for a standard uncertainty with one significant digit (JCGM 101, clause 8): take the whole distribution here, not propagation.`,
} as const;
