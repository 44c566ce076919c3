import type { Interval, Specification } from '#compute';
import { fewestDecimals } from '../../text/place.ts';
import { addedShare, probabilityText } from '../../text/probability-text.ts';
import { numberText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { specificationText } from '../../text/summary/verdict-line.ts';
import { licenceVerdictWords, sidesOf, verdictWords } from '../../text/words.ts';
import type { NumberedPoint } from '../results/point-result.ts';
import { resultStrings } from './result-strings.ts';
import { halfWidthText } from './result-words.ts';

const strings = resultStrings.verdict;

/** Decimals of an acceptance limit: those of a level. */
const LEVEL_DECIMALS = 2;
/** Nobody states a rule to more decimals than this. */
const RULE_DECIMALS = 3;

/** What of a point its verdict is told by. */
export type Judged = Pick<NumberedPoint, 'result' | 'point'>;

/** Words with true apostrophes, as the page shows them. */
export const shownWords = (words: string): string => words.replaceAll("'", '’');

/** The verdict as a sentence of its own; one-sided specifications and licences have their own words. */
export function verdictSentence({
  result: { judgement },
  point: { specification, licence },
}: Judged): string {
  const words = shownWords(
    licence
      ? licenceVerdictWords(judgement.verdict)
      : verdictWords(judgement.verdict, sidesOf(specification)),
  );
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}

/** Probability of conformity as one says it; undefined where the verdict speaks of none. */
export function conformityText(
  style: Style,
  { result: { judgement } }: Pick<Judged, 'result'>,
): string | undefined {
  const { probabilityOfConformity: probability } = judgement;
  return probability === undefined ? undefined : probabilityText(style, addedShare(probability));
}

/** What the verdict rests on: probability, rule, acceptance limits; and what a licence asks for besides. */
export function verdictReasons(style: Style, judged: Judged): readonly string[] {
  const { judgement, chain } = judged.result;
  const { rule } = chain.sheet;
  const probability = conformityText(style, judged);
  return [
    ...(probability === undefined ? [] : [strings.probability(probability)]),
    ruleSentence(style, rule),
    ...(rule.kind === 'simple'
      ? []
      : [acceptanceWords(style, judgement.acceptance, judgement.neededExpanded)]),
    ...(judged.point.licence ? [strings.licence] : []),
  ];
}

function ruleSentence(style: Style, rule: Judged['result']['chain']['sheet']['rule']): string {
  switch (rule.kind) {
    case 'simple':
      return strings.rule.simple;
    case 'guardBand': {
      const decimals = fewestDecimals(rule.multiplier, RULE_DECIMALS);
      return strings.rule.guardBand(numberText(style, { value: rule.multiplier, decimals }));
    }
    case 'probability': {
      const percent = Number((100 * rule.required).toFixed(RULE_DECIMALS));
      return strings.rule.probability(
        percentText(style, { percent, decimals: fewestDecimals(percent, RULE_DECIMALS) }),
      );
    }
  }
}

function acceptanceWords(style: Style, acceptance: Interval | undefined, needed: number | undefined): string {
  if (acceptance !== undefined) return strings.accepted(specificationText(style, placed(acceptance), 'dBm'));
  return needed === undefined ? strings.noneAccepted : strings.needed(halfWidthText(style, needed));
}

/** Acceptance limits to the place of a level, an infinite one left out. */
function placed({ lower, upper }: Interval): Specification {
  const place = (value: number): number => Number(value.toFixed(LEVEL_DECIMALS));
  return {
    ...(Number.isFinite(lower) && { lower: place(lower) }),
    ...(Number.isFinite(upper) && { upper: place(upper) }),
  };
}
