import type { CoverageWish } from './combine/coverage-factor.ts';
import type { DecidingInterval } from './deciding.ts';
import type { Interval } from './distribution/distribution.ts';
import { evaluate } from './evaluate.ts';
import { exchanged, improved, type LinkIds, linksOf } from './improve.ts';
import type { Input, Model } from './model.ts';
import type { Rule, Specification } from './specification.ts';
import { type Judgement, judge, type Verdict } from './verdict.ts';

/** What is asked of a result, with the model that gives it. */
export interface JudgedModel extends CoverageWish {
  readonly model: Model;
  readonly specification: Specification;
  readonly rule: Rule;
  readonly decidingInterval?: DecidingInterval | undefined;
}

/** What a change would buy. In the unit of the output. */
export interface OutcomeOfChange {
  /** From propagation. */
  readonly expanded: number;
  readonly interval: Interval;
  readonly verdict: Verdict;
  readonly probabilityOfConformity: number | undefined;
}

/** What improving one link would buy. */
export interface LinkHelp {
  /** Ids of the link's inputs: several if they share a cause, since they can only be improved together. */
  readonly link: LinkIds;
  readonly perfect: OutcomeOfChange;
  readonly halved: OutcomeOfChange;
  /** With the better input that was stated for it. */
  readonly replaced: OutcomeOfChange | undefined;
}

function answered({ model, ...question }: JudgedModel): { judgement: Judgement; expanded: number } {
  const { coverageProbability, coverageFactor } = question;
  const result = evaluate({ model, coverageProbability, coverageFactor });
  return { judgement: judge({ ...question, result }), expanded: result.propagation.expanded };
}

function outcomeOf(question: JudgedModel): OutcomeOfChange {
  const { judgement, expanded } = answered(question);
  const { interval, verdict, probabilityOfConformity } = judgement;
  return { expanded, interval, verdict, probabilityOfConformity };
}

/** The question with inputs that might stand for those of the same id. */
export interface HelpQuestion extends JudgedModel {
  readonly better?: readonly Input[];
  /** Which links, in which order; all, in that of the model, if not said. */
  readonly links?: readonly LinkIds[];
}

/**
 * For each link: the result if it were perfect, if it were half as uncertain, and if it were replaced by a stated better one, the
 * reading staying where it is. In steps, each of which evaluates the model once at most: yields a link's help when it is complete
 * and undefined while it is not. The caller stops by not asking for more.
 * @throws RangeError as `evaluate` and `judge`, for a better input that stands for none and a link that the model has not.
 */
export function* helpSteps({
  better = [],
  links,
  ...question
}: HelpQuestion): Generator<LinkHelp | undefined, void> {
  const { model } = question;
  exchanged(model, better);
  for (const link of links ?? linksOf(model)) {
    const perfect = outcomeOf({ ...question, model: improved(model, link, 0) });
    yield undefined;
    const halved = outcomeOf({ ...question, model: improved(model, link, 0.5) });
    yield undefined;
    const others = better.filter(({ id }) => link.includes(id));
    const replaced =
      others.length === 0 ? undefined : outcomeOf({ ...question, model: exchanged(model, others) });
    yield { link, perfect, halved, replaced };
  }
}

/** The one change that would settle the matter, if there is one. */
export type CheapestChange =
  | { readonly kind: 'decided'; readonly verdict: Verdict }
  | {
      readonly kind: 'change';
      readonly link: LinkIds;
      /** To how much of its uncertainty the link must come down, 0 to 1. */
      readonly factor: number;
      readonly verdict: Verdict;
    }
  | { readonly kind: 'none' };

/** Halvings of the search: the factor is right to a thousandth. */
const HALVINGS = 10;

/** To how much a link must come down for a verdict; undefined if even perfect it would not do. One evaluation a step. */
function* factorNeeded(
  question: JudgedModel,
  link: LinkIds,
): Generator<undefined, { factor: number; verdict: Verdict } | undefined> {
  const verdictAt = (factor: number) =>
    answered({ ...question, model: improved(question.model, link, factor) }).judgement.verdict;
  let verdict = verdictAt(0);
  if (verdict === 'cant-tell') return undefined;
  let [factor, tooMuch] = [0, 1];
  for (let n = 0; n < HALVINGS; n++) {
    yield undefined;
    const middle = (factor + tooMuch) / 2;
    const at = verdictAt(middle);
    if (at === 'cant-tell') tooMuch = middle;
    else [factor, verdict] = [middle, at];
  }
  return { factor, verdict };
}

/** The question with what improving a link costs, in any unit; without it all cost alike. */
export interface PricedQuestion extends JudgedModel {
  readonly price?: (link: LinkIds) => number;
}

/**
 * The cheapest single change that turns "can't tell" into a verdict, the reading staying where it is: the link whose price is
 * lowest among those that can do it, or without prices the one that has to be improved least. In steps, each of which evaluates
 * the model once at most; the change comes at the end.
 * @throws RangeError as `evaluate` and `judge`.
 */
export function* cheapestSteps({
  price = () => 0,
  ...question
}: PricedQuestion): Generator<undefined, CheapestChange> {
  const { verdict } = answered(question).judgement;
  if (verdict !== 'cant-tell') return { kind: 'decided', verdict };
  const changes: Extract<CheapestChange, { kind: 'change' }>[] = [];
  for (const link of linksOf(question.model)) {
    yield undefined;
    const needed = yield* factorNeeded(question, link);
    if (needed !== undefined) changes.push({ kind: 'change', link, ...needed });
  }
  const [best] = changes.sort((a, b) => price(a.link) - price(b.link) || b.factor - a.factor);
  return best ?? { kind: 'none' };
}
