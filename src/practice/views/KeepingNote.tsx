import type { Keeping } from '../../store/begun.ts';
import { strings } from '../strings.ts';

interface KeepingNoteProps {
  readonly keeping: Keeping;
  /** Goes on with what the other tab has. */
  readonly onTake: () => void;
  /** Keeps what is here as a paper of its own. */
  readonly onApart: () => void;
}

/** Says whether the paper on the table is kept; where another tab has it, asks what is to become of this one. */
export const KeepingNote = ({ keeping, onTake, onApart }: KeepingNoteProps) => (
  <div class="screen-only">
    <p class={keeping === 'kept' ? 'small muted' : 'problem'} role="status">
      {strings.paper.keeping[keeping]}
    </p>
    {(keeping === 'changed' || keeping === 'gone') && (
      <p class="practice-actions">
        {keeping === 'changed' && (
          <button type="button" onClick={onTake}>
            {strings.paper.takeOther}
          </button>
        )}
        <button type="button" onClick={onApart}>
          {strings.paper.keepApart}
        </button>
      </p>
    )}
  </div>
);
