import { levelDbm, levelToPower } from '#compute';
import { plusMinusText } from '../../text/deviation-text.ts';
import { intervalText } from '../../text/interval-text.ts';
import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerIntervalText } from '../../text/power-text.ts';
import { coverageText } from '../../text/probability-text.ts';
import { levelText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import type { PointResult } from '../results/point-result.ts';
import { type BenchResult, wholeInterval } from '../results/result.ts';
import { resultStrings as strings } from './result-strings.ts';
import { verdictSentence } from './verdict-words.ts';

/** Decimals of a limit or a level that has no uncertainty of its own. */
const LEVEL_DECIMALS = 2;
/** A vanishing uncertainty must not ask for a row of zeros. */
const MOST_DECIMALS = 4;

/** Plus-minus with as many digits as it bears: `±0.69 dB`. */
export const halfWidthText = (style: Style, halfWidth: number): string =>
  plusMinusText(style, {
    halfWidth,
    decimals: halfWidth > 0 ? Math.min(decimalsFor(halfWidth), MOST_DECIMALS) : 1,
    unit: 'dB',
  });

/** A level interval with as many digits as its width bears. */
export function levelIntervalText(style: Style, { lower, upper }: { lower: number; upper: number }): string {
  if (!(upper > lower)) return levelText(style, { levelDbm: lower, decimals: LEVEL_DECIMALS });
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, decimalsFor((upper - lower) / 2)));
  return intervalText(style, { lower, upper, decimals, unit: 'dBm' });
}

/** The same in watts. */
export const wattsIntervalText = (style: Style, { lower, upper }: { lower: number; upper: number }): string =>
  powerIntervalText(style, {
    lowerW: levelToPower(levelDbm(lower)),
    upperW: levelToPower(levelDbm(upper)),
  });

/** A whole distribution that is wider or narrower than the bell by less than this share of U has its coverage, near enough to say “about”. */
const LIKE_A_BELL = 0.08;

/** What the level with its plus-minus says: with few degrees of freedom the coverage factor is larger than 2. */
export function expandedWords(style: Style, { chain }: BenchResult): string {
  const { coverageFactor: factor, coverageProbability: probability, expanded } = chain.result.propagation;
  if (expanded === 0) return strings.exact;
  const whole = wholeInterval(chain);
  const ratio = whole === undefined ? 1 : (whole.upper - whole.lower) / (2 * expanded);
  const says =
    ratio < 1 - LIKE_A_BELL
      ? strings.expandedMore
      : ratio > 1 + LIKE_A_BELL
        ? strings.expandedLess
        : strings.expanded;
  return says(coverageText(style, { factor, probability }));
}

/** What improving the dominant part would leave. */
export function improvementWords(style: Style, { improvement }: BenchResult): string | undefined {
  if (improvement === undefined) return undefined;
  const { share, halvedDb, perfectDb, others, labels } = improvement;
  const say = others > 0 ? strings.halvedTogether : labels.length > 1 ? strings.halvedOne : strings.halved;
  return say({
    share: percentText(style, { percent: 100 * share, decimals: 0 }),
    halved: halfWidthText(style, halvedDb),
    perfect: perfectDb > 0 ? halfWidthText(style, perfectDb) : strings.nothing,
  });
}

/** How good the measurement alone is where the transmitter's own spread is stated beside it. */
export function aloneWords(style: Style, { alone, chain }: BenchResult): string | undefined {
  if (alone === undefined) return undefined;
  return strings.alone({
    alone: halfWidthText(style, alone.expanded),
    all: halfWidthText(style, chain.result.propagation.expanded),
  });
}

/** The settled state in one spoken sentence. */
export function summarise(shown: PointResult): string {
  if (!shown.inRange) return outOfRangeText('spoken', shown.reason);
  const { chain } = shown.result;
  return `${levelAnswer('spoken', chain)}, ${wattsAnswer('spoken', chain)}. ${verdictSentence(shown)}.`;
}
