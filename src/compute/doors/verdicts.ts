/** Verdicts: a result against a limit, the risk of being wrong, and what would help. */

export type { DecidingInterval } from '../deciding.ts';
export type {
  CheapestChange,
  HelpQuestion,
  JudgedModel,
  LinkHelp,
  OutcomeOfChange,
  PricedQuestion,
} from '../helpful.ts';
export { cheapestSteps, helpSteps } from '../helpful.ts';
export type { LinkIds } from '../improve.ts';
export { exchanged, improved, linksOf } from '../improve.ts';
export type { Risks } from '../risk.ts';
export { risksOf } from '../risk.ts';
export type { Rule, Specification } from '../specification.ts';
export type { TargetUncertainty } from '../target-uncertainty.ts';
export { targetForSpecification, targetForVerdict } from '../target-uncertainty.ts';
export type { Judgement, Verdict } from '../verdict.ts';
export { judge } from '../verdict.ts';
