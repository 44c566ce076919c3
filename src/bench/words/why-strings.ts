/** Why the three ways to add up differ: whole sentences, numbers as finished text. */
export const whyStrings = {
  nothing: 'Nothing adds anything here, so that all three are the bare reading.',
  worstWider: (times: string): string =>
    `The worst case is ${times} times as wide as propagation, since it lets every part err to the same side at once, which hardly ever happens.`,
  worstOpen:
    'The worst case is narrower than propagation here, since parts without a limit have no end to add.',
  worstNarrower:
    'The worst case is narrower than propagation here, since propagation takes the sum for a bell, which reaches beyond the limits.',
  worstAlike: 'The worst case is no wider than propagation here, since one part makes up nearly all of it.',
  worstAlikeOpen:
    'The worst case is no wider than propagation here, since parts without a limit have no end to add.',
  worstAlikeFew:
    'The worst case is no wider than propagation here: few parts count, and the bell of their sum reaches as far as their ends.',
  wholeNarrower: ({ by, difference }: { by: string; difference: string }): string =>
    `The whole distribution is ${by} narrower than propagation (${difference}), since the part that counts most ends at its limits and a bell does not.`,
  wholeWider: ({ by, difference }: { by: string; difference: string }): string =>
    `The whole distribution is ${by} wider than propagation (${difference}), since a part known from few readings has long tails.`,
  wholeAlikeOne: 'The whole distribution agrees with propagation: one part makes up nearly all of it.',
  wholeAlike: 'The whole distribution agrees with propagation: several parts together come close to a bell.',
} as const;
