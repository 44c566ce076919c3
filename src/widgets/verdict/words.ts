import type { Judgement, Rule } from '#compute';
import { distanceInU, judgedBy, riskAtEdge, sortedBy } from '../../sheet/conformity.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { intervalText } from '../../text/interval-text.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { UnitName } from '../../text/units.ts';
import type { Answer } from '../parts/answer.ts';
import { formOf } from './item.ts';
import { shareText } from './share-text.ts';
import { heldOf, type VerdictState } from './spec.ts';
import { strings } from './strings.ts';

/** A difference of levels is a ratio. */
const bandUnit = (unit: UnitName): UnitName => (unit === 'dBm' ? 'dB' : unit);

const multiplierText = ({ multiplier }: VerdictState): string =>
  numberText('shown', { value: multiplier, decimals: 2 });
const requiredText = (style: Style, { required }: VerdictState): string =>
  percentText(style, { percent: required, decimals: 1 });

/** The rule of a state in a few words. */
function ruleText(style: Style, state: VerdictState): string {
  const { simple, guardBand, probability } = strings.ruleNamed;
  if (state.rule === 'simple') return simple;
  return state.rule === 'guardBand'
    ? guardBand(multiplierText(state))
    : probability(requiredText(style, state));
}

function verdictAnswer(style: Style, state: VerdictState, { verdict }: Judgement): Answer {
  const { unit, decimals } = formOf(state.item);
  const { estimate, standardUncertainty } = heldOf(state);
  const band = { halfWidth: 2 * standardUncertainty, decimals, unit: bandUnit(unit) };
  return {
    figure: strings.verdict[verdict],
    words: strings.verdictWords({
      reading: quantityText(style, { value: estimate, decimals, unit }),
      band: plusMinusText(style, band),
      rule: ruleText(style, state),
    }),
  };
}

function chanceAnswer(style: Style, state: VerdictState, { probabilityOfConformity }: Judgement): Answer {
  const distance = distanceInU(heldOf(state));
  return {
    figure: strings.conforms(shareText(style, probabilityOfConformity ?? 0)),
    words: strings.conformsWords(
      numberText(style, { value: Math.abs(distance), decimals: 2 }),
      distance >= 0,
    ),
  };
}

/** The readings that a rule calls inside, in words. */
export function acceptedText(style: Style, state: VerdictState, { acceptance }: Judgement): string {
  const { unit, decimals } = formOf(state.item);
  if (acceptance === undefined) return strings.none;
  const { lower, upper } = acceptance;
  const at = (value: number): string => quantityText(style, { value, decimals, unit });
  if (!Number.isFinite(lower)) return strings.upTo(at(upper));
  return Number.isFinite(upper)
    ? intervalText(style, { lower, upper, decimals, unit })
    : strings.from(at(lower));
}

function acceptedAnswer(style: Style, state: VerdictState, judgement: Judgement): Answer {
  const { unit, decimals } = formOf(state.item);
  const risk = riskAtEdge(heldOf(state));
  if (risk !== undefined)
    return {
      figure: strings[style === 'spoken' ? 'called' : 'accepted'](acceptedText(style, state, judgement)),
      words: strings.acceptedWords(shareText(style, risk)),
    };
  const needed = { value: judgement.neededExpanded ?? 0, decimals, unit: bandUnit(unit) };
  return {
    figure: strings.none,
    words: strings.noneWords(quantityText(style, needed), state.rule === 'guardBand'),
  };
}

/** Verdict, probability, and what would be accepted. */
export function answersOf(state: VerdictState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const judgement = judgedBy(heldOf(state));
  return [
    verdictAnswer(style, state, judgement),
    chanceAnswer(style, state, judgement),
    acceptedAnswer(style, state, judgement),
  ];
}

/** The settled state in one spoken sentence. */
export function summarise(state: VerdictState): string {
  const [verdict, chance, accepted] = answersOf(state, 'spoken');
  return aloud([`${verdict.figure}: ${verdict.words}`, `${chance.figure} the limits`, accepted.figure]);
}

/** What a rule does to a thousand such things. */
export interface RiskRow {
  readonly kind: Rule['kind'];
  readonly name: string;
  readonly cells: readonly [string, string, string];
}

const KINDS = ['simple', 'guardBand', 'probability'] as const;

/** What each of the three rules does to a thousand such things; none where nobody knows how they spread. */
export function riskRows(state: VerdictState): readonly RiskRow[] {
  const { rules } = strings.risks;
  const names: Readonly<Record<Rule['kind'], string>> = {
    simple: rules.simple,
    guardBand: rules.guardBand(multiplierText(state)),
    probability: rules.probability(requiredText('shown', state)),
  };
  const count = (share: number): string => numberText('shown', { value: 1000 * share, decimals: 1 });
  return KINDS.flatMap((kind): RiskRow[] => {
    const risks = sortedBy(heldOf(state, kind));
    if (risks === undefined) return [];
    const { accepted, consumer, producer } = risks;
    return [{ kind, name: names[kind], cells: [count(accepted), count(consumer), count(producer)] }];
  });
}

/** How many of the thousand are good, and how many of those sent back; nothing where nobody knows. */
export function riskNote(state: VerdictState): string | undefined {
  const risks = sortedBy(heldOf(state));
  if (risks === undefined) return undefined;
  return strings.risks.note({
    good: numberText('shown', { value: 1000 * risks.conforming, decimals: 0 }),
    among: percentText('shown', { percent: 100 * risks.conformingAmongRejected, decimals: 0 }),
  });
}
