import { type Interval, levelDbm, levelToPower, type Result } from '#compute';
import { type Chain, COVERAGE_FACTOR } from '../../sheet/chain.ts';
import { deviationsText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerIntervalText } from '../../text/power-text.ts';
import { percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';

/** One way to add up, in words. */
export interface Way {
  readonly id: 'worst' | 'propagation' | 'whole';
  readonly name: string;
  /** Deviation from the estimate in dB: `±2.47 dB`. */
  readonly band: string;
  readonly watts: string;
  readonly says: string;
}

const bandOf = (style: Style, { lower, upper }: Interval, estimate: number): string => {
  const half = (upper - lower) / 2;
  if (half === 0) return 'exact';
  const decimals = Math.max(0, decimalsFor(half));
  return deviationsText(style, { upper: upper - estimate, lower: lower - estimate, decimals, unit: 'dB' });
};

const wattsOf = (style: Style, { lower, upper }: Interval): string =>
  upper > lower
    ? powerIntervalText(style, {
        lowerW: levelToPower(levelDbm(lower)),
        upperW: levelToPower(levelDbm(upper)),
      })
    : '';

/** The ways to add up that apply to a chain, each with what it says. */
export function waysOf(style: Style, { result }: Chain): readonly Way[] {
  const { estimate, worstCase, propagation, whole } = result;
  const line = (interval: Interval) => ({
    band: bandOf(style, interval, estimate),
    watts: wattsOf(style, interval),
  });
  const worst: Way = {
    id: 'worst',
    name: 'Worst case',
    says: worstSays(result),
    ...line(worstCase.interval),
  };
  const strip: Way = {
    id: 'propagation',
    name: `Propagation of uncertainty, k = ${COVERAGE_FACTOR}`,
    says: 'The square root of the sum of squares, times two: about 95 % if the sum is nearly a bell.',
    ...line(propagation.interval),
  };
  if ('unavailable' in whole) return [worst, strip];
  const probability = percentText(style, { percent: 100 * propagation.coverageProbability, decimals: 1 });
  return [
    worst,
    strip,
    {
      id: 'whole',
      name: 'Whole distribution of the sum',
      says: `The middle ${probability}, for the shapes as stated and no shared cause but those named.`,
      ...line(whole.symmetric),
    },
  ];
}

const worstSays = ({ worstCase }: Result): string =>
  worstCase.unlimited.length > 0
    ? 'Every part with limits at its worst end at once. Some parts have no limit, so nothing is guaranteed.'
    : 'Every part at its worst end at once: a guarantee as good as the limits.';

/** How far k = 2 is from covering what a bell would, before it is worth a sentence. */
const NEARLY_A_BELL = 0.004;

/** Why the ways differ, in one sentence made for this chain. */
export function whyTheyDiffer(style: Style, chain: Chain): string {
  const { whole, propagation } = chain.result;
  if ('unavailable' in whole || propagation.expanded === 0)
    return 'The worst case has every part err the same way at once; the others count how rarely that happens.';
  const { lower, upper } = propagation.interval;
  const covered = whole.shareBelow(upper) - whole.shareBelow(lower);
  const excess = covered - propagation.coverageProbability;
  const text = percentText(style, { percent: 100 * covered, decimals: 1 });
  if (Math.abs(excess) < NEARLY_A_BELL)
    return `The worst case has every part err the same way at once, which is rare; the sum is nearly a bell, so k = ${COVERAGE_FACTOR} covers ${text}.`;
  const dominant = chain.sheet.links.find(({ id }) => id === chain.dominantId)?.label ?? 'One part';
  return excess > 0
    ? `${dominant} outweighs the rest and has limits, so the sum ends sooner than a bell: k = ${COVERAGE_FACTOR} covers ${text} here, and the whole distribution gives the narrower interval.`
    : `A part known from few readings has long tails: k = ${COVERAGE_FACTOR} covers only ${text} here, and the whole distribution gives the wider interval.`;
}
