import { exceeded } from '#compute';
import { strings as bandStrings } from '../../widgets/reading-band/strings.ts';
import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import { cautionStrings } from '../caution-strings.ts';
import type { BenchResult } from '../result.ts';
import { expandedWords, improvementWords, verdictReasons, verdictSentence } from '../result-words.ts';
import { VerdictFigure } from './VerdictFigure.tsx';

/** The three answers in a row, and the verdict with what it rests on. */
export function ResultPart({ result }: { result: BenchResult }) {
  const { chain, improvement } = result;
  const passed = exceeded(result.cautions).length;
  return (
    <>
      <dl class="answers">
        <div>
          <dt>{levelAnswer('shown', chain)}</dt>
          <dd>{expandedWords('shown', chain)}</dd>
        </div>
        <div>
          <dt>{wattsAnswer('shown', chain)}</dt>
          <dd>{bandStrings.lopsided}</dd>
        </div>
        <div>
          <dt>{improvement ? bandStrings.widensMost(improvement.link.label) : bandStrings.nothingWidens}</dt>
          <dd>{improvementWords('shown', result) ?? bandStrings.nothingWidensWords}</dd>
        </div>
      </dl>
      <div class="verdict">
        <p class="verdict-words">{verdictSentence(result)}</p>
        <VerdictFigure result={result} />
        {verdictReasons('shown', result).map((reason) => (
          <p key={reason}>{reason}</p>
        ))}
      </div>
      {passed > 0 && <p class="problem">{cautionStrings.exceeded(passed)}</p>}
    </>
  );
}
