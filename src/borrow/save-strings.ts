import type { InstrumentKind } from '../instruments/instrument.ts';
import type { StoreProblem } from '../store/outcome.ts';

/** Words of saving a calibration to an instrument. */
export const saveStrings = {
  heading: 'Save it to an instrument',
  help: 'With date and the lender’s statement; a sheet on the bench can then use the instrument. It takes the place of the calibration or data sheet that counted before.',
  open: 'Choose an instrument',
  which: 'Instrument',
  fresh: 'a new one',
  kind: 'What it is',
  kinds: {
    meter: 'a meter',
    pad: 'a pad',
    cable: 'a cable',
    amplifier: 'an amplifier',
    load: 'a load',
    other: 'something else',
  } satisfies Readonly<Record<InstrumentKind, string>>,
  name: 'Its name',
  nameNeeded: 'A name is expected, so that you find it again, for example “Power meter no. 3”.',
  save: 'Save the calibration',
  saved: (name: string): string => `Saved: “${name}” now has this calibration.`,
  list: 'See your instruments',
  loading: 'Looking at your instruments …',
  notUsable: 'Some fields above cannot be used yet: mend them first, so that what is saved is what you see.',
  noDate: 'There is no date: without one nobody can tell how old the calibration is.',
  unnamed: 'without a name',
  lender: 'a lent instrument',
  byCertificate: (amount: string, k: string): string =>
    `U = ${amount} (k\u00a0=\u00a0${k}) by its certificate`,
  byDataSheet: (amount: string): string => `limits ${amount} by its data sheet`,
  measured: {
    dc: 'at DC with a multimeter',
    swap: 'swapped in and out before a receiver',
  },
  problems: {
    refused:
      'This browser keeps nothing here, perhaps because of its settings. Copy the numbers, or the address of this page.',
    full: 'There is no room left in this browser. Remove something from your lists, or copy the numbers.',
    newer: 'This instrument was kept by a newer version of this site: reload the page first.',
    changed: 'This instrument was changed meanwhile, in another tab perhaps. Choose it again.',
    missing: 'This instrument is not there any more. Choose another one.',
    damaged: 'This instrument cannot be read. Choose another one, or make a new one.',
  } satisfies Readonly<Record<StoreProblem, string>>,
} as const;
