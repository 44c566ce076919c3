import {
  averageMeterRatio,
  dbToAmplitudeRatio,
  type GainDb,
  gainDb,
  type LevelDbm,
  levelDbm,
  levelToPower,
  ohms,
  type PowerW,
  powerOfPeak,
  powerOfPeakToPeak,
  powerOfVolts,
  powerRatioToDb,
  powerToLevel,
  powerW,
  voltsOfPower,
  voltsPeak,
  voltsRms,
} from '#compute';
import { type Trace, traceSums } from './trace.ts';

/** The usual slips between a trace and its watts, in the order in which they are told. */
export const TRACE_SLIPS = [
  'wholeAsPeak',
  'wholeAsRms',
  'peakAsRms',
  'sineForAll',
  'averageMeter',
  'assumedLoad',
  'probe',
  'tenLog',
] as const;

export type TraceSlip = (typeof TRACE_SLIPS)[number];

/** The load that everybody assumes. */
const USUAL_LOAD_OHM = 50;
/** What a probe divides by while the oscilloscope believes that it divides by nothing. */
const PROBE_DB = 20;
const ONE_MILLIWATT = 1e-3;

/**
 * The power that a slip makes of a trace: the right function, handed the wrong number.
 *
 * - `wholeAsPeak`, `wholeAsRms`, `peakAsRms`: one measure of the wave taken for another.
 * - `sineForAll`: Vpp²/(8 R) whatever the shape.
 * - `averageMeter`: the RMS from a meter that averages and is scaled for sines.
 * - `assumedLoad`: 50 Ω whatever the load.
 * - `probe`: a probe that divides by ten, not told to the oscilloscope.
 * - `tenLog`: 10 lg of the ratio of volts instead of 20 lg, against the volts of 1 mW.
 */
export function slippedPower(slip: TraceSlip, trace: Trace): PowerW {
  const { peakToPeak, peak, rms } = traceSums(trace);
  const resistance = ohms(trace.loadOhm);
  switch (slip) {
    case 'wholeAsPeak':
      return powerOfPeak({ peak: voltsPeak(peakToPeak), resistance });
    case 'wholeAsRms':
      return powerOfVolts({ volts: voltsRms(peakToPeak), resistance });
    case 'peakAsRms':
      return powerOfVolts({ volts: voltsRms(peak), resistance });
    case 'sineForAll':
      return powerOfPeakToPeak({ peakToPeak, resistance });
    case 'averageMeter':
      return powerOfVolts({ volts: voltsRms(rms * averageMeterRatio(trace.wave)), resistance });
    case 'assumedLoad':
      return powerOfVolts({ volts: rms, resistance: ohms(USUAL_LOAD_OHM) });
    case 'probe':
      return powerOfVolts({ volts: voltsRms(rms * dbToAmplitudeRatio(gainDb(-PROBE_DB))), resistance });
    case 'tenLog': {
      const reference = voltsOfPower({ power: powerW(ONE_MILLIWATT), resistance });
      return levelToPower(levelDbm(powerRatioToDb(rms / reference)));
    }
  }
}

/** What a slip makes of a trace, and how far that is off. */
export interface SlipOutcome {
  readonly power: PowerW;
  readonly level: LevelDbm;
  /** Slipped over true power. */
  readonly factor: number;
  readonly error: GainDb;
}

/** A slip's power, its level, and its error as a factor and in dB. */
export function slipOutcome(slip: TraceSlip, trace: Trace): SlipOutcome {
  const power = slippedPower(slip, trace);
  const factor = power / traceSums(trace).power;
  return { power, level: powerToLevel(power), factor, error: powerRatioToDb(factor) };
}
