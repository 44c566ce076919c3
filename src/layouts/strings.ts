import type { Progress } from '../store/progress.ts';

/** Words about how far a reader is with a lesson. */
export const strings: {
  readonly progress: Readonly<Record<Progress, string>>;
  readonly finish: string;
  readonly unfinish: string;
  readonly refused: string;
} = {
  progress: { begun: 'begun', finished: 'finished' },
  finish: 'I have finished this lesson',
  unfinish: 'Not finished after all',
  refused: 'This browser keeps nothing, so how far you are is forgotten when you leave the page.',
};
