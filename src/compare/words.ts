import { levelDbm, levelToPower } from '#compute';
import { titleOf } from '../bench/words/shown-title.ts';
import { bandText, factorOf, placesOf } from '../borrow/result-words.ts';
import type { ChartPoint } from '../figures/points-chart.types.ts';
import { answersAloud } from '../text/answers-aloud.ts';
import { powerIntervalText } from '../text/power-text.ts';
import { changeText, dbText, levelText, numberText, percentText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import type { Answer } from '../widgets/parts/answer.ts';
import type { Comparison, Pair, RowResult } from './compared.ts';
import { strings } from './strings.ts';

const watts = (level: number): number => levelToPower(levelDbm(level));

/** Name of a sheet, with its point where it has several. */
export const nameOf = ({ measurement, point }: Pick<RowResult, 'measurement' | 'point'>): string =>
  titleOf(measurement, point);

const levelBand = (style: Style, level: number, of: { readonly expanded: number }): string =>
  `${levelText(style, { levelDbm: level, decimals: placesOf(of) })} ${bandText(style, of)}`;

const ratioText = (style: Style, pair: Pair): string =>
  isBeyondAll(pair) ? strings.infinite : numberText(style, { value: size(pair), decimals: 2 });

const differenceText = (style: Style, { compared }: Pair): string =>
  changeText(style, { value: compared.difference, decimals: placesOf(compared), unit: 'dB' });

/** Whether two differ with nothing left to differ by: over no uncertainty at all, any difference is without end. */
const isBeyondAll = ({ compared: { normalisedError, compatible } }: Pair): boolean =>
  normalisedError === undefined && !compatible;

const size = (pair: Pair): number =>
  isBeyondAll(pair) ? Number.POSITIVE_INFINITY : Math.abs(pair.compared.normalisedError ?? 0);

/** The pair that agrees least. */
const worstOf = (pairs: readonly Pair[]): Pair | undefined => pairs.toSorted((a, b) => size(b) - size(a))[0];

function agreement(style: Style, { pairs, consistent }: Comparison): readonly Answer[] {
  const worst = worstOf(pairs);
  if (worst === undefined) return [];
  const names = { first: nameOf(worst.first), second: nameOf(worst.second) };
  const verdict = consistent ? strings.agree : strings.disagree;
  if (pairs.length > 1) {
    const apart = strings.difference(names);
    const words = isBeyondAll(worst)
      ? strings.worstBeyond(apart)
      : strings.worst(ratioText(style, worst), apart);
    return [{ figure: verdict, words }];
  }
  const { compared } = worst;
  const words =
    compared.normalisedError === undefined
      ? strings.exact[compared.compatible ? 'alike' : 'apart']
      : strings.ratio({ ratio: ratioText(style, worst), allowed: bandText(style, compared) });
  return [
    { figure: differenceText(style, worst), words: strings.difference(names) },
    { figure: verdict, words },
  ];
}

/** The answers: difference, whether they agree, and what they say together. */
export function answersOf(comparison: Comparison, style: Style = 'shown'): readonly Answer[] {
  const { mean, consistent } = comparison;
  if (mean === undefined) return [];
  const first = agreement(style, comparison);
  if (!consistent) return [...first, { figure: strings.noMean, words: strings.noMeanWords }];
  const { lower, upper } = mean.propagation.interval;
  const power = powerIntervalText(style, { lowerW: watts(lower), upperW: watts(upper) });
  const words = strings.together(power, factorOf(style, mean.propagation));
  return [...first, { figure: levelBand(style, mean.value, mean.propagation), words }];
}

/** What they share, how the mean weighs them, and whether they measure the same thing, in sentences. */
export function notesOf({ pairs, mean, consistent, rows, differing }: Comparison): readonly string[] {
  if (mean === undefined) return [];
  const shared = Math.max(...pairs.map(({ compared }) => compared.shared));
  const results = rows.flatMap(({ result }) => result ?? []);
  const list = results
    .map(
      (row, i) =>
        `“${nameOf(row)}” ${percentText('shown', { percent: 100 * (mean.weights[i] ?? 0), decimals: 0 })}`,
    )
    .join(', ');
  // a covariance is a difference of squares: what is left of it by rounding is nothing
  const said =
    shared > 1e-6
      ? strings.sharedPart(dbText('shown', { db: shared, decimals: placesOf({ expanded: shared }) }))
      : strings.nothingShared;
  return [
    ...(differing.length > 0
      ? [[strings.differingLead, ...differing.map((what) => strings.differing[what])].join(' ')]
      : []),
    said,
    ...(consistent ? [strings.weights(list)] : []),
  ];
}

/** One line of the table of pairs; texts as shown. */
export interface PairLine {
  readonly pair: string;
  readonly difference: string;
  readonly expanded: string;
  readonly ratio: string;
  readonly verdict: string;
}

export const pairLines = ({ pairs }: Comparison): readonly PairLine[] =>
  pairs.map((pair) => ({
    pair: strings.difference({ first: nameOf(pair.first), second: nameOf(pair.second) }),
    difference: differenceText('shown', pair),
    expanded: bandText('shown', pair.compared),
    ratio: ratioText('shown', pair),
    verdict: pair.compared.compatible ? strings.agree : strings.disagree,
  }));

const NO_LIMITS = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY };

/** Rows of the figure: the sheets, and what they say together. */
export function chartPoints({ rows, mean, consistent }: Comparison): readonly ChartPoint[] {
  const sheets = rows.flatMap(({ result }): ChartPoint[] => {
    if (result === undefined) return [];
    const { levelDbm: estimate, propagation, point } = result;
    const { lower = NO_LIMITS.lower, upper = NO_LIMITS.upper } = point.specification;
    return [
      {
        id: result.id,
        label: nameOf(result),
        word: levelBand('shown', estimate, propagation),
        band: { ...propagation.interval, estimate },
        specification: { lower, upper },
      },
    ];
  });
  if (mean === undefined || !consistent) return sheets;
  const together: ChartPoint = {
    id: 'mean',
    label: strings.figure.mean,
    word: levelBand('shown', mean.value, mean.propagation),
    band: { ...mean.propagation.interval, estimate: mean.value },
    specification: NO_LIMITS,
  };
  return [...sheets, together];
}

/** The settled state in spoken sentences. */
export const summarise = (comparison: Comparison): string =>
  comparison.mean === undefined ? missing(comparison) : answersAloud(answersOf(comparison, 'spoken'));

/** Why nothing is compared. */
export function missing({ refused }: Pick<Comparison, 'refused'>): string {
  return refused === undefined ? strings.tooFew : strings.refused(refused);
}
