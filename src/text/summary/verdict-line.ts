import type { Judgement, Rule, Specification } from '#compute';
import { plusMinusText } from '../deviation-text.ts';
import { intervalText } from '../interval-text.ts';
import { probabilityText, shareText } from '../probability-text.ts';
import { numberText, quantityText } from '../quantity-text.ts';
import type { Style } from '../style.ts';
import type { UnitName } from '../units.ts';
import { decidedByWords, licenceVerdictWords, ruleWords, sidesOf, verdictWords } from '../words.ts';
import { type Line, line, type Piece } from './piece.ts';
import { decimalsOf, differenceUnit, type Stated } from './result-lines.ts';

/** A verdict with what it was judged by. */
export interface Judged {
  readonly specification: Specification;
  readonly rule: Rule;
  readonly judgement: Judgement;
  /** Whether the upper limit is that of a licence, which has words of its own. */
  readonly licence?: true;
}

type Part = string | Piece | ((style: Style) => string);

/** A level that was stated in watts has no end: what is copied keeps enough of it to be checked. */
const MOST_PLACES = 4;

/** Decimals that a limit needs to be written as it was stated, up to these where three do not do. */
function statedPlaces(value: number, most = MOST_PLACES): number {
  const places = [0, 1, 2, 3].find((decimals) => Math.abs(Number(value.toFixed(decimals)) - value) < 1e-9);
  return places ?? most;
}

/** "25.5 to 28.5 dBm", "at most 27 dBm", "at least 25.5 dBm"; where three decimals do not do, with so many. */
export function specificationText(
  style: Style,
  { lower, upper }: Specification,
  unit: UnitName,
  most = MOST_PLACES,
): string {
  const limit = (value: number) => quantityText(style, { value, decimals: statedPlaces(value, most), unit });
  const hasLower = lower !== undefined && Number.isFinite(lower);
  const hasUpper = upper !== undefined && Number.isFinite(upper);
  if (hasLower && hasUpper) {
    const decimals = Math.max(statedPlaces(lower, most), statedPlaces(upper, most));
    return intervalText(style, { lower, upper, decimals, unit });
  }
  if (hasUpper) return `at most ${limit(upper)}`;
  return hasLower ? `at least ${limit(lower)}` : 'no limit';
}

/** The rule with its number: `guard band 1 x U`, `required probability 95 %`. */
export function ruleText(style: Style, rule: Rule): string {
  const name = ruleWords[rule.kind];
  if (rule.kind === 'probability') return `${name} ${shareText(style, rule.required)}`;
  if (rule.kind === 'simple') return `${name}, which takes no uncertainty off and cannot answer "can't tell"`;
  const { multiplier } = rule;
  return `${name} of ${numberText(style, { value: multiplier, decimals: statedPlaces(multiplier) })} times U`;
}

/** Where no estimate at all could be inside: the method's shortcoming, and what it would take. */
function shortcoming(stated: Stated, { judgement }: Judged): readonly Part[] {
  const { acceptance, neededExpanded } = judgement;
  if (acceptance !== undefined) return [];
  const short =
    '. Nothing could be inside with this uncertainty: the method falls short, not the transmitter';
  if (neededExpanded === undefined) return [short];
  const unit = differenceUnit(stated.unit);
  const needed = (style: Style) =>
    plusMinusText(style, { halfWidth: neededExpanded, decimals: Math.max(decimalsOf(stated), 0), unit });
  return [short, '; it would take ', needed, ' or better'];
}

/** Verdict, rule, interval that decided and probability of conformity: none of them goes without the others. */
export function verdictLine(stated: Stated, judged: Judged): Line {
  const { specification, rule, judgement, licence } = judged;
  const { verdict, decidedBy, probabilityOfConformity } = judgement;
  const sides = sidesOf(specification);
  const probability: readonly Part[] =
    probabilityOfConformity === undefined
      ? ['no probability, since a worst case speaks of none']
      : ['probability of conformity ', (style) => probabilityText(style, probabilityOfConformity)];
  return line(
    'verdict',
    licence ? 'Licence ' : 'Specification ',
    (style) => specificationText(style, specification, stated.unit),
    ': ',
    licence ? licenceVerdictWords(verdict) : verdictWords(verdict, sides),
    ' (',
    (style) => ruleText(style, rule),
    '; decided by ',
    decidedByWords[decidedBy],
    '; ',
    ...probability,
    ')',
    ...shortcoming(stated, judged),
  );
}
