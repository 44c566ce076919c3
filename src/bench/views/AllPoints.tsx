import { PointsChart } from '../../figures/PointsChart.tsx';
import type { Point } from '../../sheet/measurement.ts';
import type { PointResult } from '../results/point-result.ts';
import { pointsInOrder } from '../words/point-order.ts';
import { pointsStrings as strings } from '../words/points-strings.ts';
import {
  chartPoints,
  coverageNote,
  type PointCells,
  type PointRow,
  pointRows,
  pointsSummary,
} from '../words/points-words.ts';
import { LISTED_IN_TEXT, readingSentences } from '../words/reading-words.ts';
import { shownWords } from '../words/verdict-words.ts';

const FRAMES = ['wide', 'narrow'] as const;
const COLUMNS = [
  'estimate',
  'expanded',
  'watts',
  'verdict',
  'probability',
  'dominant',
] as const satisfies readonly (keyof PointCells)[];

/** The result over several points as a chart and a table. */
export function AllPoints({
  points,
  all,
}: {
  points: readonly Point[];
  all: readonly (PointResult | undefined)[];
}) {
  const ordered = pointsInOrder('shown', points, all);
  const summary = pointsSummary(ordered);
  const note = coverageNote('shown', ordered);
  return (
    <>
      <p class="measure">{summary}</p>
      <div class="figure-place">
        {FRAMES.map((frame) => (
          <PointsChart
            key={frame}
            frame={frame}
            points={chartPoints(ordered)}
            name={strings.chartName}
            description={strings.chartDescription(summary)}
          />
        ))}
      </div>
      <section class="scroll" aria-label={strings.region} tabIndex={0}>
        <table class="points">
          <caption>{strings.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{strings.point}</th>
              {COLUMNS.map((name) => (
                <th key={name} scope="col">
                  {strings[name]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {pointRows('shown', ordered).map((line) => (
              <Row key={line.id} line={line} />
            ))}
          </tbody>
        </table>
      </section>
      {note && <p class="small">{note}</p>}
      <ul class="on-paper">
        {ordered.map(
          ({ point, label, result }) =>
            result && (
              <li key={point.id}>
                {label}: {readingSentences('shown', result.sheet, LISTED_IN_TEXT).join(' ')}
              </li>
            ),
        )}
      </ul>
    </>
  );
}

function Row({ line }: { line: PointRow }) {
  return (
    <tr>
      <th scope="row">{line.label}</th>
      {line.state === 'numbered' ? (
        COLUMNS.map((name) => <td key={name}>{line[name]}</td>)
      ) : (
        <td colSpan={COLUMNS.length}>
          {line.state === 'pending' ? strings.pending : shownWords(line.reason)}
        </td>
      )}
    </tr>
  );
}
