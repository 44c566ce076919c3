import { combinedBandwidth, singlePoleLossDb } from '../bandwidth.ts';
import { powerToLevel } from '../level.ts';
import { notNegative, type Ohms, positive, type VoltsPeakToPeak } from '../quantity.ts';
import { powerOfPeakToPeak } from '../sine.ts';
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
 * Largest share of the bandwidth at which a front end may still be taken as no worse than single-pole: 0.37 dB there.
 * Above it real front ends differ too much for a correction (common practice: three to five times the frequency).
 */
const LARGEST_RATIO = 0.3;

/** What an oscilloscope across a load shows, and what is known of both. */
export interface OscilloscopeReading {
  /** Mean of what was read, trough to crest. */
  readonly peakToPeak: VoltsPeakToPeak;
  /** The load's resistance as measured or marked. */
  readonly resistance: Ohms;
  readonly frequencyHz: number;
  /** -3 dB bandwidths of oscilloscope and probe, each above zero. */
  readonly bandwidthsHz: readonly number[];
  /** False if nothing terminates the line: the reading is then no power in the load. */
  readonly terminated: boolean;
  /** Gain, ripple, load, reading and the like; `voltsPeakToPeak` for what is stated in volts of the reading. */
  readonly influences: readonly Influence<RelativeUnit | 'voltsPeakToPeak'>[];
}

/**
 * Power from an oscilloscope across a load: Vpp^2/(8 R), as a sum in dBm (V^2/R becomes a sum in logarithms). Roll-off
 * is an input of its own, `rollOff`, with the limits 0 to 10 lg(1 + (f/B)^2) dB; it shifts the estimate by their middle.
 * Out of range without termination, and above 0.3 of the combined bandwidth.
 * @throws RangeError for a reading or bandwidth not above zero, or a negative frequency.
 * Source: Joule's law for a sine; low-pass of first order; limits by common practice.
 */
export function oscilloscope(reading: OscilloscopeReading): MethodOutcome {
  const { peakToPeak, resistance, frequencyHz, bandwidthsHz, terminated, influences } = reading;
  positive('oscilloscope', 'peakToPeak', peakToPeak);
  const ratio = notNegative('oscilloscope', 'frequencyHz', frequencyHz) / combinedBandwidth(bandwidthsHz);
  if (!terminated) return outOfRange({ code: 'noTermination' });
  if (clearlyAbove(ratio, LARGEST_RATIO))
    return outOfRange({ code: 'aboveBandwidth', ratio, largest: LARGEST_RATIO });
  const rollOff: Influence<RelativeUnit> = {
    id: 'rollOff',
    statement: { form: 'asymmetric', lower: 0, upper: singlePoleLossDb(ratio) },
    unit: 'dB',
  };
  const relative = influences.map(
    (influence): Influence<RelativeUnit> =>
      influence.unit === 'voltsPeakToPeak'
        ? { ...influence, statement: inPercentOf(peakToPeak, influence.statement), unit: 'percentOfVolts' }
        : { ...influence, unit: influence.unit },
  );
  return sumInDbm(powerToLevel(powerOfPeakToPeak({ peakToPeak, resistance })), [...relative, rollOff]);
}
