/** Something that this site said wrongly, and says rightly now. An entry is added and never taken away. */
export interface Correction {
  /** Its place on the page, small letters and hyphens; never changes. */
  readonly id: string;
  /** Day on which it was mended, year-month-day. */
  readonly mended: string;
  /** The first version that had it, and the first without. */
  readonly since: string;
  readonly until: string;
  /** Pages that it stood on. */
  readonly where: readonly { readonly path: string; readonly title: string }[];
  readonly what: string;
  /** The old value and the new one, in words with their numbers. */
  readonly before: string;
  readonly now: string;
  /** Whom it concerns: which results somebody may have written down. */
  readonly concerns: string;
}

/** All corrections, the newest first. Those mended before the first release had been seen by nobody outside. */
export const corrections: readonly Correction[] = [
  {
    id: 'heat-of-a-part-of-nothing',
    mended: '2026-11-30',
    since: '0.1.0, unpublished',
    until: '0.1.0',
    where: [
      { path: '/learn/decibels/down-the-line/', title: 'What is left at the end of the line?' },
      { path: '/examples/thirty-decibels-forgotten/', title: 'Thirty decibels in the log book' },
    ],
    what: 'The heat in a pad or coax of 0 dB, which is a part that is not there.',
    before:
      'Such a part had the limits of a real one, and so got warm: up to 1.61 µW behind the pad of the example, 169 nW in coax of no length.',
    now: 'It has no limits and no heat. What arrives behind it was right, since no part was ever taken to give a gain.',
    concerns: 'Whoever set a part of that figure to 0 dB. The levels, and what may go in, are as they were.',
  },
  {
    id: 'kelvins-still-to-come',
    mended: '2026-11-30',
    since: '0.1.0, unpublished',
    until: '0.1.0',
    where: [
      {
        path: '/learn/measuring/radio-watts-from-dc-watts/',
        title: 'Can a torch battery measure a transmitter?',
      },
    ],
    what: 'How many kelvins a rise has still to go, where the load was not waited for.',
    before:
      'It was counted as if the rise typed were the one that it ends at: behind 9.5 K after ten minutes, 2.70 K.',
    now: 'It is counted from the rise as it is read, as the fields have it: 3.77 K.',
    concerns:
      'Whoever wrote those kelvins down. The error in decibels, the result and its uncertainty are as they were; “no result yet” begins a hair sooner.',
  },
  {
    id: 'risks-of-a-narrow-kind',
    mended: '2026-11-29',
    since: '0.1.0, unpublished',
    until: '0.1.0',
    where: [{ path: '/reference/formulas/verdicts/', title: 'Formula sheet: verdicts' }],
    what: 'The risks on both sides of a rule, where the things that are sorted hardly differ from one another.',
    before:
      'For a spread of 0.1 dB about the middle of limits of ±1.5 dB, u = 0.35 dB and a guard band of U, the producer’s risk was given as 2.67 %.',
    now: 'It is 2.80 %. All risks are right to 1e-9 now; they were off by up to 0.0013.',
    concerns:
      'Whoever put numbers of their own into that one formula. No lesson, example or verdict of the bench used it.',
  },
  {
    id: 'density-through-a-two-port',
    mended: '2026-11-29',
    since: '0.1.0, unpublished',
    until: '0.1.0',
    where: [
      { path: '/bench/', title: 'Bench' },
      { path: '/reference/formulas/mismatch/', title: 'Formula sheet: mismatch' },
    ],
    what: 'The curve of a mismatch through a pad or cable, between a source and a load that both reflect strongly (0.4 and 0.5 in magnitude through 3 dB).',
    before:
      'At some dozens of places the density rose without bound: each of the 32 phases that it is averaged over has two poles, and they were not smoothed.',
    now: 'The density is a mean over a 64th of the width: right to 5 %, in the outermost tails to a sixth.',
    concerns:
      'The drawn curve alone. Shares, intervals, U and verdicts come from the share below a value, which was and is right to 0.0005 there.',
  },
];
