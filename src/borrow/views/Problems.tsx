import { controlId } from '../../bench/form/keys.ts';
import type { EntryProblem } from '../../bench/read/collector.ts';
import { strings } from '../strings.ts';

/** What cannot be used yet, each with a way to its field. */
export function Problems({ problems }: { readonly problems: readonly EntryProblem[] }) {
  if (problems.length === 0) return null;
  return (
    <div class="caution bench-problems">
      <p>
        <strong>{strings.problems(problems.length)}.</strong> {strings.stale}
      </p>
      <ul class="needs-script">
        {problems.map(({ path, label, problem }) => (
          <li key={path}>
            <button
              type="button"
              class="plain"
              onClick={() => document.getElementById(controlId(path))?.focus()}
            >
              {label}
            </button>{' '}
            {problem}
          </li>
        ))}
      </ul>
    </div>
  );
}
