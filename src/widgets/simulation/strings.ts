import { openingStrings } from './opening-strings.ts';

/** Words of the simulation. */
export const strings = {
  ...openingStrings,
  again: 'Try again with other random numbers',
  cancel: 'Stop',
  progressLabel: 'Trials so far',
  running: (trials: string): string => `${trials} trials so far.`,
  cancelled: (trials: string): string => `Stopped after ${trials} trials; nothing is concluded from them.`,
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
