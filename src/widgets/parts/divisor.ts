import { componentOf, type Statement } from '#compute';
import { amountOf } from '../../sheet/amount.ts';
import { numberText } from '../../text/quantity-text.ts';

const ROOTS = { rectangular: '√3', triangular: '√6', arcsine: '√2' } as const;

/**
 * What a stated amount is divided by to get the standard uncertainty (GUM 4.3): as a root where the shape has one, else as
 * the number that the computation divides by.
 */
export function divisorText(statement: Statement): string {
  if (statement.form === 'limits') return ROOTS[statement.shape];
  if (statement.form === 'displayStep') return '√12';
  if (statement.form === 'readings') return `√${statement.count}`;
  const amount = amountOf(statement);
  const { standardUncertainty, distribution } = componentOf({ id: 'divisor', statement, unit: 'own' });
  const u = standardUncertainty ?? distribution.standardDeviation ?? 0;
  return amount > 0 && u > 0 ? numberText('shown', { value: amount / u, decimals: 2 }) : '';
}
