import {
  type BudgetRow,
  componentOf,
  coverageOf,
  roundUncertainty,
  type StatedResult,
  type SumModel,
  statedResult,
} from '#compute';
import { bandOf } from './band.ts';
import { clubSheet } from './club.ts';
import { COMPARISONS, gaugeModel } from './end-gauge.ts';
import { meterModel } from './meter-model.ts';

/** Whose budget: the club's hidden transmitter, in dB, or the end gauge of GUM H.1, in nanometres. */
export const SUBJECTS = ['club', 'gauge'] as const;
export type BudgetSubject = (typeof SUBJECTS)[number];

/** Where the coverage factor comes from: 2 by agreement, or from Student's t for a probability. */
export const COVERAGES = ['two', 'p95', 'p99'] as const;
export type CoverageChoice = (typeof COVERAGES)[number];

/** A budget and how its result is written down. */
export interface BudgetUse {
  readonly subject: BudgetSubject;
  /** How many readings were taken, or how often the gauges were compared. */
  readonly count: number;
  /** Experimental standard deviation of the club's readings, in dB; that of the gauges is the Guide's. */
  readonly scatterDb: number;
  readonly coverage: CoverageChoice;
  /** Significant digits of the uncertainty that is stated. */
  readonly digits: 1 | 2;
  /** Whether u, the degrees of freedom and the factor are rounded before they are used again, as print does. */
  readonly onTheWay: boolean;
}

/** The club's budget as it is first shown. */
export const clubUse = (): BudgetUse => ({
  subject: 'club',
  count: 3,
  scatterDb: 0.2,
  coverage: 'two',
  digits: 2,
  onTheWay: false,
});

/** The end gauge as the Guide works it out: 99 %, rounded on the way. */
export const printedGauge = (): BudgetUse => ({
  ...clubUse(),
  subject: 'gauge',
  count: COMPARISONS,
  coverage: 'p99',
  onTheWay: true,
});

/** The sum behind a budget: in dBm, or in nanometres. */
export function budgetModel({ subject, count, scatterDb }: BudgetUse): SumModel {
  if (subject === 'gauge') return gaugeModel(count);
  const chain = meterModel(clubSheet());
  const statement = { form: 'readings', standardDeviation: scatterDb, count } as const;
  return {
    ...chain,
    inputs: [componentOf({ id: 'readings', statement, unit: 'dB' }), ...chain.inputs],
    sensitivities: [1, ...chain.sensitivities],
  };
}

/** What comes of a budget, rounded on the way or not. */
export interface Written {
  readonly estimate: number;
  readonly budget: readonly BudgetRow[];
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly coverageFactor: number;
  readonly coverageProbability: number;
  readonly expanded: number;
  readonly stated: StatedResult;
}

const PROBABILITIES = { p95: 0.95, p99: 0.99 } as const;
/** Decimals of a coverage factor in a printed table. */
const TABLE_DECIMALS = 2;

/** What a coverage choice asks for. */
const wishOf = (coverage: CoverageChoice) =>
  coverage === 'two' ? { coverageFactor: 2 } : { coverageProbability: PROBABILITIES[coverage] };

/** A budget with its result as it is stated. Degrees of freedom are cut to a whole number on the way (GUM G.4.1), u to two digits. */
export function written(use: BudgetUse): Written {
  const { propagation, estimate } = bandOf(budgetModel(use), { coverageFactor: 1 });
  const { onTheWay, digits } = use;
  const standardUncertainty = onTheWay
    ? roundUncertainty({ uncertainty: propagation.standardUncertainty }).value
    : propagation.standardUncertainty;
  const degreesOfFreedom = onTheWay ? Math.floor(propagation.degreesOfFreedom) : propagation.degreesOfFreedom;
  const coverage = coverageOf({ ...wishOf(use.coverage), degreesOfFreedom });
  const coverageFactor = onTheWay
    ? Number(coverage.coverageFactor.toFixed(TABLE_DECIMALS))
    : coverage.coverageFactor;
  const expanded = coverageFactor * standardUncertainty;
  const interval = { lower: estimate - expanded, upper: estimate + expanded };
  return {
    estimate,
    budget: propagation.budget,
    standardUncertainty,
    degreesOfFreedom,
    coverageFactor,
    coverageProbability: coverage.coverageProbability,
    expanded,
    stated: statedResult({ estimate, interval, digits }),
  };
}
