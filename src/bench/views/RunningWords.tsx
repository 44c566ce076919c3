import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import type { PointResult } from '../point-result.ts';
import { strings } from '../strings.ts';
import { verdictSentence } from '../verdict-words.ts';

/** The result in a few words: level, watts, verdict. */
export function RunningWords({ result, stale }: { result: PointResult; stale: boolean }) {
  return (
    <>
      {result.inRange ? (
        <>
          <span>{levelAnswer('shown', result.result.chain)}</span>
          <span class="running-watts">{wattsAnswer('shown', result.result.chain)}</span>
          <span>{verdictSentence(result).split(':')[0]}</span>
        </>
      ) : (
        <span>{strings.outOfRangeShort}</span>
      )}
      {stale && <span>{strings.staleShort}</span>}
    </>
  );
}
