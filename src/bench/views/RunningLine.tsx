import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import type { BenchAction } from '../actions.ts';
import type { PointResult } from '../point-result.ts';
import type { BenchState } from '../state.types.ts';
import { strings } from '../strings.ts';
import { verdictSentence } from '../verdict-words.ts';
import { UndoButtons } from './UndoButtons.tsx';

interface RunningLineProps {
  readonly state: BenchState;
  readonly result: PointResult;
  readonly send: (action: BenchAction) => void;
}

/**
 * The result in one line that stays in sight while something is typed far below the figure, with undo and redo at hand. The announcer
 * speaks the result.
 */
export function RunningLine({ state, result, send }: RunningLineProps) {
  return (
    <div class="running">
      <p aria-hidden="true">
        {result.inRange ? (
          <>
            <span>{levelAnswer('shown', result.result.chain)}</span>
            <span class="running-watts">{wattsAnswer('shown', result.result.chain)}</span>
            <span>{verdictSentence(result).split(':')[0]}</span>
          </>
        ) : (
          <span>{strings.outOfRangeShort}</span>
        )}
        {state.problems.length > 0 && <span>{strings.staleShort}</span>}
      </p>
      <UndoButtons state={state} send={send} />
    </div>
  );
}
