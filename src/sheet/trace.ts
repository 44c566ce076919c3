import {
  crestFactor,
  formFactor,
  type LevelDbm,
  ohms,
  type PowerW,
  peakOfPeakToPeak,
  powerOfVolts,
  powerToLevel,
  type VoltsPeak,
  type VoltsPeakToPeak,
  type VoltsRms,
  voltsPeakToPeak,
  voltsRms,
  type Waveform,
} from '#compute';

/** What is read off a trace across a load: trough to crest in volts, the load in ohms, the shape. */
export interface Trace {
  readonly peakToPeakV: number;
  readonly loadOhm: number;
  readonly wave: Waveform;
}

/** The same wave by each of its measures, and the power it brings into the load. */
export interface TraceSums {
  readonly peakToPeak: VoltsPeakToPeak;
  readonly peak: VoltsPeak;
  readonly rms: VoltsRms;
  /** Mean of the full-wave rectified wave, in volts. */
  readonly averageV: number;
  /** Mean power. */
  readonly power: PowerW;
  /** Power at the crest of the wave, in watts: what the load takes in that moment. */
  readonly greatestW: number;
  readonly level: LevelDbm;
}

/** Every measure of a trace. @throws RangeError unless volts and load are above zero. */
export function traceSums({ peakToPeakV, loadOhm, wave }: Trace): TraceSums {
  const peakToPeak = voltsPeakToPeak(peakToPeakV);
  const peak = peakOfPeakToPeak(peakToPeak);
  const rms = voltsRms(peak / crestFactor(wave));
  const resistance = ohms(loadOhm);
  const power = powerOfVolts({ volts: rms, resistance });
  return {
    peakToPeak,
    peak,
    rms,
    averageV: rms / formFactor(wave),
    power,
    greatestW: powerOfVolts({ volts: voltsRms(peak), resistance }),
    level: powerToLevel(power),
  };
}
