/** Words about how far a reader is with all lessons: said on their list, and fetched with no lesson. */
export const learnStrings = {
  forget: 'Forget my progress and my guesses',
  reallyForget: 'Forget which lessons you have begun and finished, and every guess that was kept?',
  forgotten: 'Forgotten: no lesson is begun, no guess is kept.',
  none: 'No lesson begun yet. What you begin and finish is noted in this browser and nowhere else.',
  count: (finished: number, all: number): string =>
    `${finished} of ${all} lessons finished. This is noted in this browser and nowhere else.`,
};
