import type { BenchAction } from '../actions.ts';
import { FORM_CONTROLS } from '../focus-after.ts';
import type { BenchState } from '../state.types.ts';
import { strings } from '../strings.ts';

/** Takes the last change back, or does it again. */
export function UndoButtons({
  state,
  send,
}: {
  state: Pick<BenchState, 'past' | 'future'>;
  send: (action: BenchAction) => void;
}) {
  return (
    <p class="undo">
      <button
        type="button"
        class="plain"
        id={FORM_CONTROLS.undo}
        disabled={state.past.length === 0}
        onClick={() => send({ type: 'undo' })}
      >
        {strings.undo}
      </button>
      <button
        type="button"
        class="plain"
        id={FORM_CONTROLS.redo}
        disabled={state.future.length === 0}
        onClick={() => send({ type: 'redo' })}
      >
        {strings.redo}
      </button>
    </p>
  );
}
