import { ShareBar } from '../../figures/ShareBar.tsx';
import type { BudgetState } from './spec.ts';
import { strings } from './strings.ts';
import { footOf, rowsOf } from './words.ts';

/** The budget: a row a part, with what it does to the result, and what all come to. */
export function BudgetTable({ state }: { state: BudgetState }) {
  const { part, u, sensitivity, contribution, share, freedom } = strings.columns;
  const foot = footOf(state);
  return (
    <section class="scroll" aria-label={strings.region} tabIndex={0}>
      <table class="parts-table">
        <caption>{strings.caption[state.subject]}</caption>
        <thead>
          <tr>
            <th scope="col">{part}</th>
            {[u, sensitivity, contribution, share, freedom].map((name) => (
              <th key={name} scope="col" class="number">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rowsOf(state).map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.label}</th>
              <td class="number">{row.u}</td>
              <td class="number">{row.sensitivity}</td>
              <td class="number">{row.contribution}</td>
              <td class="number">
                {row.share} <ShareBar share={row.shareOf} />
              </td>
              <td class="number">{row.freedom}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={3}>
              {strings.combined}
            </th>
            <td class="number">{foot.u}</td>
            <td />
            <td class="number">{foot.freedom}</td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}
