import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import { blankStrings } from '../blank-strings.ts';
import type { PointResult } from '../results/point-result.ts';
import { strings } from '../strings.ts';
import { verdictSentence } from '../words/verdict-words.ts';

interface RunningWordsProps {
  readonly result: PointResult;
  /** Whether the result is of this sheet at all. */
  readonly own: boolean;
  /** Whether something of the sheet cannot be used now. */
  readonly stale: boolean;
}

/** The result in a few words: level, watts, verdict. */
export function RunningWords({ result, own, stale }: RunningWordsProps) {
  if (!own) return <span>{blankStrings.short}</span>;
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
