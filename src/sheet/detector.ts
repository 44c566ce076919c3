import {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  gainDb,
  type LevelDbm,
  type OutOfRange,
  ohms,
  peakDetector,
  powerOfPeak,
  powerToLevel,
  type RelativeUnit,
  voltsPeak,
} from '#compute';
import { type Found, foundOf, LARGEST_PERCENT, type Part, within } from './found.ts';

/** Where the diode's drop comes from: one figure for all levels, or a curve of this detector taken with DC. */
export const DROPS = ['fixed', 'curve'] as const;
export type DropFrom = (typeof DROPS)[number];

/** A peak detector across a load: what its voltmeter shows, and what is stated of everything on the way. */
export interface DetectorUse {
  readonly detectedV: number;
  /** What the diode takes away, added back, and how well it is known. */
  readonly dropV: number;
  readonly dropKnownV: number;
  readonly dropFrom: DropFrom;
  readonly loadOhm: number;
  /** Level of the harmonics together against the carrier, at most. */
  readonly harmonicsDbc: number;
}

/** Why a detector gives no power: as the method has it, or because too little is known of its volts. */
export type DetectorReason =
  | Extract<OutOfRange, { readonly code: 'belowDetector' }>
  | { readonly code: 'vagueVolts'; readonly percent: number };

/** Parts that may be wrong, in the order of the table. */
export const DETECTOR_PARTS = ['voltmeter', 'drop', 'harmonics', 'load'] as const;
export type DetectorPart = (typeof DETECTOR_PARTS)[number];

/** The power below which a diode leaves the peak law. */
export const LEAST_W = 0.05;
/** An ordinary multimeter on DC, by its data sheet: percent of the reading, and steps of its last digit. Invented. */
const METER = { percent: 0.5, digits: 2, stepV: 0.01 } as const;
const LOAD_PERCENT = 1;

/** The club's home-made detector on its hidden transmitter. Every value is invented. */
export const clubDetector = (): DetectorUse => ({
  detectedV: 6.53,
  dropV: 0.55,
  dropKnownV: 0.1,
  dropFrom: 'fixed',
  loadOhm: 49.8,
  harmonicsDbc: -30,
});

/** Limits of the voltmeter, in volts. */
export const meterLimitsV = ({ detectedV }: DetectorUse): number =>
  (METER.percent / 100) * detectedV + METER.digits * METER.stepV;

/** What harmonics can do to one peak, in dB, the larger side. */
export const harmonicsDb = ({ harmonicsDbc }: DetectorUse): number =>
  0 - amplitudeRatioToDb(1 - dbToAmplitudeRatio(gainDb(harmonicsDbc)));

/** What is stated of each part. */
export const detectorParts = (use: DetectorUse): readonly Part<DetectorPart, RelativeUnit | 'volts'>[] => [
  within('voltmeter', meterLimitsV(use), 'volts'),
  within('drop', use.dropKnownV, 'volts'),
  within('harmonics', harmonicsDb(use), 'dB'),
  within('load', LOAD_PERCENT, 'percentOfResistance'),
];

/** The level that DC volts, the drop added back or not, and ohms alone say. */
export const detectedLevel = ({ detectedV, dropV, loadOhm }: DetectorUse, added: boolean): LevelDbm =>
  powerToLevel(powerOfPeak({ peak: voltsPeak(detectedV + (added ? dropV : 0)), resistance: ohms(loadOhm) }));

/** How far the level is off with the drop forgotten, in dB: zero or less. */
export const forgottenDb = (use: DetectorUse): number => detectedLevel(use, false) - detectedLevel(use, true);

/** The DC volts from which on the method holds with a fixed drop. */
export const leastVolts = ({ dropV, loadOhm }: DetectorUse): number =>
  Math.sqrt(2 * loadOhm * LEAST_W) - dropV;

/** The level in the load with everything that it may be wrong by, or why there is none. @throws RangeError for numbers not above zero. */
export function detectorFound(use: DetectorUse): Found<DetectorReason> {
  const percent = (100 * Math.max(use.dropKnownV, meterLimitsV(use))) / (use.detectedV + use.dropV);
  // Where the volts are vague their limits may leave nothing, which no sum in decibels bears.
  const vague = percent > LARGEST_PERCENT;
  const outcome = peakDetector({
    detectedV: use.detectedV,
    diodeDropV: use.dropV,
    resistance: ohms(use.loadOhm),
    curveFromDc: use.dropFrom === 'curve',
    influences: vague ? [] : detectorParts(use),
  });
  if (outcome.inRange && vague) return { inRange: false, reason: { code: 'vagueVolts', percent } };
  const found = foundOf(outcome);
  if (found.inRange) return found;
  const { reason } = found;
  if (reason.code !== 'belowDetector')
    throw new RangeError(`detectorFound: a detector must be too low or in range, got ${reason.code}`);
  return { inRange: false, reason };
}
