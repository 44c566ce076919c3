import {
  type CheapestChange,
  cheapestSteps,
  type HelpQuestion,
  helpSteps,
  type LinkHelp,
  type PricedQuestion,
} from '../../src/compute/helpful.ts';

/** What each link would buy, without the pauses between. */
export const whatWouldHelp = (question: HelpQuestion): readonly LinkHelp[] =>
  [...helpSteps(question)].filter((help) => help !== undefined);

/** The cheapest change, without the pauses before it. */
export function cheapestChange(question: PricedQuestion): CheapestChange {
  const steps = cheapestSteps(question);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
