import { type BandResult, dominantInputs, intervalInWatts, levelDbm, levelToPower } from '#compute';
import { namesAnd } from '../../text/and.ts';
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

/** The parts with the largest share of the variance (several where they are level), that share, and what would be left of U without one. */
export function largestParts(result: BandResult): {
  readonly ids: readonly string[];
  readonly share: number;
  readonly left: number;
} {
  const { budget, expanded } = result.propagation;
  const ids = dominantInputs(result.propagation);
  const share = budget.find(({ id }) => id === ids[0])?.share ?? 0;
  return { ids, share, left: expanded * Math.sqrt(Math.max(0, 1 - share)) };
}

/** Largest part or parts with their share, as a sentence goes on behind a power. */
export const largestText = (
  names: Readonly<Record<string, string>>,
  { ids, share }: { ids: readonly string[]; share: string },
): string =>
  `Largest part${ids.length > 1 ? 's' : ''}: ${namesAnd(ids.map((id) => names[id] ?? id))}, ${share} of the variance${ids.length > 1 ? ' each' : ''}`;
