import type { EntryProblem } from '../collector.ts';
import { controlId, type FieldPath } from '../keys.ts';
import { strings } from '../strings.ts';

/** What cannot be used yet, each with a way to its field; the result is then that of the last usable entries. */
export function ProblemsPart({
  problems,
  shownTitle,
}: {
  problems: readonly EntryProblem[];
  shownTitle: string;
}) {
  if (problems.length === 0) return null;
  return (
    <div class="caution bench-problems">
      <p>
        <strong>{strings.problems(problems.length)}.</strong> {strings.stale(shownTitle)}
      </p>
      <ul class="needs-script">
        {problems.map(({ path, label, problem }) => (
          <li key={path}>
            <button type="button" class="plain" onClick={() => focusField(path)}>
              {label}
            </button>{' '}
            {problem}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Brings the reader to a field, and unfolds what it may be folded into. */
function focusField(path: FieldPath): void {
  const control = document.getElementById(controlId(path));
  const folded = control?.closest('details');
  if (folded) folded.open = true;
  control?.focus();
}
