import type { Input, Interval } from '#compute';
import type { Chain } from '../../sheet/chain.ts';
import { COVERAGE_FACTOR } from '../../sheet/coverage.ts';

/** Share below the lower end of an interval that a bell has within two standard deviations. */
const TAIL = 0.02275;
/** A limit of the specification farther off than this would squeeze the band to a hair: it is not drawn. */
const FARTHEST_LIMIT_DB = 40;
/** Half of the axis is never narrower than this. */
const LEAST_REACH_DB = 0.1;

/** How far all inputs together may carry the band to either side, in dB: their limits, or where nearly all values lie. */
export const reachOfInputs = (inputs: readonly Input[]): number =>
  inputs.reduce((sum, { distribution }) => sum + reachOf(distribution), 0);

function reachOf({ limits, quantile }: Input['distribution']): number {
  const lower = Number.isFinite(limits.lower) ? limits.lower : quantile(TAIL);
  const upper = Number.isFinite(limits.upper) ? limits.upper : quantile(1 - TAIL);
  return Math.max(Math.abs(lower), Math.abs(upper));
}

/** The limits of a specification, an infinite end where it has none, as far as the figure draws them. */
export function drawnSpecification({ sheet, result }: Chain): Interval {
  const near = (limit: number | undefined, otherwise: number): number =>
    limit !== undefined && Math.abs(limit - result.estimate) <= FARTHEST_LIMIT_DB ? limit : otherwise;
  const { lower, upper } = sheet.specification;
  return { lower: near(lower, Number.NEGATIVE_INFINITY), upper: near(upper, Number.POSITIVE_INFINITY) };
}

/** How far from the estimate anything of a chain is drawn, in dB. */
export function reachOfChain(chain: Chain): number {
  const { worstCase, propagation, estimate } = chain.result;
  const { lower, upper } = drawnSpecification(chain);
  const ends = [worstCase.interval.lower, worstCase.interval.upper, lower, upper].filter(Number.isFinite);
  const strip = COVERAGE_FACTOR * propagation.standardUncertainty;
  return Math.max(LEAST_REACH_DB, strip, ...ends.map((end) => Math.abs(end - estimate)));
}
