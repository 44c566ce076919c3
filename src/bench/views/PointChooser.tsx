import { isolated } from '../../text/isolate.ts';
import { FORM_CONTROLS, pointButtonId } from '../form/focus-after.ts';
import { pointPath } from '../form/keys.ts';
import type { EntryProblem } from '../read/collector.ts';
import { MOST_POINTS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import type { PointProps } from './context.ts';

/** Name of a point: the reader's own, else its frequency, else its number. */
const pointName = (point: PointProps['point'], index: number): string =>
  isolated(point.label.trim()) || point.frequency.trim() || strings.point.unnamed(index + 1);

const isFaulty = (problems: readonly EntryProblem[], id: string): boolean =>
  problems.some(({ path }) => path.startsWith(pointPath(id, '')));

/** Which of several points is shown and edited. */
export function PointChooser({ entries, problems, point, send }: PointProps) {
  const { points } = entries;
  if (points.length < 2) return null;
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset inside two others would be read out with each button */}
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
      <p class="field-help point-help">{strings.point.chooseHelp}</p>
    </>
  );
}

/** Buttons to add a point and to take the shown one away. */
export function PointActions({ entries, point, send }: Omit<PointProps, 'problems'>) {
  const { points } = entries;
  const full = points.length >= MOST_POINTS;
  return (
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
      {points.length > 1 && (
        <button type="button" class="plain" onClick={() => send({ type: 'removePoint', id: point.id })}>
          {strings.point.remove(pointName(point, points.indexOf(point)))}
        </button>
      )}
      <span class="field-help">{full ? strings.point.most(MOST_POINTS) : strings.point.addHelp}</span>
    </p>
  );
}
