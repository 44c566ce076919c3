import { type GainDb, type PowerW, powerW, rangeError } from './quantity.ts';

/**
 * Heat in a pad or cable: P (1 - 10^(-A/10)) with A = -gain. 5 W into 20 dB leave 4.95 W in it.
 * @param gain of the pad in dB, 0 or negative.
 * @throws RangeError for a gain above 0 dB, which is no pad.
 * Source: conservation of energy (what goes in and does not come out is heat).
 */
export function heatInPad({ power, gain }: { power: PowerW; gain: GainDb }): PowerW {
  if (gain > 0) throw rangeError({ where: 'heatInPad', wish: 'gain must be <= 0', got: gain });
  return powerW(0 - power * Math.expm1((gain * Math.LN10) / 10));
}
