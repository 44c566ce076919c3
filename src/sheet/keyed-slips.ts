import { type GainDb, type PowerW, powerRatioToDb, powerW } from '#compute';
import { type Keyed, meanOf, powersAt, supplyShares } from './keyed.ts';

/** The usual slips before a power is even measured. */
export const KEYED_SLIPS = [
  'meanAsPeak',
  'peakAsMean',
  'twiceTheMean',
  'forwardAtSocket',
  'peakOverMean',
] as const;
export type KeyedSlip = (typeof KEYED_SLIPS)[number];

/** What a slip states, what is true, and how far apart they are. In watts; for an efficiency, shares of one. */
export interface KeyedSlipOutcome {
  readonly of: 'power' | 'efficiency';
  readonly stated: number;
  readonly truth: number;
  readonly error: GainDb;
}

const outcome = (of: KeyedSlipOutcome['of'], stated: number, truth: number): KeyedSlipOutcome => ({
  of,
  stated,
  truth,
  error: powerRatioToDb(stated / truth),
});

/**
 * What a slip makes of a keyed transmitter; undefined where the slip has nothing to go by (an efficiency that is not known).
 *
 * - `meanAsPeak`: a mean reading stated as peak envelope power.
 * - `peakAsMean`: the peak envelope power taken for the mean, as for the heat in a load.
 * - `twiceTheMean`: twice the mean stated as PEP, whatever the envelope.
 * - `forwardAtSocket`: the incident power at the socket stated as what the load at the far end gets.
 * - `peakOverMean`: peak envelope power over the mean power from the supply, called efficiency.
 */
export function keyedSlip(slip: KeyedSlip, keyed: Keyed): KeyedSlipOutcome | undefined {
  const mean = meanOf(keyed);
  const peak: PowerW = powerW(keyed.peakW);
  switch (slip) {
    case 'meanAsPeak':
      return outcome('power', mean, peak);
    case 'peakAsMean':
      return outcome('power', peak, mean);
    case 'twiceTheMean':
      return outcome('power', 2 * mean, peak);
    case 'forwardAtSocket':
      return outcome('power', mean, powersAt('load', { ...keyed, power: mean }).delivered);
    case 'peakOverMean': {
      const shares = supplyShares(keyed);
      return shares && outcome('efficiency', peak / shares.input, shares.efficiency);
    }
  }
}
