import { meanOfPeakEnvelope, meantPower, powerToLevel, powerW, rangeError } from '#compute';
import type { ShownPower } from './method.ts';
import type { Measurand } from './sheet.ts';

/**
 * What has to be added to a level, in dB, to turn what the instrument shows into the power that is meant: nothing with the key
 * down; otherwise the ratio of mean to peak envelope power one way or the other.
 * @throws RangeError for carrier power of a keyed transmitter.
 */
export function keyingDb({ power, keying = 'keyDown' }: Measurand, shown: ShownPower): number {
  if (keying === 'keyDown') return 0;
  if (power === 'carrier')
    throw rangeError({ where: 'keyingDb', wish: 'carrier power must be read key down', got: keying });
  const watt = powerW(1);
  const zero = powerToLevel(watt);
  const measurand = { kind: power, delivery: 'intoIdeal', plane: '', keying } as const;
  const meant =
    shown === 'mean'
      ? meantPower({ measurand, mean: watt })
      : power === 'mean'
        ? meanOfPeakEnvelope({ peakEnvelope: watt, envelope: keying })
        : watt;
  return powerToLevel(meant) - zero;
}
