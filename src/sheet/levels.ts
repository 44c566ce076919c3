import type { PowerDelivery } from '#compute';
import {
  type LevelDbm,
  levelDbm,
  mean,
  netPower,
  ohms,
  positive,
  powerOfPeak,
  powerOfPeakToPeak,
  powerToLevel,
  powerW,
  voltsPeak,
  voltsPeakToPeak,
} from '#compute';
import type { Columns, MethodReading, MethodSetup } from './method.ts';

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
    case 'inLine': {
      const forward = powerW(reading);
      return powerToLevel(
        delivery === 'incident' ? forward : netPower({ forward, reflected: powerW(mean(columns.reflected)) }),
      );
    }
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
