import { PointsChart } from '../../figures/PointsChart.tsx';
import { PlainAnswers } from '../../widgets/parts/PlainAnswers.tsx';
import { WideTable } from '../../widgets/parts/WideTable.tsx';
import type { Comparison } from '../compared.ts';
import { strings } from '../strings.ts';
import { answersOf, chartPoints, missing, notesOf, pairLines, summarise } from '../words.ts';

const COLUMNS = ['difference', 'expanded', 'ratio', 'verdict'] as const;

/** What the comparison says: answers, a drawing, sentences, and the pairs where there are several. */
export function ResultPart({ comparison }: { readonly comparison: Comparison }) {
  const { figure } = strings;
  const points = chartPoints(comparison);
  return (
    <>
      {comparison.mean === undefined ? (
        <p class="caution">{missing(comparison)}</p>
      ) : (
        <PlainAnswers answers={answersOf(comparison)} />
      )}
      {points.length > 0 && (
        <figure class="residuals">
          <div class="figure-place">
            {(['wide', 'narrow'] as const).map((frame) => (
              <PointsChart
                key={frame}
                frame={frame}
                points={points}
                name={figure.name}
                description={figure.description(summarise(comparison))}
              />
            ))}
          </div>
          <figcaption class="measure small">{figure.caption}</figcaption>
        </figure>
      )}
      {notesOf(comparison).map((sentence) => (
        <p key={sentence} class="measure">
          {sentence}
        </p>
      ))}
      {comparison.pairs.length > 1 && <Pairs comparison={comparison} />}
    </>
  );
}

function Pairs({ comparison }: { readonly comparison: Comparison }) {
  const { table } = strings;
  return (
    <WideTable
      caption={table.caption}
      columns={[table.pair, ...COLUMNS.map((name) => table[name])]}
      rows={pairLines(comparison).map((line) => ({
        id: line.pair,
        name: line.pair,
        cells: COLUMNS.map((name) => line[name]),
      }))}
    />
  );
}
