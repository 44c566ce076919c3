import { componentOf, rangeError, type Statement } from '#compute';
import type { Link, Sheet } from './sheet.ts';

/**
 * The one number of a statement that a reader drags: half-width of limits, or U, u, s, step. For a lopsided statement half
 * of its width, so that dragging keeps its proportions.
 */
export function amountOf(statement: Statement): number {
  switch (statement.form) {
    case 'limits':
    case 'trapezoid':
    case 'uncertainLimits':
    case 'halfWithin':
      return statement.halfWidth;
    case 'asymmetric':
      return (statement.upper - statement.lower) / 2;
    case 'expanded':
    case 'coverage':
      return statement.expanded;
    case 'standard':
      return statement.standardUncertainty;
    case 'readings':
      return statement.standardDeviation;
    case 'displayStep':
      return statement.step;
  }
}

/** The same statement with another amount. @throws RangeError unless amount is finite and >= 0. */
export function withAmount(statement: Statement, amount: number): Statement {
  if (!(Number.isFinite(amount) && amount >= 0))
    throw new RangeError(`withAmount: amount must be >= 0, got ${amount}`);
  switch (statement.form) {
    case 'limits':
    case 'trapezoid':
    case 'halfWithin':
      return { ...statement, halfWidth: amount };
    case 'uncertainLimits':
      return { ...statement, halfWidth: amount, limitHalfWidth: Math.min(statement.limitHalfWidth, amount) };
    case 'asymmetric':
      return { ...statement, ...lopsided(statement, amount) };
    case 'expanded':
    case 'coverage':
      return { ...statement, expanded: amount };
    case 'standard':
      return { ...statement, standardUncertainty: amount };
    case 'readings':
      return { ...statement, standardDeviation: amount };
    case 'displayStep':
      return { ...statement, step: amount };
  }
}

/** Ends in the same proportion to each other, as far apart as twice the amount. */
function lopsided({ lower, upper }: { lower: number; upper: number }, amount: number) {
  const width = upper - lower;
  if (width === 0) return { lower: lower - amount, upper: upper + amount };
  const factor = (2 * amount) / width;
  return { lower: lower * factor, upper: upper * factor };
}

/** The sheet with one link's amount changed; unchanged if no link has that id. */
export const withLinkAmount = (sheet: Sheet, id: string, amount: number): Sheet => ({
  ...sheet,
  links: sheet.links.map((link) =>
    link.id === id ? { ...link, statement: withAmount(link.statement, amount) } : link,
  ),
});

/** Units whose worth in decibels hangs on no reading. */
export const RELATIVE_UNITS = ['dB', 'percentOfPower', 'percentOfVolts', 'percentOfResistance'] as const;

/**
 * Standard uncertainty in dB that one small unit of a link's amount stands for: what turns a drag into an amount.
 * @throws RangeError for a unit of readings (volts, kelvin), whose worth hangs on the reading.
 */
export function linkUncertaintyPerAmount({ statement, unit, percentOf }: Link): number {
  const relative = RELATIVE_UNITS.find((candidate) => candidate === unit);
  if (relative === undefined)
    throw rangeError({
      where: 'linkUncertaintyPerAmount',
      wish: `unit must be one of ${RELATIVE_UNITS.join(', ')}`,
      got: unit,
    });
  const probe = 1e-3;
  const { standardUncertainty, distribution } = componentOf({
    id: 'probe',
    statement: withAmount(statement, probe),
    unit: relative,
    percentOf,
  });
  return (standardUncertainty ?? distribution.standardDeviation ?? 0) / probe;
}
