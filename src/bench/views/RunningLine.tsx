import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import type { BenchResult } from '../result.ts';
import { verdictSentence } from '../result-words.ts';
import { strings } from '../strings.ts';

/** The result in one line that stays in sight while something is typed far below the figure. The announcer speaks it. */
export function RunningLine({ result, stale }: { result: BenchResult; stale: boolean }) {
  return (
    <p class="running needs-script" aria-hidden="true">
      <span>{levelAnswer('shown', result.chain)}</span>
      <span class="running-watts">{wattsAnswer('shown', result.chain)}</span>
      <span>{verdictSentence(result).split(':')[0]}</span>
      {stale && <span>{strings.staleShort}</span>}
    </p>
  );
}
