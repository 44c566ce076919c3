import { positive } from '../quantity.ts';
import type { Statement } from '../statement.ts';

/** The lengths of a statement, by the name of the field that holds them; all else is a pure number. */
function stretched(statement: Statement, times: (length: number) => number): Statement {
  switch (statement.form) {
    case 'limits':
    case 'trapezoid':
    case 'halfWithin':
      return { ...statement, halfWidth: times(statement.halfWidth) };
    case 'uncertainLimits':
      return {
        ...statement,
        halfWidth: times(statement.halfWidth),
        limitHalfWidth: times(statement.limitHalfWidth),
      };
    case 'asymmetric':
      return { ...statement, lower: times(statement.lower), upper: times(statement.upper) };
    case 'expanded':
    case 'coverage':
      return { ...statement, expanded: times(statement.expanded) };
    case 'standard':
      return { ...statement, standardUncertainty: times(statement.standardUncertainty) };
    case 'readings':
      return { ...statement, standardDeviation: times(statement.standardDeviation) };
    case 'displayStep':
      return { ...statement, step: times(statement.step) };
  }
}

/**
 * A statement in the unit of a reading as the same statement in percent of that reading.
 * @param reading in the statement's unit, above zero. @throws RangeError otherwise.
 */
export function inPercentOf(reading: number, statement: Statement): Statement {
  positive('inPercentOf', 'reading', reading);
  return stretched(statement, (length) => (100 * length) / reading);
}
