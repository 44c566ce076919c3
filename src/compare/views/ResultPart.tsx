import { PointsChart } from '../../figures/PointsChart.tsx';
import { PlainAnswers } from '../../widgets/parts/PlainAnswers.tsx';
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
        <p class="caution" role="status">
          {missing(comparison)}
        </p>
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
    <section class="scroll" aria-label={table.caption} tabIndex={0}>
      <table class="places-table">
        <caption>{table.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{table.pair}</th>
            {COLUMNS.map((name) => (
              <th key={name} scope="col" class="number">
                {table[name]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pairLines(comparison).map((line) => (
            <tr key={line.pair}>
              <th scope="row">{line.pair}</th>
              {COLUMNS.map((name) => (
                <td key={name} class="number">
                  {line[name]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
