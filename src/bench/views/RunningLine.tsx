import type { VNode } from 'preact';
import type { BenchAction } from '../actions.ts';
import type { BenchState } from '../state.types.ts';
import { AsWritten } from './AsWritten.tsx';
import { UndoButtons } from './UndoButtons.tsx';

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
      <UndoButtons state={state} send={send} />
    </div>
  );
}

const HIDDEN = { 'aria-hidden': true } as const;
