import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import type { Attempt } from '../use-attempt.ts';

/** How many options a digit can choose. */
const keyCount = ({ payload }: ShownSitting): number => {
  if (payload.kind === 'choice') return payload.options.length;
  return payload.kind === 'place' ? payload.places.length : 0;
};

interface AskActionsProps {
  readonly attempt: Attempt;
  /** What stands on the button once it is marked. */
  readonly after: string | undefined;
  readonly sitting: ShownSitting;
}

/** What can be done with an answer: checked, with a doubt, and gone on from. */
export const AskActions = ({ attempt, after, sitting }: AskActionsProps) => (
  <div class="choice-actions needs-script">
    {attempt.marked === undefined && (
      <label class="ask-unsure">
        <input
          type="checkbox"
          checked={attempt.unsure}
          onChange={(event) => attempt.doubt(event.currentTarget.checked)}
        />
        <span>{strings.form.unsure}</span>
      </label>
    )}
    <button type="submit">
      {attempt.marked === undefined ? strings.form.check : (after ?? strings.form.again)}
    </button>
    {attempt.marked === undefined && <span class="small muted">{strings.form.keys(keyCount(sitting))}</span>}
  </div>
);
