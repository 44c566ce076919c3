import type { BudgetRow } from '#compute';
import type { Chain } from '../../sheet/chain.ts';
import { READINGS_ID } from '../../sheet/to-model.ts';
import { percentText, quantityText } from '../../text/quantity-text.ts';
import { distributionText, statementText } from '../../text/statement-text.ts';
import { divisorText } from './divisor.ts';
import { Scroll } from './Scroll.tsx';

const COLUMNS = [
  'Part',
  'Stated',
  'Distribution',
  'Divisor',
  'Standard uncertainty',
  'Sensitivity',
  'Contribution',
  'Share',
  'Degrees of freedom',
] as const;

/** The uncertainty budget (VIM 2.33): a row for each part, the combined result at the foot. */
export function BudgetTable({ chain }: { chain: Chain }) {
  const { propagation } = chain.result;
  return (
    <Scroll label="Uncertainty budget">
      <table class="budget">
        <caption>Uncertainty budget</caption>
        <thead>
          <tr>
            {COLUMNS.map((column, index) => (
              <th key={column} scope="col" class={index >= 3 ? 'number' : undefined}>
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {propagation.budget.map((row) => (
            <Row key={row.id} row={row} chain={chain} />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={6}>
              Combined standard uncertainty
            </th>
            <td class="number">{db(propagation.standardUncertainty)}</td>
            <td class="number">{percentText('shown', { percent: 100, decimals: 0 })}</td>
            <td class="number">{degrees(propagation.degreesOfFreedom)}</td>
          </tr>
        </tfoot>
      </table>
    </Scroll>
  );
}

function Row({ row, chain }: { row: BudgetRow; chain: Chain }) {
  const link = chain.sheet.links.find(({ id }) => id === row.id);
  return (
    <tr>
      <th scope="row">{link?.label ?? (row.id === READINGS_ID ? 'Scatter of the readings' : row.id)}</th>
      <td>{link ? statementText('shown', link) : ''}</td>
      <td>{link ? distributionText(link.statement) : 'Student t'}</td>
      <td class="number">{link ? divisorText(link.statement) : ''}</td>
      <td class="number">{db(row.standardUncertainty)}</td>
      <td class="number">{row.sensitivity}</td>
      <td class="number">{db(row.contribution)}</td>
      <td class="number">
        {percentText('shown', {
          percent: 100 * row.share,
          decimals: row.share > 0 && row.share < 0.01 ? 2 : 0,
        })}
      </td>
      <td class="number">{degrees(row.degreesOfFreedom)}</td>
    </tr>
  );
}

/** Intermediate values keep one digit more than a final result would bear (GUM 7.2.6). */
const db = (value: number): string => quantityText('shown', { value, decimals: 3, unit: 'dB' });

const degrees = (value: number): string => (Number.isFinite(value) ? String(Math.floor(value)) : '∞');
