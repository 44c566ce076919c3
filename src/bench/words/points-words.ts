import type { ChartPoint } from '../../figures/points-chart.types.ts';
import { namesAnd } from '../../text/and.ts';
import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { coverageText, shareText } from '../../text/probability-text.ts';
import { levelText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { verdictLabel } from '../../text/words.ts';
import type { NumberedPoint, PointResult } from '../results/point-result.ts';
import { isByFrequency, type PointWithResult } from './point-order.ts';
import { pointsStrings as strings } from './points-strings.ts';
import { halfWidthText, wattsIntervalText } from './result-words.ts';
import { conformityText, shownWords } from './verdict-words.ts';

/** A row of the table over points, as text. */
export type PointRow =
  | { readonly id: string; readonly label: string; readonly state: 'pending' }
  | { readonly id: string; readonly label: string; readonly state: 'outOfRange'; readonly reason: string }
  | ({ readonly id: string; readonly label: string; readonly state: 'numbered' } & PointCells);

/** What a row says of a point that has a number. */
export interface PointCells {
  readonly estimate: string;
  readonly expanded: string;
  readonly watts: string;
  readonly verdict: string;
  readonly probability: string;
  readonly dominant: string;
}

/** Decimals of a level that has no uncertainty of its own, and most that any has. */
const LEVEL_DECIMALS = { exact: 2, most: 4 } as const;
/** k is 2 for a bell; what differs by less comes from rounding. */
const USUAL_FACTOR = { k: 2, within: 0.005 } as const;

/** One row a point. */
export const pointRows = (style: Style, points: readonly PointWithResult[]): readonly PointRow[] =>
  points.map(({ point: { id }, label, result }) => {
    if (result === undefined) return { id, label, state: 'pending' };
    if (!result.inRange)
      return { id, label, state: 'outOfRange', reason: outOfRangeText(style, result.reason) };
    return { id, label, state: 'numbered', ...cellsOf(style, result) };
  });

function cellsOf(style: Style, numbered: NumberedPoint): PointCells {
  const { chain, judgement, improvement } = numbered.result;
  const { estimate, propagation } = chain.result;
  const { expanded, interval, coverageFactor: factor, coverageProbability: probability } = propagation;
  const decimals =
    expanded > 0 ? Math.min(LEVEL_DECIMALS.most, Math.max(0, decimalsFor(expanded))) : LEVEL_DECIMALS.exact;
  const half = halfWidthText(style, expanded);
  const isUsual = Math.abs(factor - USUAL_FACTOR.k) < USUAL_FACTOR.within;
  return {
    estimate: levelText(style, { levelDbm: estimate, decimals }),
    expanded: isUsual ? half : `${half} (${coverageText(style, { factor, probability })})`,
    watts: wattsIntervalText(style, interval),
    verdict: shownWords(verdictLabel(judgement.verdict)),
    probability: conformityText(style, numbered) ?? strings.none,
    dominant: improvement ? namesAnd(improvement.labels) : strings.nothing,
  };
}

/** Coverage factor and probability that hold wherever a row says no other. */
export function coverageNote(style: Style, points: readonly PointWithResult[]): string | undefined {
  const numbered = points.find(({ result }) => result?.inRange)?.result;
  if (!numbered?.inRange) return undefined;
  return strings.coverage(shareText(style, numbered.result.chain.result.propagation.coverageProbability));
}

/** The points as the chart draws them. */
export const chartPoints = (points: readonly PointWithResult[]): readonly ChartPoint[] =>
  points.map(({ point: { id, specification }, label, result }) => ({
    id,
    label,
    word: wordOf(result),
    specification: {
      lower: specification.lower ?? Number.NEGATIVE_INFINITY,
      upper: specification.upper ?? Number.POSITIVE_INFINITY,
    },
    ...(result?.inRange && {
      band: bandOf(result),
    }),
  }));

const bandOf = ({ result: { chain } }: NumberedPoint) => ({
  ...chain.result.propagation.interval,
  estimate: chain.result.estimate,
});

function wordOf(result: PointResult | undefined): string {
  if (result === undefined) return strings.pending;
  return result.inRange ? shownWords(verdictLabel(result.result.judgement.verdict)) : strings.outOfRange;
}

/** How many points are inside, outside, undecided or without a number, in one sentence. */
export function pointsSummary(points: readonly PointWithResult[]): string {
  const kinds = points.map(({ result }) =>
    result === undefined ? 'pending' : result.inRange ? result.result.judgement.verdict : 'outOfRange',
  );
  const told = (Object.keys(strings.verdicts) as (keyof typeof strings.verdicts)[]).flatMap((kind) => {
    const count = kinds.filter((other) => other === kind).length;
    return count === 0 ? [] : [strings.count(count, strings.verdicts[kind])];
  });
  return strings.summary(told, isByFrequency(points.map(({ point }) => point)));
}
