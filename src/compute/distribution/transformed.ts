import { rangeError } from '../quantity.ts';
import { lineNodes, unitNodes } from '../special/integrate.ts';
import { shareWithin } from '../special/share.ts';
import type { Distribution, Interval } from './distribution.ts';
import { isMember, quantileFromAbove } from './standard.ts';

/** With less than this outside the domain, means run over the whole line; the cut changes nothing that is seen. */
const CUT = 1e-10;

/** With at least this share inside the domain, values outside are drawn anew; with less that would take too long. */
const REJECT_ABOVE = 0.5;

/** A strictly monotone function with what its distribution needs. */
export interface Transform {
  /** The shape of x. */
  readonly of: Distribution;
  /** y = forward(x), strictly rising or strictly falling over `domain`; may be infinite at an end. */
  readonly forward: (x: number) => number;
  /** x = inverse(y). */
  readonly inverse: (y: number) => number;
  /** dy/dx at x. */
  readonly slope: (x: number) => number;
  /**
   * Where `forward` is defined, if that is not everywhere: the shape of x is then taken on condition that it lies
   * here (a voltage ratio 1 + x cannot be negative, however long the tail of x).
   */
  readonly domain?: Interval;
}

/** x within the domain: its limits, and the shares between which it lies. */
interface Part {
  readonly limits: Interval;
  readonly from: number;
  readonly size: number;
}

function partOf({ of, domain }: Transform): Part {
  const limits = {
    lower: Math.max(of.limits.lower, domain?.lower ?? Number.NEGATIVE_INFINITY),
    upper: Math.min(of.limits.upper, domain?.upper ?? Number.POSITIVE_INFINITY),
  };
  const from = of.shareBelow(limits.lower);
  const size = of.shareBelow(limits.upper) - from;
  if (!(size > 0))
    throw rangeError({ where: 'transformed', wish: 'the shape must reach into the domain', got: limits });
  return { limits, from, size };
}

/** Ends of y, and whether it rises with x. @throws RangeError where forward is not a number or not monotone. */
function imageOf({ forward, slope, of }: Transform, { limits, from, size }: Part) {
  const first = forward(limits.lower);
  const last = forward(limits.upper);
  const rising = first < last;
  const middle = slope(of.quantile(from + size / 2));
  if (Number.isNaN(first) || Number.isNaN(last) || first === last || middle > 0 !== rising)
    throw rangeError({
      where: 'transformed',
      wish: 'forward must be monotone over the limits of the shape',
      got: [first, last],
    });
  return { rising, limits: rising ? { lower: first, upper: last } : { lower: last, upper: first } };
}

/** Places of x and their shares, for means over all of it. */
function* nodesOf(of: Distribution, { from, size }: Part): Iterable<{ x: number; weight: number }> {
  if (isMember(of) && !Number.isFinite(of.limits.upper) && size > 1 - CUT) {
    for (const { x, weight } of lineNodes())
      yield { x: of.location + of.scale * x, weight: (weight * of.standard.density(x)) / size };
    return;
  }
  const top = 1 - from - size;
  for (const { u, complement, weight } of unitNodes())
    yield {
      x: u < 0.5 ? of.quantile(from + size * u) : quantileFromAbove(of, top + size * complement),
      weight,
    };
}

/** Mean and standard deviation by quadrature; absent where the shape of x has none. */
function momentsOf({ of, forward }: Transform, part: Part) {
  if (of.mean === undefined) return { mean: undefined, standardDeviation: undefined };
  const median = forward(of.quantile(part.from + part.size / 2));
  let first = 0;
  let second = 0;
  for (const { x, weight } of nodesOf(of, part)) {
    if (x < part.limits.lower || x > part.limits.upper) continue;
    const fromMedian = forward(x) - median;
    // Infinite at the very end of the domain only, where the weight is below 1e-15.
    if (!Number.isFinite(fromMedian)) continue;
    first += weight * fromMedian;
    second += weight * fromMedian * fromMedian;
  }
  const hasDeviation = of.standardDeviation !== undefined;
  return {
    mean: median + first,
    standardDeviation: hasDeviation ? Math.sqrt(second - first * first) : undefined,
  };
}

/**
 * Distribution of y = forward(x) for a strictly monotone function of one quantity, such as a percentage turned into
 * decibels: the distribution is transformed, not multiplied by a factor (JCGM 101, 5.2, for one input; number from memory). Unit: that of y.
 *
 * Mean and standard deviation are computed on first use by quadrature, to about 1e-9 of the standard deviation; they are
 * undefined where x has none. @throws RangeError if forward is not monotone over the limits of x or not a number there.
 */
export function transformed(transform: Transform): Distribution {
  const { of, inverse, slope, forward } = transform;
  const part = partOf(transform);
  const { rising, limits } = imageOf(transform, part);
  let moments: ReturnType<typeof momentsOf> | undefined;
  const known = () => {
    moments ??= momentsOf(transform, part);
    return moments;
  };
  const shareOfX = (x: number) => Math.min(1, Math.max(0, (of.shareBelow(x) - part.from) / part.size));
  const fromShare = (share: number) => {
    const x = of.quantile(part.from + part.size * share);
    return forward(Math.min(part.limits.upper, Math.max(part.limits.lower, x)));
  };
  return {
    shape: 'transformed',
    get mean() {
      return known().mean;
    },
    get standardDeviation() {
      return known().standardDeviation;
    },
    limits,
    density: (y) => {
      if (y < limits.lower || y > limits.upper) return 0;
      const x = inverse(y);
      const density = of.density(x) / (part.size * Math.abs(slope(x)));
      return Number.isNaN(density) ? 0 : density;
    },
    shareBelow: (y) => {
      if (y <= limits.lower) return 0;
      if (y >= limits.upper) return 1;
      return rising ? shareOfX(inverse(y)) : 1 - shareOfX(inverse(y));
    },
    quantile: (share) => {
      shareWithin('quantile', share);
      if (share === 0) return limits.lower;
      if (share === 1) return limits.upper;
      return fromShare(rising ? share : 1 - share);
    },
    sample: (random) => {
      if (part.size < REJECT_ABOVE) return fromShare(random() || 2 ** -54);
      let x = of.sample(random);
      while (!(x >= part.limits.lower && x <= part.limits.upper)) x = of.sample(random);
      return forward(x);
    },
  };
}
