import type { Envelope, PowerDelivery } from '#compute';
import type { SheetEntries } from '../sheet/entries.ts';
import { linkStrings } from './form/link-strings.ts';
import { pointStrings } from './form/point-strings.ts';
import { setupStrings } from './form/setup-strings.ts';
import { recordLabels } from './words/record-labels.ts';
import { resultStrings } from './words/result-strings.ts';

type SheetLabels = Readonly<
  Record<Exclude<keyof SheetEntries, 'links' | 'points' | 'log' | 'checks'>, string>
>;

/** Words of the entry form. */
export const strings = {
  link: linkStrings,
  point: pointStrings,
  setup: setupStrings,
  result: resultStrings,
  untitled: 'A measurement without a title',
  labels: {
    ...setupStrings.labels,
    title: 'Title',
    power: 'Which power',
    delivery: 'Delivered',
    keying: 'Keying',
    plane: 'Where',
    conditions: 'Conditions',
    rule: 'Rule',
    multiplier: 'Guard band, times U',
    required: 'Required, in %',
    scatter: 'Scatter s, in dB',
    repeats: 'From how many',
    ...recordLabels,
  } satisfies SheetLabels,
  help: {
    ...setupStrings.help,
    title: 'Whose transmitter, and what for.',
    power: 'The three differ as soon as the carrier is keyed or modulated.',
    delivery: 'They differ as far as the load or the transmitter reflects.',
    keying: 'How the key was held while you read.',
    plane: 'At which socket, and into what.',
    conditions: 'Frequency, supply, temperature: what somebody else would need to repeat it.',
    multiplier: '1 takes the whole expanded uncertainty off each limit.',
    required: 'How probable conformity must be, at least.',
    scatter: 'Of one reading.',
    repeats: 'How many earlier readings that scatter comes from.',
  },
  powers: {
    carrier: 'carrier power',
    peakEnvelope: 'peak envelope power',
    mean: 'mean power',
  },
  deliveries: {
    intoIdeal: 'into an ideal 50 Ω load',
    delivered: 'to this very load',
    incident: 'the wave towards the load',
    net: 'forward less reflected',
  } satisfies Readonly<Record<PowerDelivery, string>>,
  keyings: {
    keyDown: 'key down',
    steadyCarrier: 'a steady carrier, keyed',
    stringOfDits: 'a string of dits',
    parisWord: 'Morse at the rhythm of PARIS',
    twoEqualTones: 'two equal tones',
  } satisfies Readonly<Record<'keyDown' | Envelope, string>>,
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
    begin: 'Begin your own',
    measured: 'What is measured',
    how: 'How',
    points: 'Specification and readings',
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
  begin: {
    note: 'Either takes the place of what stands here; undo brings it back.',
    by: 'By which method',
    fresh: 'Start an empty sheet',
    demonstration: 'Open the demonstration',
  },
  measuredMore: 'Delivered how, keying, place and conditions',
  ruleFold: (rule: string): string => `Rule that decides: ${rule}`,
  undo: 'Undo',
  redo: 'Redo',
  page: {
    title: 'Bench',
    description:
      'Your own transmitter, your chain of pads and cables, your readings: what power leaves it, how sure that is, and whether it keeps its specification.',
    heading: 'What leaves your transmitter?',
    instruments: 'Your instruments, pads, cables and loads',
    lead: 'Your own reading, chain and specification; how sure the level is, which link decides that, and whether it is good enough.',
    note: 'If somebody sent you this address, the sheet below is theirs. Else the first one is a demonstration: a youth club’s home-built hidden transmitter, every value invented. Change whatever you like, or start your own; nothing leaves this browser unless you pass the address on.',
  },
  form: 'Your measurement',
  formNote:
    'Decimal point or comma, with or without a unit. Figure and result follow as you type, and so does the address: a reload or a sent link opens the same sheet.',
  decimalHelp:
    'For the numbers that this site shows and puts into fields, and for what you take along. What you typed stays as typed, and fields take either sign; addresses, and what is only spoken, keep their point. Kept in this browser; where that is refused, until you leave the page.',
  outOfRangeShort: 'Out of this method’s range',
  staleShort: 'last usable entries',
  address: {
    told: 'The address could not be read in full.',
    tooLong:
      'This sheet is too long for an address: a link would lose part of it. Save it as a file, further down, to pass it on.',
  },
  problems: (count: number): string =>
    count === 1 ? 'One entry cannot be used yet' : `${count} entries cannot be used yet`,
  stale: (title: string): string =>
    `Figure and result still show “${title}” with the last entries that could all be used.`,
} as const;
