import type {
  Basis,
  CalibratedFrom,
  CorrectedBy,
  InstrumentEntries,
  InstrumentKind,
  InstrumentUnit,
  SheetForm,
  TermReading,
} from '../../instruments/instrument.ts';
import { quoted } from '../../text/clean.ts';
import { linkStrings } from '../form/link-strings.ts';

const { labels, forms, percentsOf, units } = linkStrings;

/** Words of one instrument in its form. Numbers come in as finished text. */
export const instrumentStrings = {
  unnamed: 'Without a name',
  driftOf: (label: string): string => `${label}: drift since its calibration`,
  labels: {
    ...labels,
    kind: 'What it is',
    label: 'Name',
    serial: 'Number or mark',
    loss: 'Nominal loss in dB',
    resistance: 'Measured resistance, in Ω',
    rated: 'Rated power',
    basis: 'What counts',
    form: 'Limits stated as',
    amount: 'Limits ±',
    reads: 'Terms are of',
    source: 'Where it comes from',
    from: 'Which, and by whom',
    by: 'Corrections',
    correction: 'Correction',
    uncertainty: 'U',
    drift: 'Drift in a year, within ±',
    calibrated: 'Day',
    interval: 'Again after, in months',
    notes: 'Notes',
  } satisfies Readonly<Record<keyof InstrumentEntries, string>>,
  help: {
    label: 'Your own: sheets call it by that.',
    serial: 'Tells two of a kind apart; no sheet takes it along.',
    loss: 'What stands on it; a gain is a negative loss.',
    resistance: 'At DC, with the leads taken off.',
    rated: 'In W or mW, for as long as you like; empty if nothing is stated.',
    unit: 'That of what is stated below.',
    from: {
      certificate: 'Laboratory and number of the certificate.',
      measured: 'How, and with what.',
      borrowed: 'Who lent what, and what its own statement was.',
    } satisfies Readonly<Record<CalibratedFrom, string>>,
    correction: 'Added to a reading. Of a pad or cable: true loss less nominal loss.',
    noCorrection: 'Leave it 0: correct readings of this unit before you type them.',
    table: {
      frequency: 'A line for each: frequency in MHz, correction, U. Type or paste it.',
      level: 'A line for each: level in dBm, correction, U. Type or paste it.',
    },
    factor: 'The k that U was made with.',
    freedom: 'Leave it empty if none are given.',
    drift: 'From the data sheet, or from its last two calibrations; empty for none.',
    calibrated: {
      dataSheet: 'Of the last check against the data sheet, as 2026-05-09; may stay empty.',
      calibration: 'Of the calibration, as 2026-05-09.',
    } satisfies Readonly<Record<Basis, string>>,
    interval: 'Sheets warn when it is older than that; empty for never.',
  },
  kinds: {
    meter: 'instrument',
    pad: 'pad',
    cable: 'cable or connector',
    amplifier: 'amplifier',
    load: 'load',
    other: 'other',
  } satisfies Readonly<Record<InstrumentKind, string>>,
  bases: {
    dataSheet: 'Limits of its data sheet',
    calibration: 'A calibration: correction, U and drift since',
  } satisfies Readonly<Record<Basis, string>>,
  dayOf: { dataSheet: 'Last checked on', calibration: 'Calibrated on' } satisfies Readonly<
    Record<Basis, string>
  >,
  states: (line: string): string => `It states: ${line}.`,
  missing: (fields: readonly string[]): string =>
    `Before a sheet can use it, something is to be done: ${fields.join(', ')}.`,
  basisNote:
    'One of the two, never both: a calibration says what this very piece does, a data sheet what every piece of its kind is allowed to do.',
  forms: {
    rectangular: forms.rectangular,
    asymmetric: forms.asymmetric,
    terms: forms.terms,
  } satisfies Readonly<Record<SheetForm, string>>,
  reads: {
    power: 'a power, in W',
    voltsPeakToPeak: 'volts from peak to peak',
    dcVolts: 'volts DC',
  } satisfies Readonly<Record<TermReading, string>>,
  loss: (amount: string): string => `loss ${amount}`,
  gain: (amount: string): string => `gain ${amount}`,
  corrected: (amount: string): string => `correction ${amount}`,
  driftLine: (amount: string): string => `drift ${amount} in a year`,
  sources: {
    dataSheet: 'data sheet',
    certificate: 'certificate of a laboratory',
    measured: 'measured by yourself',
    borrowed: 'compared with a lent reference',
  } satisfies Readonly<Record<CalibratedFrom | 'dataSheet', string>>,
  by: {
    nothing: 'one for all',
    frequency: 'by frequency',
    level: 'by level of the reading',
  } satisfies Readonly<Record<CorrectedBy, string>>,
  units: {
    dB: units.dB,
    percentOfPower: units.percentOfPower,
    percentOfVolts: units.percentOfVolts,
    voltsPeakToPeak: units.voltsPeakToPeak,
    dcVolts: units.dcVolts,
    percentOfDcVolts: units.percentOfDcVolts,
    dcAmperes: units.dcAmperes,
    percentOfDcAmperes: units.percentOfDcAmperes,
    percentOfResistance: units.percentOfResistance,
    kelvin: 'K',
  } satisfies Readonly<Record<InstrumentUnit, string>>,
  percentsOf,
  problems: {
    noName: 'A name is needed: sheets call it by that.',
    noDay: 'A calibration without a day cannot grow old: the day is expected as 2026-05-09.',
    noStart: 'Without a day nobody knows when these months began: the day is expected as 2026-05-09.',
    badDay: (text: string): string => `${quoted(text)} is no day: it is expected as 2026-05-09.`,
    badMonths: (text: string): string =>
      `${quoted(text)} is no number of months: a whole one from 1 to 999 is expected, for example 12.`,
    tableUnit: 'A table of corrections is added in decibels: state it in dB, % of power or % of volts.',
    notAdded:
      'What is stated of readings in this unit cannot be added to a chain: correct the readings before you type them, and leave 0 here.',
    noRest: 'So many percent would leave nothing: more than −100 % is expected.',
  },
} as const;
