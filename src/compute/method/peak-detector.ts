import { powerToLevel } from '../level.ts';
import { notNegative, type Ohms, positive, powerW, voltsPeak } from '../quantity.ts';
import { powerOfPeak } from '../sine.ts';
import {
  clearlyAbove,
  type Influence,
  type MethodOutcome,
  outOfRange,
  type RelativeUnit,
  sumInDbm,
} from './method.ts';
import { inPercentOf } from './scaled-statement.ts';

/**
 * Below this power a diode leaves the peak law, and no fixed drop is right: it needs a curve taken with DC.
 * Common practice; in 50 ohm it is a peak of 2.2 V.
 */
const LEAST_W = 0.05;

/** What a peak detector's meter shows, and what is known of the detector. */
export interface PeakDetectorReading {
  /** DC voltage on a meter of high resistance. */
  readonly detectedV: number;
  /** What the diode takes away, added back. */
  readonly diodeDropV: number;
  /** Resistance that the detector sits across. */
  readonly resistance: Ohms;
  /** True if the drop comes from a curve of this detector taken with DC at this level. */
  readonly curveFromDc: boolean;
  /** Meter, drop, load, harmonics and the like; `volts` for what is stated in volts of the DC reading or of the drop. */
  readonly influences: readonly Influence<RelativeUnit | 'volts'>[];
}

/**
 * Power from a peak detector: (Vdc + Vd)^2/(2 R), as a sum in dBm. Out of range below 50 mW without a curve taken
 * with DC.
 * @throws RangeError for a negative drop, or a reading not above zero.
 * Source: Joule's law for a sine; limit by common practice.
 */
export function peakDetector(reading: PeakDetectorReading): MethodOutcome {
  const { detectedV, diodeDropV, resistance, curveFromDc, influences } = reading;
  const detected = positive('peakDetector', 'detectedV', detectedV);
  const peak = voltsPeak(detected + notNegative('peakDetector', 'diodeDropV', diodeDropV));
  const power = powerOfPeak({ peak, resistance });
  if (!curveFromDc && clearlyAbove(LEAST_W, power))
    return outOfRange({ code: 'belowDetector', power, least: powerW(LEAST_W) });
  const relative = influences.map(
    (influence): Influence<RelativeUnit> =>
      influence.unit === 'volts'
        ? { ...influence, statement: inPercentOf(peak, influence.statement), unit: 'percentOfVolts' }
        : { ...influence, unit: influence.unit },
  );
  return sumInDbm(powerToLevel(power), relative);
}
