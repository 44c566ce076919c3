import { levelDbm, meanAsPowers, meanOfDecibels, standardDeviation } from '#compute';
import type { MeansState } from './spec.ts';

/** ln 10 / 20: how far the mean of powers lies above the mean of decibels, a square decibel of scatter at a time. */
const DB_PER_SQUARE = (): number => Math.LN10 / 20;

/** Two means of three readings, and how far they are apart. */
export interface Means {
  readonly ofDecibelsDbm: number;
  readonly ofPowersDbm: number;
  readonly apartDb: number;
  /** What the rule makes of the distance: 0.115 times the mean square of the deviations, good for a few dB. */
  readonly ruleDb: number;
  /** Scatter of the readings (n - 1). */
  readonly scatterDb: number;
}

/** Both means of the readings. Source of the rule: second term of the exponential series. */
export function meansOf({ first, second, third }: MeansState): Means {
  const readings = [first, second, third].map(levelDbm);
  const ofDecibelsDbm = meanOfDecibels(readings);
  const ofPowersDbm = meanAsPowers(readings);
  const square = readings.reduce((sum, level) => sum + (level - ofDecibelsDbm) ** 2, 0) / readings.length;
  return {
    ofDecibelsDbm,
    ofPowersDbm,
    // Equal readings may differ by the rounding of a logarithm.
    apartDb: Math.max(0, ofPowersDbm - ofDecibelsDbm),
    ruleDb: DB_PER_SQUARE() * square,
    scatterDb: standardDeviation(readings),
  };
}
