import { type BandResult, intervalInWatts, levelDbm, levelToPower } from '#compute';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerWithEndsText } from '../../text/power-text.ts';
import { levelText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from './answer.ts';

/** What a method says of a power: `27.04 dBm ±0.35 dB`, and the same in watts, end by end. */
export function methodLevel(style: Style, { estimate, propagation }: BandResult): Answer {
  const { expanded, interval } = propagation;
  const decimals = decimalsFor(expanded);
  const watts = intervalInWatts({ lower: levelDbm(interval.lower), upper: levelDbm(interval.upper) });
  return {
    figure: `${levelText(style, { levelDbm: estimate, decimals })} ${bandText(style, expanded)}`,
    words: powerWithEndsText(style, {
      powerW: levelToPower(levelDbm(estimate)),
      lowerW: watts.lower,
      upperW: watts.upper,
    }),
  };
}

/** A band in dB to as many digits as it bears. */
export const bandText = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

/** The part with the largest share of the variance, and what would be left of U without it. */
export function largestPart({ propagation: { budget, expanded } }: BandResult): {
  readonly id: string;
  readonly share: number;
  readonly left: number;
} {
  const [first, ...rest] = budget;
  if (first === undefined) throw new RangeError('largestPart: a budget must have a row, got none');
  const { id, share } = rest.reduce((most, row) => (row.share > most.share ? row : most), first);
  return { id, share, left: expanded * Math.sqrt(Math.max(0, 1 - share)) };
}
