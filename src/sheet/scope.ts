import {
  combinedBandwidth,
  type LevelDbm,
  type OutOfRange,
  ohms,
  oscilloscope,
  powerOfPeakToPeak,
  powerToLevel,
  type RelativeUnit,
  singlePoleLossDb,
  voltsPeakToPeak,
} from '#compute';
import { type Found, foundOf, LARGEST_PERCENT, type Part, within } from './found.ts';

/** What the line ends in: a load of its own, nothing but the oscilloscope's high resistance, or the load and a 50 Ω input too. */
export const ENDS = ['load', 'open', 'twoLoads'] as const;
export type ScopeEnd = (typeof ENDS)[number];

/** What the percentage of an oscilloscope's gain is of. */
export const GAIN_OF = ['reading', 'fullScale'] as const;
export type GainOf = (typeof GAIN_OF)[number];

/** An oscilloscope across a load: what is read, and what is stated of everything on the way. */
export interface ScopeUse {
  readonly peakToPeakV: number;
  readonly loadOhm: number;
  readonly frequencyHz: number;
  /** -3 dB bandwidths. */
  readonly scopeHz: number;
  readonly probeHz: number;
  /** Limits of the gain, either way. */
  readonly gainPercent: number;
  readonly gainOf: GainOf;
  /** Height of the whole screen at this setting, in volts. */
  readonly screenV: number;
  readonly end: ScopeEnd;
}

/** Why an oscilloscope gives no power: as the method has it, or because of how it is set up. */
export type ScopeReason =
  | OutOfRange
  | { readonly code: 'twoLoads'; readonly togetherOhm: number }
  | { readonly code: 'offScreen'; readonly screenV: number }
  | { readonly code: 'lowOnScreen'; readonly percent: number };

/** Parts that may be wrong, in the order of the table; the last one the method brings itself. */
export const SCOPE_PARTS = ['gain', 'flatness', 'trace', 'harmonics', 'load', 'probe', 'rollOff'] as const;
export type ScopePart = (typeof SCOPE_PARTS)[number];

/** The input of an oscilloscope that ends a line itself. */
const INPUT_OHM = 50;
/** Divisions of a screen, and how well the eye reads one (common practice). */
const DIVISIONS = 8;
const READ_TO = 0.1;
/** What is judged of the rest, typical figures by common practice: ripple, a third harmonic 40 dB down, the load, the probe. */
const FLATNESS_DB = 0.1;
const HARMONICS_DB = 0.09;
export const LOAD_PERCENT = 1;
const PROBE_DB = 0.05;

/** The club's hidden transmitter on its oscilloscope. Every value is invented. */
export const clubScope = (): ScopeUse => ({
  peakToPeakV: 14.2,
  loadOhm: 49.8,
  frequencyHz: 3.58e6,
  scopeHz: 100e6,
  probeHz: 150e6,
  gainPercent: 3,
  gainOf: 'reading',
  screenV: 16,
  end: 'load',
});

/** Bandwidth of oscilloscope and probe together, in Hz. */
export const bandwidthOf = ({ scopeHz, probeHz }: ScopeUse): number => combinedBandwidth([scopeHz, probeHz]);

/** Share of the bandwidth up to which the method holds. */
export const LARGEST_SHARE_OF_BANDWIDTH = 0.3;

/** The frequency up to which the method holds, in Hz. */
export const edgeHz = (use: ScopeUse): number => LARGEST_SHARE_OF_BANDWIDTH * bandwidthOf(use);

/** The level that volts and ohms alone say. */
export const bareLevel = ({ peakToPeakV, loadOhm }: ScopeUse): LevelDbm =>
  powerToLevel(powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(peakToPeakV), resistance: ohms(loadOhm) }));

/** How much a front end of one pole shows too little there, in dB: the most that the method allows for. */
export const rollOffDb = (use: ScopeUse): number => singlePoleLossDb(use.frequencyHz / bandwidthOf(use));

/** What the gain may be wrong by, in percent of the volts that were read. */
export const gainOfReading = ({ gainPercent, gainOf, screenV, peakToPeakV }: ScopeUse): number =>
  gainOf === 'reading' ? gainPercent : (gainPercent * screenV) / peakToPeakV;

/** How well the eye reads the trace, in volts from peak to peak. */
const readToV = ({ screenV }: ScopeUse): number => (READ_TO * screenV) / DIVISIONS;

/** What is stated of each part but the roll-off. */
export function scopeParts(use: ScopeUse): readonly Part<ScopePart, RelativeUnit | 'voltsPeakToPeak'>[] {
  return [
    within('gain', gainOfReading(use), 'percentOfVolts'),
    within('flatness', FLATNESS_DB, 'dB'),
    within('trace', readToV(use), 'voltsPeakToPeak'),
    within('harmonics', HARMONICS_DB, 'dB'),
    within('load', LOAD_PERCENT, 'percentOfResistance'),
    { id: 'probe', unit: 'dB', statement: { form: 'asymmetric', lower: 0, upper: PROBE_DB } },
  ];
}

/** Why it cannot be summed as it is set up, before any method is asked. */
function setUpWrong(use: ScopeUse): ScopeReason | undefined {
  const { end, loadOhm, peakToPeakV, screenV } = use;
  if (peakToPeakV > screenV) return { code: 'offScreen', screenV };
  const percent = Math.max(gainOfReading(use), (100 * readToV(use)) / peakToPeakV);
  if (percent > LARGEST_PERCENT) return { code: 'lowOnScreen', percent };
  if (end !== 'twoLoads') return undefined;
  return { code: 'twoLoads', togetherOhm: 1 / (1 / loadOhm + 1 / INPUT_OHM) };
}

/** The level in the load with everything that it may be wrong by, or why there is none. @throws RangeError for numbers not above zero. */
export function scopeFound(use: ScopeUse): Found<ScopeReason> {
  const reason = setUpWrong(use);
  if (reason) return { inRange: false, reason };
  return foundOf(
    oscilloscope({
      peakToPeak: voltsPeakToPeak(use.peakToPeakV),
      resistance: ohms(use.loadOhm),
      frequencyHz: use.frequencyHz,
      bandwidthsHz: [use.scopeHz, use.probeHz],
      terminated: use.end !== 'open',
      influences: scopeParts(use),
    }),
  );
}
