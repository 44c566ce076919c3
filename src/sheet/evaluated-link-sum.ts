import { evaluate, type Interval } from '#compute';
import { bellOf, type LinkSum, probabilityOf, sumModelOf } from './link-sum.ts';

/** The whole distribution of a sum of links, as far as it is shown. */
export interface WholeSum {
  /** The middle of it, holding the probability that was asked for. */
  readonly interval: Interval;
  /** What the interval of propagation holds of it, 0 to 1. */
  readonly covered: number;
  /** How many standard uncertainties reach to the end of its interval. */
  readonly factor: number;
  readonly curve: readonly { readonly x: number; readonly density: number }[];
}

/** Every second point, to five digits, is enough for a drawing and travels lightly. */
const KEPT = 2;
const DIGITS = 5;
const short = (value: number): number => Number(value.toPrecision(DIGITS));

/** The whole distribution of a sum of links. @throws RangeError where a size is not above zero. */
export function wholeSumOf(sum: LinkSum): WholeSum {
  const { expanded, standardUncertainty } = bellOf(sum).propagation;
  const { whole } = evaluate({ model: sumModelOf(sum), coverageProbability: probabilityOf(sum.coverage) });
  if ('unavailable' in whole)
    throw new RangeError(`wholeSumOf: the sum must have a whole distribution, got ${whole.unavailable}`);
  return {
    interval: whole.symmetric,
    covered: whole.shareBelow(expanded) - whole.shareBelow(-expanded),
    factor: whole.symmetric.upper / standardUncertainty,
    curve: whole.curve
      .filter((_, index) => index % KEPT === 0)
      .map(({ x, density }) => ({ x: short(x), density: short(density) })),
  };
}

/** How often the sum lies within so much of nothing, 0 to 1. @throws RangeError where a size is not above zero. */
export function shareWithin(sum: LinkSum, halfWidthDb: number): number {
  const { whole } = evaluate({ model: sumModelOf(sum) });
  if ('unavailable' in whole)
    throw new RangeError(`shareWithin: the sum must have a whole distribution, got ${whole.unavailable}`);
  return whole.shareBelow(halfWidthDb) - whole.shareBelow(-halfWidthDb);
}
