import { useLayoutEffect, useRef } from 'preact/hooks';
import { blankStrings } from '../blank-strings.ts';
import { controlId, type FieldPath, pointPath } from '../form/keys.ts';
import type { BenchAction } from '../state/actions.ts';
import type { BenchState } from '../state/state.types.ts';
import { strings } from '../strings.ts';

interface ProblemsPartProps {
  readonly state: Pick<BenchState, 'problems' | 'entries' | 'point'>;
  /** Title of the sheet whose last usable entries are shown; undefined where nothing is. */
  readonly shownTitle: string | undefined;
  readonly send: (action: BenchAction) => void;
}

/** What cannot be used yet, each with a way to its field; the result is then that of the last usable entries, or there is none. */
export function ProblemsPart({ state, shownTitle, send }: ProblemsPartProps) {
  const wanted = useRef<FieldPath>();
  useLayoutEffect(() => {
    if (wanted.current !== undefined && focusField(wanted.current)) wanted.current = undefined;
  });
  const { problems, entries } = state;
  if (problems.length === 0) return null;
  const goTo = (path: FieldPath): void => {
    if (focusField(path)) return;
    const point = entries.points.find(({ id }) => path.startsWith(pointPath(id, '')));
    if (point === undefined) return;
    // its fields are there once the point is shown
    wanted.current = path;
    send({ type: 'showPoint', id: point.id });
  };
  return (
    <div class="caution bench-problems">
      <p>
        <strong>
          {(shownTitle === undefined ? blankStrings.needed : strings.problems)(problems.length)}.
        </strong>
        {shownTitle !== undefined && ` ${strings.stale(shownTitle)}`}
      </p>
      <ul class="needs-script">
        {problems.map(({ path, label, problem }) => (
          <li key={path}>
            <button type="button" class="plain" onClick={() => goTo(path)}>
              {label}
            </button>{' '}
            {problem}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Brings the reader to a field, and unfolds what it may be folded into; false if the page has no such field now. */
function focusField(path: FieldPath): boolean {
  const control = document.getElementById(controlId(path));
  if (control === null) return false;
  const folded = control.closest('details');
  if (folded) folded.open = true;
  control.focus();
  return true;
}
