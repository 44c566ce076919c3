import type { Progress } from '../store/progress.ts';

/** Words about how far a reader is. */
export const strings: {
  readonly progress: Readonly<Record<Progress, string>>;
  readonly finish: string;
  readonly unfinish: string;
  readonly refused: string;
  readonly forget: string;
  readonly reallyForget: string;
  readonly forgotten: string;
  readonly none: string;
  readonly count: (finished: number, all: number) => string;
} = {
  progress: { begun: 'begun', finished: 'finished' },
  finish: 'I have finished this lesson',
  unfinish: 'Not finished after all',
  refused: 'This browser keeps nothing, so how far you are is forgotten when you leave the page.',
  forget: 'Forget my progress and my guesses',
  reallyForget: 'Forget which lessons you have begun and finished, and every guess that was kept?',
  forgotten: 'Forgotten: no lesson is begun, no guess is kept.',
  none: 'No lesson begun yet. What you begin and finish is noted in this browser and nowhere else.',
  count: (finished, all) =>
    `${finished} of ${all} lessons finished. This is noted in this browser and nowhere else.`,
};
