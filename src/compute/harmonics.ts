import { type GainDb, gainDb, rangeError } from './quantity.ts';

/** Amplitudes of the harmonics over the carrier's, from their levels in dB below it (all negative). */
function amplitudes(where: string, harmonics: readonly GainDb[]): number[] {
  return harmonics.map((level) => {
    if (level >= 0)
      throw rangeError({ where, wish: 'every harmonic must be below the carrier (< 0 dB)', got: level });
    return 10 ** (level / 20);
  });
}

/**
 * Limits of what harmonics of unknown phase do to one peak of a sine, in dB: 20 lg(1 -+ sum of amplitudes). One at
 * -20 dBc: -0.92 to +0.83 dB, one at -40: 0.09 either way. What a peak detector may show too little or too much.
 * @param harmonics levels against the carrier in dB, below 0.
 * @throws RangeError for one at the carrier's level or above, or together as large as the carrier.
 * Source: the peak of a sum lies within the sum of the peaks.
 */
export function harmonicPeakLimits(harmonics: readonly GainDb[]): { lower: GainDb; upper: GainDb } {
  const where = 'harmonicPeakLimits';
  const sum = amplitudes(where, harmonics).reduce((total, a) => total + a, 0);
  if (!(sum < 1))
    throw rangeError({ where, wish: 'amplitudes together must be below that of the carrier', got: sum });
  return { lower: gainDb(20 * Math.log10(1 - sum)), upper: gainDb(20 * Math.log10(1 + sum)) };
}

/**
 * How much harmonics add to the mean power, in dB: 10 lg(1 + sum of squared amplitudes). One at -20 dBc: 0.04 dB.
 * @throws RangeError for one at the carrier's level or above.
 * Source: mean power of orthogonal waves adds.
 */
export function harmonicPowerRise(harmonics: readonly GainDb[]): GainDb {
  const sum = amplitudes('harmonicPowerRise', harmonics).reduce((total, a) => total + a * a, 0);
  return gainDb((10 / Math.LN10) * Math.log1p(sum));
}
