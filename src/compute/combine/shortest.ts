import type { Interval } from '../distribution/distribution.ts';
import { solveSign } from '../special/solve.ts';
import type { Summed } from './sum.ts';

/** Places at which the density is compared with its height at the interval's ends. */
const PLACES = 200;
/** A dip or a bump below this part of the height is taken for rounding. */
const SLACK = 0.01;

/** How far inside an end of the values their density is taken, as a part of the width of the middle half: on the end itself it may jump to 0. */
const INSIDE = 1e-9;

/** Density at a quantile's place, never infinite, so that two of them can be subtracted; at an end, that just inside. */
function heightAt(sum: Summed, x: number): number {
  const { lower, upper } = sum.limits;
  const nudge = () => INSIDE * (sum.quantile(0.75) - sum.quantile(0.25));
  const inside = x <= lower ? lower + nudge() : x >= upper ? upper - nudge() : x;
  return Math.min(Number.MAX_VALUE, sum.density(inside));
}

/** Whether the density is higher everywhere inside than anywhere outside: then the shortest interval is one. */
function holdsTheHighest(sum: Summed, { lower, upper }: Interval): boolean {
  const from = Math.max(sum.limits.lower, sum.quantile(1e-4));
  const to = Math.min(sum.limits.upper, sum.quantile(1 - 1e-4));
  const ends = [
    ...(lower > sum.limits.lower ? [heightAt(sum, lower)] : []),
    ...(upper < sum.limits.upper ? [heightAt(sum, upper)] : []),
  ];
  const level = Math.max(...ends);
  const spacing = (to - from) / PLACES;
  for (let k = 0; k < PLACES; k++) {
    const x = from + (k + 0.5) * spacing;
    const height = heightAt(sum, x);
    const inside = x > lower + spacing && x < upper - spacing;
    const outside = x < lower - spacing || x > upper + spacing;
    if (inside && height < level * (1 - SLACK)) return false;
    if (outside && height > level * (1 + SLACK)) return false;
  }
  return true;
}

/**
 * The shortest interval that holds `probability` (JCGM 101, 5.3.4), or undefined where the likeliest values do not form
 * one interval, as in a U shape. Equal heights at both ends mark it, or an end of the values.
 */
export function shortestInterval(
  sum: Summed,
  { probability, symmetric }: { probability: number; symmetric: Interval | undefined },
): Interval | undefined {
  const search = (): Interval => {
    const between = (share: number) => ({
      lower: sum.quantile(share),
      upper: sum.quantile(share + probability),
    });
    const excess = (share: number) => {
      const { lower, upper } = between(share);
      return heightAt(sum, lower) - heightAt(sum, upper);
    };
    return between(solveSign(excess, { lower: 0, upper: 1 - probability, tolerance: 1e-9 }));
  };
  const interval = symmetric ?? search();
  return holdsTheHighest(sum, interval) ? interval : undefined;
}
