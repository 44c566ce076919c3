import type { LevelDbm, MethodUnit, Ohms, PowerW, VoltsPeak } from '#compute';
import { METER_UNITS } from './influence-of.ts';

/** The five ways from a socket to a power. */
export const METHODS = ['padsIntoMeter', 'oscilloscope', 'peakDetector', 'inLine', 'dcSubstitution'] as const;
export type MethodKind = (typeof METHODS)[number];

/** Unit of a statement about a link, of whatever method. */
export type LinkUnit = MethodUnit;

/** Units in which a link may be stated, by method; the first is what a new link starts with. */
export const UNITS_OF = {
  padsIntoMeter: METER_UNITS,
  oscilloscope: ['dB', 'percentOfVolts', 'percentOfPower', 'percentOfResistance', 'voltsPeakToPeak'],
  peakDetector: ['dB', 'percentOfVolts', 'percentOfPower', 'percentOfResistance', 'volts'],
  inLine: ['dB', 'percentOfPower', 'percentOfVolts'],
  dcSubstitution: [
    'dB',
    'percentOfPower',
    'percentOfDcVolts',
    'percentOfDcAmperes',
    'dcVolts',
    'dcAmperes',
    'kelvinRf',
    'kelvinDc',
  ],
} as const satisfies Readonly<Record<MethodKind, readonly LinkUnit[]>>;

/** A column of readings. `readings` is the method's main one; the others have one value or several, whose mean counts. */
export const COLUMNS = ['readings', 'reflected', 'riseDc', 'volts', 'amperes'] as const;
export type ColumnName = (typeof COLUMNS)[number];

/**
 * The columns that each method asks for: dBm; V peak to peak; V DC; W forward and reflected; K of rise with RF, K of rise with
 * DC, V and A of DC.
 */
export const COLUMNS_OF = {
  padsIntoMeter: ['readings'],
  oscilloscope: ['readings'],
  peakDetector: ['readings'],
  inLine: ['readings', 'reflected'],
  dcSubstitution: ['readings', 'riseDc', 'volts', 'amperes'],
} as const satisfies Readonly<Record<MethodKind, readonly ColumnName[]>>;

/** One range of an in-line meter, with its limits in percent of full scale. */
export interface MeterRange {
  readonly fullScale: PowerW;
  readonly percentOfFullScale: number;
}

/** What is set up once for all points of a sheet. */
export type MethodSetup =
  | {
      readonly method: 'padsIntoMeter';
      /** What the meter shows of a keyed or modulated signal. */
      readonly shows: ShownPower;
      /** Levels between which the meter is stated to hold. */
      readonly floor?: LevelDbm;
      readonly largest?: LevelDbm;
    }
  | {
      readonly method: 'oscilloscope';
      readonly resistance: Ohms;
      /** -3 dB bandwidths of oscilloscope and probe. */
      readonly bandwidthsHz: readonly number[];
      readonly terminated: boolean;
      /** Peak voltage that the input stands, where stated. */
      readonly largestPeak?: VoltsPeak;
    }
  | {
      readonly method: 'peakDetector';
      readonly resistance: Ohms;
      readonly diodeDropV: number;
      /** True if the drop was taken from a curve of this detector at DC. */
      readonly curveFromDc: boolean;
      /** Reverse voltage that the diode stands, where stated. */
      readonly largestReverse?: VoltsPeak;
    }
  | {
      readonly method: 'inLine';
      readonly shows: ShownPower;
      readonly forward: MeterRange;
      readonly reflected: MeterRange;
    }
  | { readonly method: 'dcSubstitution'; readonly resistance: Ohms };

/** What an instrument shows of a signal whose envelope varies. */
export type ShownPower = 'mean' | 'peakEnvelope';

/** What an instrument of the method shows: heat is the mean, a trace and a detector follow the crest. */
export function shownBy(setup: MethodSetup): ShownPower {
  switch (setup.method) {
    case 'padsIntoMeter':
    case 'inLine':
      return setup.shows;
    case 'oscilloscope':
    case 'peakDetector':
      return 'peakEnvelope';
    case 'dcSubstitution':
      return 'mean';
  }
}

/** The readings of one point, in the method's own units; every column that the method asks for has at least one value. */
export type Columns = Readonly<Record<ColumnName, readonly number[]>>;

/** Columns in which nothing stands: what a method does not ask for stays so. */
export const NO_READINGS: Columns = { readings: [], reflected: [], riseDc: [], volts: [], amperes: [] };

/** What was read at one point and with what: enough for the method's own sums. */
export interface MethodReading {
  readonly setup: MethodSetup;
  readonly columns: Columns;
  /** Needed by the oscilloscope's roll-off alone. */
  readonly frequencyHz?: number;
}
