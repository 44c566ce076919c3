import type { PowerDelivery } from '#compute';
import {
  type LevelDbm,
  levelDbm,
  mean,
  netPower,
  ohms,
  type PowerW,
  positive,
  powerOfPeak,
  powerOfPeakToPeak,
  powerToLevel,
  powerW,
  voltsPeak,
  voltsPeakToPeak,
} from '#compute';
import type { Columns, MethodReading, MethodSetup } from './method.ts';

/** The power that a forward reading in watts says: less the mean of what came back, unless the wave towards the load is meant. */
export function powerInLine(forwardW: number, { reflected }: Columns, delivery: PowerDelivery): PowerW {
  const forward = powerW(forwardW);
  return delivery === 'incident' ? forward : netPower({ forward, reflected: powerW(mean(reflected)) });
}

/** What one main reading says of the power at the instrument's input, everything else at its mean. In dBm. */
function levelOf(setup: MethodSetup, columns: Columns, reading: number, delivery: PowerDelivery): LevelDbm {
  switch (setup.method) {
    case 'padsIntoMeter':
      return levelDbm(reading);
    case 'oscilloscope': {
      const { resistance } = setup;
      return powerToLevel(
        powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(reading), resistance: ohms(resistance) }),
      );
    }
    case 'peakDetector':
      return powerToLevel(
        powerOfPeak({ peak: voltsPeak(reading + setup.diodeDropV), resistance: setup.resistance }),
      );
    case 'inLine':
      return powerToLevel(powerInLine(reading, columns, delivery));
    case 'dcSubstitution': {
      const dc = mean(columns.volts) * mean(columns.amperes);
      const ratio = reading / positive('readingLevels', 'riseDc', mean(columns.riseDc));
      return powerToLevel(powerW(dc * ratio));
    }
  }
}

/**
 * The main readings as levels in dBm at the instrument's input, without corrections.
 * @throws RangeError for a reading that no level exists of (zero or less).
 */
export const readingLevels = (
  { setup, columns }: MethodReading,
  delivery: PowerDelivery,
): readonly LevelDbm[] => columns.readings.map((reading) => levelOf(setup, columns, reading, delivery));
