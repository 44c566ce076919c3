import type { DecidingInterval, NotWhole, Rule, Source, Verdict } from '#compute';

/** Which limits a specification has. */
export type Sides = 'both' | 'upper' | 'lower';

/** Which limits a specification has. An infinite limit is none. */
export function sidesOf({ lower, upper }: { lower?: number; upper?: number }): Sides {
  if (lower === undefined || lower === Number.NEGATIVE_INFINITY) return 'upper';
  return upper === undefined || upper === Number.POSITIVE_INFINITY ? 'lower' : 'both';
}

const VERDICTS: Readonly<Record<Sides, Readonly<Record<Verdict, string>>>> = {
  both: {
    inside: 'inside the specification',
    outside: 'outside the specification',
    'cant-tell': "can't tell: this measurement shows neither inside nor outside",
  },
  upper: {
    inside: 'not shown to exceed the limit, and shown to keep to it as far as the rule asks',
    outside: 'exceeds the limit',
    'cant-tell': "can't tell: not shown to exceed the limit, and not shown to keep to it",
  },
  lower: {
    inside: 'reaches the limit, as far as the rule asks',
    outside: 'falls short of the limit',
    'cant-tell': "can't tell: not shown to fall short of the limit, and not shown to reach it",
  },
};

/** A verdict in words; one-sided limits, as in a licence, have words of their own. */
export const verdictWords = (verdict: Verdict, sides: Sides): string => VERDICTS[sides][verdict];

const LICENCE: Readonly<Record<Verdict, string>> = {
  inside: "not shown to exceed the licence's maximum, and shown to keep to it as far as the rule asks",
  outside: "exceeds the licence's maximum",
  'cant-tell': "can't tell: not shown to exceed the licence's maximum, and not shown to keep to it",
};

/** A verdict on the maximum that a licence allows, in words. */
export const licenceVerdictWords = (verdict: Verdict): string => LICENCE[verdict];

const SHORT: Readonly<Record<Verdict, string>> = {
  inside: 'inside',
  outside: 'outside',
  'cant-tell': "can't tell",
};

/** A verdict in a word or two, for labels. */
export const verdictLabel = (verdict: Verdict): string => SHORT[verdict];

/** Which interval decided. */
export const decidedByWords: Readonly<Record<DecidingInterval, string>> = {
  whole: 'the whole distribution',
  wholeShortest: 'the shortest interval of the whole distribution',
  propagation: 'propagation of uncertainty',
  worstCase: 'the worst case',
};

/** Names of the rules. */
export const ruleWords: Readonly<Record<Rule['kind'], string>> = {
  simple: 'simple acceptance',
  guardBand: 'guard band',
  probability: 'required probability',
};

/** Why there is no distribution of the whole sum. */
export const notWholeWords: Readonly<Record<NotWhole, string>> = {
  'not-a-sum':
    'The whole distribution is not given: this result is not a sum of its parts. A simulation gives it.',
  correlated:
    'The whole distribution is not given: some parts are correlated, and it is made for independent ones. A simulation gives it.',
};

/** Where a statement comes from. */
export const sourceWords: Readonly<Record<Source, string>> = {
  specification: 'data sheet',
  certificate: 'certificate',
  measured: 'measured',
  borrowed: 'borrowed',
  judged: 'judged',
};
