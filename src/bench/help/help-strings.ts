import type { Verdict } from '#compute';

/** Words of what would help. Numbers come in as finished text. */
export const helpStrings = {
  outOfRange: 'Nothing here helps as long as the method itself is out of range.',
  exact: 'Nothing in this sheet is uncertain: there is nothing to improve.',
  caption: 'What improving one link alone would leave',
  region: 'What would help, scrolls sideways',
  link: 'Link',
  share: 'Share now',
  perfect: 'If it were perfect',
  halved: 'Half as wrong',
  replaced: 'Your better part',
  asItIs: 'As it is',
  waiting: '…',
  noBetter: '',
  unusable: 'amount cannot be used',
  betterHelp: (fold: string): string =>
    `Each link has a field for a better part, under “${fold}”: what you type there is reckoned with here.`,
  progress: ({ done, all }: { done: string; all: string }): string => `${done} of ${all} links computed.`,
  computed: 'All links computed.',
  together: 'together, by a shared cause',
  verdicts: { inside: 'inside', outside: 'outside', 'cant-tell': 'can’t tell' } satisfies Readonly<
    Record<Verdict, string>
  >,
  probable: (probability: string): string => `conforms: ${probability}`,
  cheapestHeading: 'The least change that would decide',
  searching: 'Being searched for …',
  cheapest: {
    decided: (verdict: string): string =>
      `The verdict is there already: ${verdict}. No change is needed for it.`,
    none: 'No single link would decide, not even if it were perfect: several have to become better, or the level lies too near to a limit.',
    change: ({ link, factor, verdict }: { link: string; factor: string; verdict: string }): string =>
      `${link}: brought down to ${factor} of what it may be wrong by now, the verdict would be “${verdict}”, the reading staying where it is. Every other link would have to be improved more.`,
    perfect: ({ link, verdict }: { link: string; verdict: string }): string =>
      `${link}: only all but perfect it would give the verdict “${verdict}”, and no other link does it.`,
    stated: (statement: string): string => `That is ${statement}.`,
  },
  readingsHeading: 'More readings',
  readings: {
    unknown:
      'Nothing is known of the scatter of your readings. Take a few more: without a scatter nobody can say whether they pay.',
    every: 'Nothing but their scatter is uncertain: every further reading pays.',
    enough: ({ count, scatter }: { count: string; scatter: string }): string =>
      `${count} with a scatter of ${scatter} each: more of them would narrow the band by less than a twentieth.`,
    more: ({ count, scatter, pay }: { count: string; scatter: string; pay: string }): string =>
      `${count} with a scatter of ${scatter} each: up to ${pay} in all still pay; beyond that all further ones together narrow the band by less than a twentieth.`,
    one: '1 reading',
    several: (count: string): string => `${count} readings`,
  },
  targetHeading: 'How sure it would have to be',
  target: {
    now: (expanded: string): string => `U is ${expanded} now.`,
    verdict: ({ expanded, verdict }: { expanded: string; verdict: string }): string =>
      `At this level U must be ${expanded} or better for the verdict “${verdict}”.`,
    onLimit: 'The level lies on a limit: no uncertainty is small enough to decide.',
    always: 'Simple acceptance decides whatever U is, and so asks for nothing.',
    specification: (expanded: string): string =>
      `Wherever the level lies, these limits ask for U of ${expanded}: a third of what they allow to either side (JCGM 106, 7.6.3, with a capability index of 3).`,
  },
} as const;
