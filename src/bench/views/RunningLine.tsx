import type { VNode } from 'preact';
import { UndoButtons } from '../../widgets/parts/UndoButtons.tsx';
import { FORM_CONTROLS } from '../form/focus-after.ts';
import type { BenchAction } from '../state/actions.ts';
import type { BenchState } from '../state/state.types.ts';
import { strings } from '../strings.ts';
import { AsWritten } from './AsWritten.tsx';

interface RunningLineProps {
  readonly state: BenchState;
  /** The result in a few words, undefined until they are there. */
  readonly words: VNode | undefined;
  /** Whether the sheet is another one than the page was written with. */
  readonly changed: boolean;
  readonly send: (action: BenchAction) => void;
}

/**
 * The result in one line that stays in sight while something is typed far below the figure, with undo and redo at hand. The announcer
 * speaks the result.
 */
export function RunningLine({ state, words, changed, send }: RunningLineProps) {
  return (
    <div class="running">
      <AsWritten as="p" stale={changed} attributes={HIDDEN}>
        {words}
      </AsWritten>
      <UndoButtons state={state} send={send} words={strings} ids={FORM_CONTROLS} />
    </div>
  );
}

const HIDDEN = { 'aria-hidden': true } as const;
