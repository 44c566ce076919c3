import {
  type Ohms,
  type PowerW,
  powerW,
  type VoltsPeak,
  type VoltsPeakToPeak,
  type VoltsRms,
  voltsPeak,
  voltsPeakToPeak,
  voltsRms,
} from './quantity.ts';

/** RMS of a sine from its peak: Vp / sqrt 2. Source: CEPT T/R 61-02, Annex 6, 1.6. */
export const rmsOfPeak = (peak: VoltsPeak): VoltsRms => voltsRms(peak * Math.SQRT1_2);

/** Peak of a sine from its RMS: Vrms x sqrt 2. */
export const peakOfRms = (rms: VoltsRms): VoltsPeak => voltsPeak(rms * Math.SQRT2);

/** Peak of a wave that is even about its middle, from trough-to-crest: Vpp / 2. */
export const peakOfPeakToPeak = (peakToPeak: VoltsPeakToPeak): VoltsPeak => voltsPeak(peakToPeak / 2);

/** Trough-to-crest of a wave that is even about its middle, from its peak: 2 Vp. */
export const peakToPeakOfPeak = (peak: VoltsPeak): VoltsPeakToPeak => voltsPeakToPeak(2 * peak);

/** Mean of a full-wave rectified sine, in volts, from its peak: 2 Vp / pi = 0.637 Vp. */
export const rectifiedAverageOfPeak = (peak: VoltsPeak): number => (2 * peak) / Math.PI;

/** Peak of a sine from the mean of its full-wave rectified form: pi/2 times it. @throws RangeError if negative. */
export const peakOfRectifiedAverage = (averageV: number): VoltsPeak => voltsPeak((averageV * Math.PI) / 2);

/** A power and the resistance that takes it. */
export interface PowerInto {
  readonly power: PowerW;
  readonly resistance: Ohms;
}

/** Mean power that a voltage of any waveform brings into a resistance: Vrms^2 / R. Source: Joule's law. */
export function powerOfVolts({ volts, resistance }: { volts: VoltsRms; resistance: Ohms }): PowerW {
  return powerW(volts ** 2 / resistance);
}

/** Voltage RMS across a resistance that takes a mean power: sqrt(P R). */
export function voltsOfPower({ power, resistance }: PowerInto): VoltsRms {
  return voltsRms(Math.sqrt(power * resistance));
}

/** Power of a sine from its peak: Vp^2 / (2 R). 10 V into 50 ohm is 1 W. */
export function powerOfPeak({ peak, resistance }: { peak: VoltsPeak; resistance: Ohms }): PowerW {
  return powerW(peak ** 2 / (2 * resistance));
}

/** Peak of a sine that brings a power into a resistance: sqrt(2 P R). */
export function peakOfPower({ power, resistance }: PowerInto): VoltsPeak {
  return voltsPeak(Math.sqrt(2 * power * resistance));
}

/** Power of a sine from trough-to-crest: Vpp^2 / (8 R), which is Vpp^2 / 400 at 50 ohm. 20 V is 1 W there. */
export function powerOfPeakToPeak({
  peakToPeak,
  resistance,
}: {
  peakToPeak: VoltsPeakToPeak;
  resistance: Ohms;
}): PowerW {
  return powerW(peakToPeak ** 2 / (8 * resistance));
}

/** Trough-to-crest of a sine that brings a power into a resistance: sqrt(8 P R). */
export function peakToPeakOfPower({ power, resistance }: PowerInto): VoltsPeakToPeak {
  return voltsPeakToPeak(Math.sqrt(8 * power * resistance));
}
