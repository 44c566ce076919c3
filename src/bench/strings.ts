import type { EntryForm, LinkEntries, SheetEntries } from '../sheet/entries.ts';
import { linkStrings } from './link-strings.ts';
import { resultStrings } from './result-strings.ts';

type SheetLabels = Readonly<Record<Exclude<keyof SheetEntries, 'links'>, string>>;

/** Words of the entry form. */
export const strings = {
  link: linkStrings,
  result: resultStrings,
  untitled: 'A measurement without a title',
  wholeChain: 'The whole chain',
  labels: {
    title: 'Title',
    power: 'Which power',
    plane: 'Where',
    conditions: 'Conditions',
    specification: 'How it is stated',
    nominal: 'Nominal level',
    tolerance: 'Plus or minus, in dB',
    lowest: 'Lower limit',
    highest: 'Upper limit',
    rule: 'Rule',
    multiplier: 'Guard band, times U',
    required: 'Required, in %',
    readings: 'Readings',
    scatter: 'Scatter s, in dB',
    repeats: 'From how many',
    damage: 'Input stands at most',
  } satisfies SheetLabels,
  help: {
    title: 'Whose transmitter, and what for.',
    power: 'The three differ as soon as the carrier is keyed or modulated.',
    plane: 'At which socket, and into what.',
    conditions: 'Frequency, keying, supply, temperature: what somebody else would need to repeat it.',
    specification: 'Leave out the side that nobody has set a limit to.',
    nominal: 'In dBm, W or mW.',
    tolerance: 'How far to either side it may lie.',
    lowest: 'In dBm, W or mW.',
    highest: 'In dBm, W or mW.',
    multiplier: '1 takes the whole expanded uncertainty off each limit.',
    readings: 'What the meter showed, in dBm, W or mW: one number, or a column typed or pasted.',
    required: 'How probable conformity must be, at least.',
    scatter: 'Of one reading, known from earlier; it counts if there is one reading only.',
    repeats: 'How many earlier readings that scatter comes from.',
    damage: 'In dBm, W or mW, from the meter’s own manual; leave it empty if you do not know it.',
  },
  powers: {
    carrier: 'carrier power',
    peakEnvelope: 'peak envelope power',
    mean: 'mean power',
  },
  specifications: {
    around: 'nominal ± decibels',
    between: 'a lower and an upper limit',
    atMost: 'an upper limit only',
    atLeast: 'a lower limit only',
  },
  rules: {
    simple: 'simple acceptance',
    guardBand: 'guard band',
    probability: 'required probability',
  },
  ruleWords: {
    simple:
      'The measured level itself decides: inside the limits is inside, however wide the band. There is no “can’t tell”, and near a limit the answer is wrong up to every second time.',
    guardBand:
      'The limits are drawn in by the guard band: only what is inside these acceptance limits counts as inside, only what is as far outside counts as outside, and between them this measurement cannot tell.',
    probability:
      'Inside if it is at least this probable that the level conforms; outside if it is as probable that it does not; between the two this measurement cannot tell.',
  },
  sections: {
    measured: 'What is measured',
    specification: 'Specification',
    readings: 'Readings and meter',
    links: 'Links',
  },
  links: {
    title: 'Links',
    intro:
      'Every comparison, instrument, pad and cable between the definition of the watt and the transmitter’s socket, in this order. Loss is what a link takes away and the sum adds back: 0 for a comparison, negative for an amplifier. What it may be wrong by stands on its data sheet or certificate, or is your own judgement.',
    none: 'No links yet: the reading then counts as exact, which no reading is.',
    most: (most: number): string => `${most} links are as many as fit here.`,
    add: 'Add a link',
    addKind: 'Kind of the new link',
  },
  bringBack: {
    link: (label: string): string => `Bring back “${label}”`,
    sheet: 'Bring back the sheet before this one',
  },
  demonstration: 'Back to the demonstration',
  page: {
    title: 'Bench',
    description:
      'Your own transmitter, your chain of pads and cables, your readings: what power leaves it, how sure that is, and whether it keeps its specification.',
    heading: 'What leaves your transmitter?',
    lead: 'Your own reading, chain and specification; how sure the level is, which link decides that, and whether it is good enough.',
    note: 'The sheet opens with a demonstration: a youth club’s home-built hidden transmitter, every value invented. Change whatever you like; nothing leaves this browser unless you pass the address on.',
  },
  form: 'Your measurement',
  formNote:
    'Decimal point or comma, with or without a unit. Figure and result follow as you type, and so does the address: a reload or a sent link opens the same sheet.',
  staleShort: 'last usable entries',
  address: {
    told: 'The address could not be read in full.',
    tooLong:
      'This sheet is too long for an address: a reload or a link would lose it. Copy the result as text to keep it.',
  },
  problems: (count: number): string =>
    count === 1 ? 'One entry cannot be used yet' : `${count} entries cannot be used yet`,
  stale: (title: string): string =>
    `Figure and result still show “${title}” with the last entries that could all be used.`,
  limitsSwapped: 'The upper limit must lie above the lower one.',
  noReading: 'Nothing is typed yet: at least one reading is needed, for example 7.0 dBm.',
  tooManyReadings: (most: number): string =>
    `More than ${most} readings: enter their mean and their scatter.`,
  moreLines: (count: number): string => `And ${count} more of this kind.`,
  readingsApart: (limit: number): string =>
    `These lie more than ${limit} dB apart and are not readings of one power: a slip, or two units mixed.`,
  levelBeyond: (limit: number): string =>
    `With all losses added the level is beyond ${limit} dBm to either side: a loss has the wrong sign, or is there twice.`,
  tooWide: (limit: number): string =>
    `The limits of all links come to more than ${limit} dB together: nothing can be said with them.`,
  readAs: (level: string): string => `= ${level}`,
  meanOf: (count: number, mean: string): string => `${count} readings, mean ${mean}`,
} as const;

export type LinkLabels = Readonly<Record<keyof LinkEntries, string>>;
export type FormWords = Readonly<Record<EntryForm, string>>;
