/** Words of the simulation. */
export const strings = {
  intro:
    'A fourth way needs no formula for the sum: draw every part at random as its statement says, add, and do it again, until the result has settled (JCGM 101, clause 7). It runs beside the page and can be stopped.',
  start: 'Try it a million times',
  again: 'Try again with other random numbers',
  cancel: 'Stop',
  progressLabel: 'Trials so far',
  running: (trials: string): string => `${trials} trials so far.`,
  cancelled: (trials: string): string => `Stopped after ${trials} trials; nothing is concluded from them.`,
  failed: (message: string): string => `The simulation could not run: ${message}`,
  notFetched: 'its script could not be fetched',
  noWorker: 'this browser does not allow a worker here',
  done: ({ trials, seed }: { trials: string; seed: number }): string =>
    `${trials} trials, random numbers from seed ${seed}.`,
  caption: 'The same interval, computed and tried',
  way: 'Way',
  lower: 'Lower end',
  upper: 'Upper end',
  whole: 'Whole distribution',
  simulated: 'Simulation',
  propagated: 'Propagation',
  agrees: (difference: string): string =>
    `The ends of simulation and whole distribution differ by ${difference} at most: the noise of the trials.`,
} as const;
