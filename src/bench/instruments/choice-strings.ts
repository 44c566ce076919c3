import type { StoreProblem } from '../../store/outcome.ts';

/** Words of choosing an instrument for a link, and of what the browser refuses. */
export const choiceStrings = {
  choose: 'Instrument',
  waiting: 'Your instruments are being looked up …',
  none: 'You keep no instruments yet.',
  go: 'Your instruments',
  take: 'State the link by it',
  takeOf: ({ instrument, link }: { instrument: string; link: string }): string =>
    `State the link “${link}” by “${instrument}”`,
  copied:
    'All that it states is copied into the sheet, with the day of its calibration; a later change of the instrument changes no sheet.',
  taken: (instrument: string): string => `The link is stated by ${instrument}.`,
  unfinished: 'Its form is not finished: something it states is missing or cannot be used.',
  unit: 'It is stated in a unit that this method has no reading in.',
  problems: {
    refused: 'This browser keeps nothing for this site (a private window, or it was told so).',
    full: 'There is no room left in this browser’s storage.',
    newer: 'What is kept here was written by a newer version of this page: load the page anew.',
    changed: 'It was changed in another tab meanwhile.',
    missing: 'It is no longer kept: another tab may have deleted it.',
    damaged: 'What is kept there cannot be read.',
  } satisfies Readonly<Record<StoreProblem, string>>,
} as const;
