import type { EntryProblem } from '../collector.ts';
import { FORM_CONTROLS, pointButtonId } from '../focus-after.ts';
import { pointPath } from '../keys.ts';
import { MOST_POINTS } from '../spec.ts';
import { strings } from '../strings.ts';
import type { PointProps } from './context.ts';

/** Name of a point: the reader's own, else its frequency, else its number. */
export const pointName = (point: PointProps['point'], index: number): string =>
  point.label.trim() || point.frequency.trim() || strings.point.unnamed(index + 1);

const isFaulty = (problems: readonly EntryProblem[], id: string): boolean =>
  problems.some(({ path }) => path.startsWith(pointPath(id, '')));

/** Which point is shown and edited, with buttons to add one and to take this one away. */
export function PointChooser({ entries, problems, point, send }: PointProps) {
  const { points } = entries;
  const many = points.length > 1;
  const full = points.length >= MOST_POINTS;
  return (
    <div class="points">
      {many && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset inside two others would be read out with each button
        <div class="point-row" role="group" aria-label={strings.point.choose}>
          {points.map((each, index) => (
            <button
              key={each.id}
              type="button"
              class="point-button"
              id={pointButtonId(each.id)}
              aria-pressed={each.id === point.id}
              onClick={() => send({ type: 'showPoint', id: each.id })}
            >
              {pointName(each, index)}
              {isFaulty(problems, each.id) && (
                <>
                  <span aria-hidden="true" class="point-faulty" />
                  <span class="visually-hidden">{`, ${strings.point.faulty}`}</span>
                </>
              )}
            </button>
          ))}
        </div>
      )}
      {many && <p class="field-help">{strings.point.chooseHelp}</p>}
      <p class="point-actions">
        <button
          type="button"
          class="plain"
          id={FORM_CONTROLS.addPoint}
          disabled={full}
          onClick={() => send({ type: 'addPoint' })}
        >
          {strings.point.add}
        </button>
        {many && (
          <button type="button" class="plain" onClick={() => send({ type: 'removePoint', id: point.id })}>
            {strings.point.remove(pointName(point, points.indexOf(point)))}
          </button>
        )}
        <span class="field-help">{full ? strings.point.most(MOST_POINTS) : strings.point.addHelp}</span>
      </p>
    </div>
  );
}
