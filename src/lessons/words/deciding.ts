import { recalled, trade, type Word } from './word.ts';

/** Promises, limits and verdicts. */
export const decidingWords = {
  'tolerance-limit': {
    term: 'tolerance limit',
    means: 'A limit that a property of a thing is allowed to reach and not to pass.',
    defined: recalled('3.3.4', 'conformity'),
  },
  tolerance: {
    term: 'tolerance',
    means: 'The width between the limits that are allowed for a property of a thing.',
    mind: 'Said of the thing, not of the measurement: not an uncertainty.',
    defined: recalled('3.3.5', 'conformity'),
  },
  'acceptance-limit': {
    term: 'acceptance limit',
    means: 'The limit that the measured value has to keep to for the thing to be accepted.',
    defined: recalled('3.3.8', 'conformity'),
  },
  'guard-band': {
    term: 'guard band',
    means:
      'The distance between a tolerance limit and the acceptance limit that goes with it: room left for the uncertainty.',
    defined: recalled('3.3.11', 'conformity'),
  },
  'decision-rule': {
    term: 'decision rule',
    means:
      'How the uncertainty is taken into account when something is accepted or refused. It is agreed upon before the measurement.',
    defined: recalled('3.3.12', 'conformity'),
  },
  'cant-tell': {
    term: 'can’t tell',
    means:
      'The third verdict: the values that the measurand may reasonably have lie on both sides of a limit.',
    mind: 'A property of the measurement, not of the transmitter. A better measurement may decide.',
    defined: trade(),
  },
} satisfies Record<string, Word>;
