import type { CalibrationFault } from './calibration.ts';
import { IDS } from './inputs.ts';

/** Words of the result. Numbers come in as finished text. */
export const resultStrings = {
  heading: 'The correction',
  headingPart: 'The attenuation',
  unnamed: 'Your instrument',
  unnamedPart: 'The part',
  correctionWords: ({ k, rounds, at }: { k: string; rounds: string; at: string }): string =>
    `to be added to what it shows, from ${rounds} at ${at}; U with k\u00a0=\u00a0${k}`,
  lineWords: ({ places, from, to, k }: { places: string; from: string; to: string; k: string }): string =>
    `at the middle of a line through ${places}, from ${from} to ${to}; U with k\u00a0=\u00a0${k}`,
  lineAt: (correction: string, at: string): string => `${correction} at ${at}`,
  lenderShare: (share: string): string => `${share} from the lender`,
  lenderWords: ({ lender, whole }: { lender: string; whole: string }): string =>
    `of the squared uncertainty: ${lender} came with it, ${whole} goes home with you. More rounds do not make it better than what was lent`,
  laterWords: ({ shown, k }: { shown: string; k: string }): string =>
    `where it shows ${shown}: with the correction’s uncertainty and the reading’s own scatter, step, temperature and mismatch; U with k\u00a0=\u00a0${k}`,
  rounds: (count: number): string => (count === 1 ? 'one round' : `${count} rounds`),
  places: (count: number): string => `${count} places`,
  scatter: ({ s, degrees }: { s: string; degrees: string }): string =>
    `Single rounds scatter by ${s} (standard deviation, ${degrees}).`,
  degrees: (count: number): string => (count === 1 ? 'one degree of freedom' : `${count} degrees of freedom`),
  drift: (drift: string): string =>
    `Within a round the reference moved by at most ${drift} to either side of its mean. What is straight in time cancels; the same again is kept as limits for what is not.`,
  noDrift: 'The reference read the same before and after every round.',
  lineScatters: (birge: string): string =>
    `The places scatter about the line ${birge} times as much as they say (Birge ratio): the scatter has taken their place, and the line is no better than that. Perhaps it is not straight.`,
  lineFits: (birge: string): string =>
    `The places lie about the line within what they say of themselves (Birge ratio ${birge}).`,
  twoPlaces: 'Two places always make a line: whether it is straight between them, they cannot tell.',
  farAway: ({ shown, at, apart }: { shown: string; at: string; apart: string }): string =>
    `The later reading, ${shown}, is ${apart} away from the calibrated ${at}: say how straight the scale is, or calibrate there too.`,
  agreement: {
    heading: 'Does it keep its own data sheet?',
    compatible: ({ at, ratio, difference, expanded }: AgreementWords): string =>
      `At ${at} it reads ${difference} against the reference; its claim and the reference together allow ${expanded} (U, k\u00a0=\u00a02). Normalised error ${ratio}: the two agree, and the data sheet is not contradicted.`,
    not: ({ at, ratio, difference, expanded }: AgreementWords): string =>
      `At ${at} it reads ${difference} against the reference; its claim and the reference together allow ${expanded} (U, k\u00a0=\u00a02). Normalised error ${ratio}, beyond 1: one of the two is not what it claims.`,
    farthest: 'Where it is farthest off:',
    note: 'For this its limits count as even: U is twice the limit over the root of 3.',
  },
  partWords: ({ k }: { k: string }): string => `attenuation; U with k\u00a0=\u00a0${k}`,
  largest: (label: string, share: string): string => `${share}: ${label}`,
  largestWords: 'the largest share of the squared uncertainty: that is what to improve first',
  nothing: 'No uncertainty',
  nothingWords: 'nothing was said that could be wrong: that is never so',
  heat: (heat: string): string => `The direct voltage leaves ${heat} of heat in the part`,
  heatWithin: (rated: string): string => `rated ${rated}: it stands that.`,
  heatBeyond: (rated: string): string => `rated ${rated} only: it is too much. Lower the voltage.`,
  heatUnrated: 'enter its rating to have it compared.',
  dcHolds: 'Measured at DC. At HF a good pad is the same; at VHF that is an assumption.',
  swapHolds: 'Holds at the frequency of the source, between these connections.',
  table: {
    caption: 'Place by place',
    at: 'At',
    rounds: 'Rounds',
    correction: 'Correction',
    expanded: 'U',
    line: 'By the line',
    lineExpanded: 'U',
    ratio: 'Normalised error',
  },
  budget: {
    caption: 'What makes it uncertain',
    part: 'What',
    uncertainty: 'u',
    share: 'Share',
  },
  faults: {
    noScatter:
      'One round says nothing of its scatter: take more rounds, or say what scatter is known from earlier.',
    nothingOwn:
      'Readings that all agree to the last digit need the step of the display: without scatter, drift or step a line cannot weigh its places.',
    sums: 'The sums refuse these values:',
  } satisfies Readonly<Record<CalibrationFault | 'sums', string>>,
  cannot: {
    heading: 'What this cannot do',
    alternation: [
      'It cannot make your instrument better than what was lent: the lender’s uncertainty comes along whole, however many rounds you take.',
      'It cannot see whether the lender’s statement is true. A sticker is no certificate; two meters of one design from one workshop can agree and both be wrong.',
      'It holds for these levels and frequencies, these connectors, this temperature and the settings you had. Between the places it is read from a line; beyond them no correction is given.',
      'It says nothing of next year: note the date, and compare again after the interval you trust.',
      'It adjusts nothing. Whoever turns a screw afterwards has an instrument without a calibration.',
      'It takes a drift that is straight in time out of the comparison. A source that jumps is no source for this.',
      'Your meter and the lent one now share a cause: they are no longer two independent witnesses.',
    ],
    dc: [
      'Direct current does not see what frequency does: stray capacitance, leads, connectors, a cable’s loss that grows with frequency.',
      'It takes the part as matched, the same at both ends. A damaged pad may not be.',
      'One meter on one range cancels its gain error, not its last digit, nor a range that bends.',
    ],
    swap: [
      'The receiver need not be calibrated, but its scale must be straight over the whole step, and nothing in it may limit or change its gain by itself.',
      'Both mismatches stay: with unknown phases no averaging takes them away. A good pad to either side of the place makes them small.',
      'It holds at the frequency of the source. A cable’s loss is another one elsewhere.',
    ],
  },
  figure: {
    name: 'What is left after the correction',
    up: 'dB: left over',
    alongRounds: 'round',
    alongLevel: 'your own shows, dBm',
    alongFrequency: 'frequency, MHz',
    roundsWords:
      'Circles: the correction of each round less their mean, with the drift within the round as a bar. Strip: what the mean is uncertain by from scatter alone (k\u00a0=\u00a02).',
    lineWords:
      'Circles: the correction of each place less the line, with U of what is the place’s own as a bar. Dots: single rounds. Strip: what the line is uncertain by (k\u00a0=\u00a02); the lender’s share comes on top.',
  },
  inputs: {
    [IDS.lender]: 'Lender’s statement',
    [IDS.lenderDrift]: 'Lender’s drift since',
    'transfer scatter': 'Scatter of the rounds',
    'transfer drift': 'Drift within the rounds',
    'line of corrections': 'The line (scatter, drift and step of the places)',
    [IDS.resolution]: 'Display step',
    [IDS.temperature]: 'Temperature',
    [IDS.mismatch]: 'Mismatch',
    [IDS.other]: 'Anything else',
    [IDS.meterIn]: 'Meter at the input',
    [IDS.meterOut]: 'Meter across the load',
    [IDS.stepIn]: 'Last digit at the input',
    [IDS.stepOut]: 'Last digit across the load',
    [IDS.load]: 'Load’s tolerance',
    [IDS.scatterWithout]: 'Scatter without the part',
    [IDS.scatterWith]: 'Scatter with the part',
    [IDS.straightness]: 'Receiver’s straightness',
    [IDS.mismatchWithout]: 'Mismatch without the part',
    [IDS.mismatchIn]: 'Mismatch at its input',
    [IDS.mismatchOut]: 'Mismatch at its output',
    [IDS.mismatchThrough]: 'Mismatch through the part',
  } as Readonly<Record<string, string>>,
} as const;

interface AgreementWords {
  readonly at: string;
  readonly ratio: string;
  readonly difference: string;
  readonly expanded: string;
}
