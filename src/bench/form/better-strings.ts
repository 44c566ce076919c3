/** What a better part is stated as where that is not the amount of the link's own statement. */
export const betterStrings = {
  asymmetric:
    'Half the distance between its two ends, which keep their proportion: the bench then says what that would help.',
  decibels: 'As limits ± in dB: the bench then says what that would help.',
} as const;
