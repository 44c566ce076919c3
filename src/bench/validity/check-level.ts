import { amplitudeRatioToDb, powerRatioToDb } from '#compute';
import type { MethodSetup } from '../../sheet/method.ts';

/**
 * A reading of the method's main column as decibels against one unit, for differences alone: 20 lg of volts, 10 lg of watts and of
 * kelvins, dBm as they stand. A rise of temperature goes as the power that heats.
 * @throws RangeError for a reading of zero or less where it is no level.
 */
export function checkLevel(setup: MethodSetup, reading: number): number {
  switch (setup.method) {
    case 'padsIntoMeter':
      return reading;
    case 'oscilloscope':
      return amplitudeRatioToDb(reading);
    case 'peakDetector':
      return amplitudeRatioToDb(reading + setup.diodeDropV);
    case 'inLine':
    case 'dcSubstitution':
      return powerRatioToDb(reading);
  }
}

/** What an instrument shows without a signal as decibels against the same unit, no diode drop in it; undefined for none at all. */
export function floorLevel(setup: MethodSetup, off: number): number | undefined {
  if (setup.method === 'padsIntoMeter') return off;
  if (off <= 0) return undefined;
  return setup.method === 'peakDetector' ? amplitudeRatioToDb(off) : checkLevel(setup, off);
}
