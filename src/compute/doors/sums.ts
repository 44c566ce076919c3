/** Adding up: what is stated of a part, the model of a result, and the ways to its uncertainty; how it is rounded and checked. */

export type { BandResult } from '../band.ts';
export { evaluateBand, propagatePrefixes } from '../band.ts';
export type { DetailedRow } from '../budget.ts';
export { detailedBudget } from '../budget.ts';
export type { Coverage, CoverageWish } from '../combine/coverage-factor.ts';
export { coverageOf } from '../combine/coverage-factor.ts';
export { estimateOf } from '../combine/estimate.ts';
export { propagate } from '../combine/propagate.ts';
export type { ManyOutputs, Output } from '../combine/propagate-many.ts';
export { propagateMany } from '../combine/propagate-many.ts';
export type { SecondOrder } from '../combine/second-order.ts';
export { secondOrder } from '../combine/second-order.ts';
export { sensitivitiesOf } from '../combine/sensitivities.ts';
export { simulate, simulateAtOnce } from '../combine/simulate.ts';
export type { Simulated, SimulationProgress, SimulationRequest, StopRule } from '../combine/simulation.ts';
export type { Term } from '../combine/term.ts';
export type { IndependentPart } from '../combine/welch-satterthwaite.ts';
export { welchSatterthwaite } from '../combine/welch-satterthwaite.ts';
export { wholeDistribution } from '../combine/whole-distribution.ts';
export { worstCaseOf } from '../combine/worst-case.ts';
export type { ComponentUnit } from '../component.ts';
export { componentOf, degreesFromReliability } from '../component.ts';
export { dominantInputs } from '../dominant.ts';
export { evaluate } from '../evaluate.ts';
export { evaluatePrefixes } from '../evaluate-prefixes.ts';
export type { RootSumSquare } from '../limits-rss.ts';
export { rootSumSquareOfLimits } from '../limits-rss.ts';
export type { Correlation, FunctionModel, Input, Model, SumModel } from '../model.ts';
export type {
  BudgetRow,
  NotWhole,
  Propagation,
  Result,
  WholeDistribution,
  WorstCase,
} from '../result.ts';
export type { OtherShape, RobustnessRow } from '../robustness.ts';
export { robustnessOf } from '../robustness.ts';
export type { RoundingMode } from '../rounding.ts';
export { roundToPlace, roundUncertainty } from '../rounding.ts';
export type { StatedResult } from '../stated-result.ts';
export { statedResult } from '../stated-result.ts';
export type { PercentOf, Source, Statement, StatementUnit } from '../statement.ts';
export type { StepCheck } from '../step-check.ts';
export { checkStep } from '../step-check.ts';
export type { LimitTerm } from '../sum-of-terms.ts';
export { sumOfTerms } from '../sum-of-terms.ts';
export type { Validation } from '../validate.ts';
export { numericalTolerance, validatePropagation } from '../validate.ts';
