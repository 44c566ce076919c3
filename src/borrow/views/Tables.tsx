import { ShareBar } from '../../figures/ShareBar.tsx';
import { WideTable } from '../../widgets/parts/WideTable.tsx';
import type { Calibration } from '../calibration.ts';
import { resultStrings as strings } from '../result-strings.ts';
import { type BudgetLine, placeLines } from '../tables.ts';

/** Place by place: its own readings, and the line. */
export function Places({ calibration }: { readonly calibration: Calibration }) {
  const { table } = strings;
  const withRatio = calibration.checked.claimed !== undefined;
  const columns = [
    'rounds',
    'correction',
    'expanded',
    'line',
    'lineExpanded',
    ...(withRatio ? (['ratio'] as const) : []),
  ] as const;
  return (
    <WideTable
      caption={table.caption}
      columns={[table.at, ...columns.map((name) => table[name])]}
      rows={placeLines(calibration).map((line) => ({
        id: line.id,
        name: line.at,
        cells: columns.map((name) => line[name]),
      }))}
    />
  );
}

/** What makes a value uncertain, the largest share first. */
export function Budget({ lines }: { readonly lines: readonly BudgetLine[] }) {
  const { budget } = strings;
  if (lines.length === 0) return null;
  return (
    <table class="short-budget">
      <caption>{budget.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{budget.part}</th>
          <th scope="col" class="number">
            {budget.uncertainty}
          </th>
          <th scope="col" class="number">
            {budget.share}
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ id, label, uncertainty, share, shareOf }) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            <td class="number">{uncertainty}</td>
            <td class="number share-cell">
              {share}
              <ShareBar share={shareOf} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
