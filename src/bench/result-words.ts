import { levelDbm, levelToPower, mean, type Specification, standardDeviation } from '#compute';
import type { Sheet } from '../sheet/sheet.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { intervalText } from '../text/interval-text.ts';
import { decimalsFor } from '../text/place.ts';
import { powerIntervalText } from '../text/power-text.ts';
import { coverageText, probabilityText } from '../text/probability-text.ts';
import { dbText, levelText, numberText, percentText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import { specificationText } from '../text/summary/verdict-line.ts';
import { sidesOf, verdictWords } from '../text/words.ts';
import { levelAnswer, wattsAnswer } from '../widgets/reading-band/words.ts';
import type { BenchChain } from './chain.ts';
import { typed } from './entries-of.ts';
import type { BenchResult } from './result.ts';
import { resultStrings as strings } from './result-strings.ts';

/** Raw readings up to this many are listed one by one. */
const LISTED_READINGS = 12;
/** Decimals of a limit or a level that has no uncertainty of its own. */
const LEVEL_DECIMALS = 2;

/** A level as it was typed, with its unit. */
const typedLevel = (style: Style, value: number): string =>
  levelText(style, { levelDbm: value, decimals: typed(value).split('.')[1]?.length ?? 0 });

/** Plus-minus with as many digits as it bears: `±0.69 dB`. */
export const halfWidthText = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: halfWidth > 0 ? decimalsFor(halfWidth) : 1, unit: 'dB' });

/** A level interval with as many digits as its width bears. */
export function levelIntervalText(style: Style, { lower, upper }: { lower: number; upper: number }): string {
  if (!(upper > lower)) return levelText(style, { levelDbm: lower, decimals: LEVEL_DECIMALS });
  const decimals = Math.max(0, decimalsFor((upper - lower) / 2));
  return intervalText(style, { lower, upper, decimals, unit: 'dBm' });
}

/** The same in watts. */
export const wattsIntervalText = (style: Style, { lower, upper }: { lower: number; upper: number }): string =>
  powerIntervalText(style, {
    lowerW: levelToPower(levelDbm(lower)),
    upperW: levelToPower(levelDbm(upper)),
  });

/** What was measured, where and how, in sentences: the part of a record that another person needs to repeat it. */
export function recordSentences(style: Style, sheet: Sheet): readonly string[] {
  const { power, plane, conditions } = sheet.measurand;
  return [
    strings.record.of(strings.record.power[power], plane, conditions),
    readingsSentence(style, sheet),
    strings.record.specified(specificationText(style, sheet.specification, 'dBm')),
  ];
}

function readingsSentence(style: Style, { readings, repeatability }: Sheet): string {
  const [first] = readings;
  if (first === undefined) return '';
  if (readings.length === 1) {
    const reading = strings.record.reading(typedLevel(style, first));
    return repeatability ? reading : `${reading} ${strings.record.noScatter}`;
  }
  const s = standardDeviation(readings);
  const scatter = dbText(style, { db: s, decimals: s > 0 ? decimalsFor(s) : 1 });
  const middle = levelText(style, { levelDbm: mean(readings), decimals: LEVEL_DECIMALS });
  const list = readings.map((reading) => numberText(style, { value: reading, decimals: LEVEL_DECIMALS }));
  return readings.length > LISTED_READINGS
    ? strings.record.many({ count: readings.length, mean: middle, scatter })
    : strings.record.readings({ list: list.join(', '), mean: middle, scatter });
}

/** What the level with its plus-minus says: with few degrees of freedom the coverage factor is larger than 2. */
export function expandedWords(style: Style, { result: { propagation } }: BenchChain): string {
  const { coverageFactor: factor, coverageProbability: probability } = propagation;
  return strings.expanded(coverageText(style, { factor, probability }));
}

/** What improving the dominant link would leave. */
export function improvementWords(style: Style, { improvement }: BenchResult): string | undefined {
  if (improvement === undefined) return undefined;
  const { share, halvedDb, perfectDb } = improvement;
  return strings.halved({
    share: percentText(style, { percent: 100 * share, decimals: 0 }),
    halved: halfWidthText(style, halvedDb),
    perfect: halfWidthText(style, perfectDb),
  });
}

/** Words with true apostrophes, as the page shows them. */
export const shownWords = (words: string): string => words.replaceAll("'", '’');

/** The verdict as a sentence of its own; one-sided specifications have their own words. */
export function verdictSentence({ chain, judgement }: BenchResult): string {
  const words = shownWords(verdictWords(judgement.verdict, sidesOf(chain.sheet.specification)));
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}

/** What the verdict rests on: probability, rule, acceptance limits. */
export function verdictReasons(style: Style, result: BenchResult): readonly string[] {
  const { judgement, chain } = result;
  const { rule } = chain.sheet;
  const { probabilityOfConformity: probability, acceptance } = judgement;
  return [
    ...(probability === undefined
      ? []
      : [strings.verdict.probability(probabilityText(style, Math.min(1, Math.max(0, probability))))]),
    rule.kind === 'simple'
      ? strings.verdict.rule.simple
      : rule.kind === 'guardBand'
        ? strings.verdict.rule.guardBand(typed(rule.multiplier))
        : strings.verdict.rule.probability(
            percentText(style, {
              percent: 100 * rule.required,
              decimals: (rule.required * 100) % 1 === 0 ? 0 : 1,
            }),
          ),
    ...(rule.kind === 'simple' ? [] : [acceptanceWords(style, acceptance, judgement.neededExpanded)]),
  ];
}

function acceptanceWords(
  style: Style,
  acceptance: { lower: number; upper: number } | undefined,
  needed: number | undefined,
): string {
  if (acceptance === undefined)
    return needed === undefined
      ? strings.verdict.noneAccepted
      : strings.verdict.needed(halfWidthText(style, needed));
  return strings.verdict.accepted(specificationText(style, rounded(acceptance), 'dBm'));
}

/** Acceptance limits to the place of a level, an infinite one left out. */
function rounded({ lower, upper }: { lower: number; upper: number }): Specification {
  const place = (value: number): number => Number(value.toFixed(LEVEL_DECIMALS));
  return {
    ...(Number.isFinite(lower) && { lower: place(lower) }),
    ...(Number.isFinite(upper) && { upper: place(upper) }),
  };
}

/** The settled state in one spoken sentence. */
export function summarise(result: BenchResult): string {
  const { chain } = result;
  return `${levelAnswer('spoken', chain)}, ${wattsAnswer('spoken', chain)}. ${verdictSentence(result)}.`;
}
