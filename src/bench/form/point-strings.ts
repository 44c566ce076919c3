import type { PointEntries, SpecificationForm } from '../../sheet/entries.ts';
import type { ColumnName, MethodKind } from '../../sheet/method.ts';

/** Label and help of a column of readings. */
interface ColumnWords {
  readonly label: string;
  readonly help: string;
}

const COLUMN = 'One number, or a column typed or pasted.';

/** Words of a measurement point. Numbers come in as finished text. */
export const pointStrings = {
  unnamed: (position: number): string => `Point ${position}`,
  fieldOf: (point: string, field: string): string => `${point}: ${field}`,
  choose: 'Points',
  chooseHelp: 'Specification and readings below are those of the point that is pressed.',
  faulty: 'has entries that cannot be used yet',
  add: 'Add a point',
  addHelp: 'Another frequency or setting of the same transmitter, by the same method and links.',
  most: (most: number): string => `${most} points are as many as fit here.`,
  remove: (name: string): string => `Remove “${name}”`,
  specificationOf: 'What is demanded',
  readingsOf: 'What was read',
  labels: {
    id: '',
    label: 'Name of this point',
    frequency: 'Frequency',
    specification: 'How it is stated',
    nominal: 'Nominal level',
    tolerance: 'Plus or minus, in dB',
    above: 'Up to so much above, in dB',
    below: 'Down to so much below, in dB',
    lowest: 'Lower limit',
    highest: 'Upper limit',
    readings: 'Readings',
    reflected: 'Reflected power',
    riseDc: 'Rise with DC',
    volts: 'DC voltage',
    amperes: 'DC current',
  } satisfies Readonly<Record<keyof PointEntries, string>>,
  help: {
    label: 'In your own words, as a table is to show it.',
    frequency: 'In MHz or kHz; leave it empty if it does not matter.',
    nominal: 'With its unit, dBm, W or mW: a bare number counts as dBm.',
    tolerance: 'How far to either side it may lie.',
    above: 'For “+1 dB, −2 dB” this is 1.',
    below: 'For “+1 dB, −2 dB” this is 2.',
    lowest: 'In dBm, W or mW.',
    highest: 'In dBm, W or mW.',
  },
  nominalBetween: 'Where you know it: what the level should be, between the two limits.',
  /** An oscilloscope's roll-off hangs on the frequency. */
  frequencyNeeded: 'In MHz or kHz: how much the trace shows hangs on it.',
  specifications: {
    around: 'nominal ± decibels',
    uneven: 'nominal, + and − decibels apart',
    between: 'a lower and an upper limit',
    atMost: 'an upper limit only',
    atLeast: 'a lower limit only',
    licence: 'the maximum of a licence',
  } satisfies Readonly<Record<SpecificationForm, string>>,
  specificationHelp: {
    around: 'A level, and how far to either side it may lie.',
    uneven: 'A level, and how far up and how far down it may lie.',
    between: 'It must lie between the two.',
    atMost: 'It must not lie above.',
    atLeast: 'It must not lie below.',
    licence: 'Nobody has to prove that you keep to it: the answer says whether it is shown to be exceeded.',
  } satisfies Readonly<Record<SpecificationForm, string>>,
  columns: {
    padsIntoMeter: {
      readings: { label: 'Readings, in dBm', help: `What the meter showed, in dBm, W or mW. ${COLUMN}` },
    },
    oscilloscope: {
      readings: {
        label: 'Readings, in V from peak to peak',
        help: `From trough to crest across the load; add Vp or Vrms if you read that. ${COLUMN}`,
      },
    },
    peakDetector: {
      readings: { label: 'Readings, in V DC', help: `What the voltmeter showed. ${COLUMN}` },
    },
    inLine: {
      readings: { label: 'Forward power, in W', help: `What the meter showed forward. ${COLUMN}` },
      reflected: {
        label: 'Reflected power, in W',
        help: `What it showed backward; 0 is a reading. ${COLUMN}`,
      },
    },
    dcSubstitution: {
      readings: { label: 'Rise with RF, in K', help: `How much warmer the load got with RF. ${COLUMN}` },
      riseDc: { label: 'Rise with DC, in K', help: `How much warmer with DC. ${COLUMN}` },
      volts: { label: 'DC voltage, in V', help: `Across the load, while DC heats it. ${COLUMN}` },
      amperes: { label: 'DC current, in A', help: `Through the load, while DC heats it. ${COLUMN}` },
    },
  } as const satisfies Readonly<Record<MethodKind, Readonly<Partial<Record<ColumnName, ColumnWords>>>>>,
  earlier: 'Scatter known from earlier',
  earlierHelp: 'Counts where there is one reading only: how far readings of this kind have scattered before.',
  readAs: (level: string): string => `= ${level}`,
  limitsAre: ({ lower, upper, powers }: { lower: string; upper: string; powers: string }): string =>
    `${lower} to ${upper}: ${powers}`,
  counted: ({ count, mean, scatter }: { count: string; mean: string; scatter: string }): string =>
    `${count} readings, mean ${mean}, scatter s = ${scatter}`,
  lock: {
    open: 'The first reading that you enter locks specification and rule: agree on them before you look.',
    rule: (time: string): string =>
      `The rule is locked since the first reading, ${time}; what is demanded at this point will be by its own first reading.`,
    since: (time: string): string =>
      `Specification and rule are locked since the first reading, ${time}. A change is still possible, and stays in the record.`,
    change: ({ time, from, to }: { time: string; from: string; to: string }): string =>
      `Changed ${time}: “${from}” became “${to}”.`,
    reason: 'Reason for this change',
    reasonHelp: 'Goes into the record beside the change; without one the record says that none was given.',
  },
} as const;
