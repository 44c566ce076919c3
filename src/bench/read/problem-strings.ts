import { orList } from '../../text/clean.ts';

/** Sentences on what cannot be used of what was typed. Numbers come in as finished text or as plain counts. */
export const problemStrings = {
  wholeChain: 'The whole chain',
  check: 'A validity check',
  change: 'A change after the first reading',
  agreed: 'What was agreed before the first reading',
  at: (point: string, field: string): string => `${point}: ${field}`,
  limitsSwapped: 'The upper limit must lie above the lower one.',
  aboveLimit: (nominal: string): string =>
    `The nominal level, ${nominal}, lies above this limit: one of the two is wrong, or the nominal level belongs to something else.`,
  belowLimit: (nominal: string): string =>
    `The nominal level, ${nominal}, lies below this limit: one of the two is wrong, or the nominal level belongs to something else.`,
  aboveIsBelow:
    'The limit above the nominal level cannot lie below it: write how far above, without a minus.',
  noWidth: 'Above and below cannot both be nothing: no level would be allowed.',
  noReading: (example: string): string =>
    `Nothing is typed yet: at least one reading is needed, for example ${example}.`,
  wordsAlone: (typed: string, example: string): string =>
    `There is no number in ${typed}: at least one reading is expected, for example ${example}.`,
  tooManyReadings: (most: number): string =>
    `More than ${most} readings: enter their mean and their scatter.`,
  moreLines: (count: number): string => `And ${count} more of this kind.`,
  mixedUnits:
    'Some of these have a unit and some have none: give each its unit, or take them all in the same one.',
  columnsSideBySide: (count: number): string =>
    `${count} columns stand side by side: leave only the one with the readings.`,
  readingsApart: (limit: number): string =>
    `These lie more than ${limit} dB apart and are not readings of one power: a slip, or two units mixed.`,
  reflectedAbove: 'The reflected power must be less than every forward reading: are the two exchanged?',
  noFrequency:
    'An oscilloscope shows less the nearer the frequency comes to its bandwidth: the frequency is needed.',
  floorAboveLargest: 'The largest level must lie above the floor.',
  keyedCarrier:
    'Carrier power is read with the key down and without modulation: choose key down, or another power.',
  levelBeyond: (limit: number): string =>
    `With all losses added the level is beyond ${limit} dBm to either side: a loss has the wrong sign, or is there twice.`,
  tooWide: (limit: number): string =>
    `The limits of all links come to more than ${limit} dB together: nothing can be said with them.`,
  endsSwapped: 'The upper end must not lie below the lower one.',
  doubtTooLarge: 'Limits cannot be more doubtful than they are wide.',
  noComponent:
    'So many percent reach down to nothing at all, where no decibel exists: state it in dB, or smaller.',
  noComponentAt: (point: string): string =>
    `At ${point} this reaches down to nothing at all, where no decibel exists: state it in dB, or smaller.`,
  unitOfMethod: (units: readonly string[]): string =>
    `This method has no such reading: state it in ${orList(units)}.`,
  noTerm:
    'At least one term of the limit is needed: percent of the reading, of full scale, digits or a floor.',
  tableLine: (line: number, problem: string): string => `Line ${line}: ${problem}`,
  tableCells: (text: string): string =>
    `${text} is not three numbers: a frequency or level, what to add there, and its U are expected, for example 3.5; -0.12; 0.10.`,
  tableTwice: (place: string): string => `${place} stands there twice: one line for each is expected.`,
  tableShort:
    'Two lines or more are needed; one correction for all belongs into the loss, with U as its own form.',
  tableNoFrequency: (point: string): string =>
    `Corrections go by frequency, and ${point} has none: type it there, or choose another form.`,
  tableEnds: ({ point, at, from, to }: { point: string; at: string; from: string; to: string }): string =>
    `These corrections reach from ${from} to ${to}, and ${point} lies at ${at}: beyond their ends nobody knows them.`,
  thisPoint: 'this point',
  warmestBelow: 'The warmest must not lie below the coldest.',
  reliabilityTwice: 'This statement brings its own degrees of freedom: leave this empty, or take those out.',
} as const;
