/** Words of the choice widget, in its two uses: a guess before the explanation, a check after it. */
export const strings = {
  guess: {
    heading: 'Guess first',
    give: 'Keep my guess',
    answer: 'The answer',
    kept: (text: string): string => `Read on, or open the answer. Your guess is kept: ${text}`,
    verdict: (right: boolean): string =>
      right ? 'That was your guess, and it is right.' : 'Your guess was another.',
  },
  check: {
    heading: 'Check yourself',
    give: 'Check my answer',
    answer: 'The worked answer',
    kept: (text: string): string => text,
    verdict: (right: boolean): string => (right ? 'Right.' : 'Not this one.'),
  },
  again: 'Choose again',
} as const;

export type ChoiceUse = 'guess' | 'check';
