import { componentOf, propagate, type Statement, type SumModel, worstCaseOf } from '#compute';

const modelOf = (statements: readonly Statement[], cause?: string): SumModel => ({
  kind: 'sum',
  constant: 0,
  inputs: statements.map((statement, k) =>
    componentOf({ id: `part ${k + 1}`, statement, unit: 'dB', cause }),
  ),
  sensitivities: statements.map(() => 1),
});

/** Limits of which nothing else is known. */
export const limits = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });

/** Limits of something that swings like a sine of unknown phase. */
export const swinging = (halfWidth: number): Statement => ({ form: 'limits', shape: 'arcsine', halfWidth });

/** An expanded uncertainty with k = 2. */
export const expanded = (value: number): Statement => ({
  form: 'expanded',
  expanded: value,
  coverageFactor: 2,
});

/** A standard uncertainty. */
export const standard = (value: number): Statement => ({
  form: 'standard',
  standardUncertainty: value,
});

/** Standard uncertainty of a sum of parts in decibels: independent ones, or all from one cause. */
export const uncertaintyOf = (statements: readonly Statement[], cause?: string): number =>
  propagate({ model: modelOf(statements, cause) }).standardUncertainty;

/** Largest deviation of a sum of parts in decibels, all at their limits at once. */
export const worstOf = (statements: readonly Statement[]): number =>
  worstCaseOf({ model: modelOf(statements) }).interval.upper;
