import { dbwToLevel } from '#compute';
import type { UnitName } from '../units.ts';
import { type Convert, levelOf, powerOf, sinePeaks, times } from './convert.ts';

/** One kind of quantity that can be typed. */
export interface Kind {
  /** As in "a level is expected". */
  readonly name: string;
  /** The unit taken where none is typed, and the one that values are given in. */
  readonly base: UnitName;
  /** Accepted units in the order in which the sentence names them, with the way to the base. */
  readonly units: Readonly<Partial<Record<UnitName, Convert>>>;
  /** Units that keep their own number: limits in percent do not become dB here. */
  readonly kept?: readonly UnitName[];
  /** Whether a plus-minus before the number is natural. */
  readonly plusMinus?: true;
  /** A number for the example in the sentence. */
  readonly example: { readonly value: number; readonly decimals: number };
  /** What to say of a unit that is often mistaken for a right one. */
  readonly hints?: Readonly<Partial<Record<UnitName, string>>>;
}

const RATIO = 'dB is a ratio and says nothing without \u201crelative to what\u201d.';
const LEVEL = 'dBm is a level; a gain or a limit is a ratio and has dB.';

const ratio = (name: string, value: number): Kind => ({
  name,
  base: 'dB',
  units: { dB: times(1) },
  example: { value, decimals: 0 },
  hints: { dBm: LEVEL },
});

const plain = (name: string, base: UnitName, units: Kind['units'], example: Kind['example']): Kind => ({
  name,
  base,
  units,
  example,
});

const make = {
  level: (): Kind => ({
    name: 'a level',
    base: 'dBm',
    units: { dBm: times(1), dBW: dbwToLevel, W: levelOf(1), mW: levelOf(1e-3), uW: levelOf(1e-6) },
    example: { value: 23, decimals: 0 },
    hints: { dB: RATIO },
  }),
  power: (): Kind => ({
    name: 'a power',
    base: 'W',
    units: {
      W: times(1),
      mW: times(1e-3),
      uW: times(1e-6),
      kW: times(1e3),
      dBm: powerOf((dbm) => dbm),
      dBW: powerOf(dbwToLevel),
    },
    example: { value: 0.2, decimals: 1 },
    hints: { dB: RATIO },
  }),
  gain: (): Kind => ratio('a gain (negative for a loss)', -20),
  loss: (): Kind => ratio('a loss', 20),
  halfWidthDb: (): Kind => ({
    name: 'a limit',
    base: 'dB',
    units: { dB: times(1) },
    plusMinus: true,
    example: { value: 0.5, decimals: 1 },
    hints: { dBm: LEVEL },
  }),
  halfWidth: (): Kind => ({
    name: 'a limit',
    base: 'dB',
    units: { dB: times(1), percent: times(1) },
    kept: ['percent'],
    plusMinus: true,
    example: { value: 0.5, decimals: 1 },
    hints: { dBm: LEVEL },
  }),
  percent: (): Kind => ({
    name: 'a percentage',
    base: 'percent',
    units: { percent: times(1), ppm: times(1e-4) },
    plusMinus: true,
    example: { value: 3, decimals: 0 },
  }),
  volts: (): Kind => ({
    name: 'a voltage',
    base: 'V',
    units: { V: times(1), mV: times(1e-3) },
    plusMinus: true,
    example: { value: 5, decimals: 0 },
  }),
  /** A reading of a meter for direct voltage, which has no plus-minus. */
  voltsDc: (): Kind =>
    plain('a DC voltage', 'V', { V: times(1), mV: times(1e-3) }, { value: 6.6, decimals: 1 }),
  voltsRms: (): Kind => ({
    name: 'a voltage RMS (of a sine)',
    base: 'Vrms',
    units: {
      Vrms: times(1),
      V: times(1),
      mV: times(1e-3),
      Vp: times(Math.SQRT1_2),
      Vpp: times(1 / sinePeaks()),
    },
    example: { value: 5, decimals: 0 },
  }),
  voltsPeakToPeak: (): Kind => ({
    name: 'a voltage from peak to peak (of a sine)',
    base: 'Vpp',
    units: { Vpp: times(1), V: times(1), mV: times(1e-3), Vp: times(2), Vrms: times(sinePeaks()) },
    example: { value: 20.4, decimals: 1 },
  }),
  /** A limit or an uncertainty in volts from peak to peak. */
  halfWidthVpp: (): Kind => ({
    name: 'a limit from peak to peak',
    base: 'Vpp',
    units: { Vpp: times(1), V: times(1), mV: times(1e-3) },
    plusMinus: true,
    example: { value: 0.2, decimals: 1 },
  }),
  ohms: (): Kind =>
    plain('a resistance', 'ohm', { ohm: times(1), kohm: times(1e3) }, { value: 50, decimals: 0 }),
  /** A resistance that is large. */
  kiloohms: (): Kind =>
    plain('a resistance', 'kohm', { kohm: times(1), ohm: times(1e-3) }, { value: 50, decimals: 0 }),
  amperes: (): Kind => plain('a current', 'A', { A: times(1), mA: times(1e-3) }, { value: 0.2, decimals: 1 }),
  /** A limit or an uncertainty in amperes. */
  halfWidthAmperes: (): Kind => ({
    name: 'a limit',
    base: 'A',
    units: { A: times(1), mA: times(1e-3) },
    plusMinus: true,
    example: { value: 1, decimals: 0 },
  }),
  /** A low frequency, as of a multimeter's AC range. */
  kilohertz: (): Kind =>
    plain('a frequency', 'kHz', { kHz: times(1), MHz: times(1e3) }, { value: 0.05, decimals: 2 }),
  megahertz: (): Kind =>
    plain(
      'a frequency',
      'MHz',
      { MHz: times(1), kHz: times(1e-3), GHz: times(1e3) },
      { value: 3.58, decimals: 2 },
    ),
  kelvin: (): Kind => ({
    name: 'a difference of temperature',
    base: 'K',
    units: { K: times(1), degC: times(1) },
    plusMinus: true,
    example: { value: 5, decimals: 0 },
  }),
  /** How much warmer something is than the room, as read. */
  rise: (): Kind =>
    plain('a rise of temperature', 'K', { K: times(1), degC: times(1) }, { value: 14.2, decimals: 1 }),
  celsius: (): Kind => ({
    name: 'a temperature',
    base: 'degC',
    units: { degC: times(1), K: (kelvin) => kelvin - 273.15 },
    example: { value: 20, decimals: 0 },
  }),
  micrometres: (): Kind => ({
    name: 'a length',
    base: 'um',
    units: { um: times(1), mm: times(1e3) },
    plusMinus: true,
    example: { value: 0.2, decimals: 1 },
  }),
  growth: (): Kind =>
    plain('a growth in each kelvin', 'ppm', { ppm: times(1) }, { value: 11.5, decimals: 1 }),
  millimetres: (): Kind => ({
    name: 'a length',
    base: 'mm',
    units: { mm: times(1), um: times(1e-3), m: times(1e3) },
    plusMinus: true,
    example: { value: 600, decimals: 0 },
  }),
  number: (): Kind => plain('a number without a unit', 'none', { none: times(1) }, { value: 2, decimals: 0 }),
} as const;

/** Names of the kinds of quantity that can be typed. */
export type KindName = keyof typeof make;

/** The kind of that name. */
export const kindOf = (name: KindName): Kind => make[name]();
