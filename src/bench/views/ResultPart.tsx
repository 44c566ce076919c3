import type { ComponentChildren } from 'preact';
import { exceeded } from '#compute';
import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { Problem } from '../../widgets/parts/Problem.tsx';
import { strings as bandStrings } from '../../widgets/reading-band/strings.ts';
import { levelAnswer, wattsAnswer } from '../../widgets/reading-band/words.ts';
import type { NumberedPoint, PointResult } from '../results/point-result.ts';
import { cautionStrings } from '../words/caution-strings.ts';
import { outlierWords } from '../words/outlier-words.ts';
import { resultStrings } from '../words/result-strings.ts';
import { aloneWords, expandedWords, improvementWords } from '../words/result-words.ts';
import { shownWords, verdictReasons, verdictSentence } from '../words/verdict-words.ts';
import { VerdictFigure } from './VerdictFigure.tsx';

interface ResultPartProps<Of extends PointResult> {
  readonly shown: Of;
  /** What the verdict rests on, where that may follow later: while a handle of the figure is held, it waits. */
  readonly grounds?: ComponentChildren;
}

/** The three answers in a row and the verdict with what it rests on; or why the method gives no number, in place of all of them. */
export function ResultPart({ shown, grounds = <Grounds shown={shown} /> }: ResultPartProps<PointResult>) {
  const passed = exceeded(shown.inRange ? shown.result.cautions : shown.cautions).length;
  return (
    <>
      {shown.inRange ? <Numbers shown={shown} grounds={grounds} /> : <OutOfRangePart shown={shown} />}
      {outlierWords('shown', shown.sheet).map((sentence) => (
        // On screen it stands beside the readings.
        <p key={sentence} class="print-only">
          {sentence}
        </p>
      ))}
      <Problem>{passed > 0 && cautionStrings.exceeded(passed)}</Problem>
    </>
  );
}

function Numbers({ shown, grounds }: ResultPartProps<NumberedPoint>) {
  const { chain, improvement } = shown.result;
  const isExact = chain.result.propagation.expanded === 0;
  const alone = aloneWords('shown', shown.result);
  return (
    <>
      <dl class="answers">
        <div>
          <dt>{levelAnswer('shown', chain)}</dt>
          <dd>{expandedWords('shown', shown.result)}</dd>
        </div>
        <div>
          <dt>{wattsAnswer('shown', chain)}</dt>
          <dd>{isExact ? bandStrings.same : bandStrings.lopsided}</dd>
        </div>
        <div>
          <dt>{improvement ? bandStrings.widensMost(improvement.labels) : bandStrings.nothingWidens}</dt>
          <dd>{improvementWords('shown', shown.result) ?? bandStrings.nothingWidensWords}</dd>
        </div>
      </dl>
      {alone && <p class="measure">{alone}</p>}
      <div class="verdict">
        <p class="verdict-words">{verdictSentence(shown)}</p>
        {grounds}
      </div>
    </>
  );
}

/** What a verdict rests on: the zones as a picture, and the reasons. */
export function Grounds({ shown }: { shown: PointResult }) {
  if (!shown.inRange) return null;
  return (
    <>
      <VerdictFigure shown={shown} />
      {verdictReasons('shown', shown).map((reason) => (
        <p key={reason}>{reason}</p>
      ))}
    </>
  );
}

/** The reason why there is no number, where the numbers would stand. */
function OutOfRangePart({ shown: { reason } }: { shown: Extract<PointResult, { inRange: false }> }) {
  return (
    <div class="verdict">
      <p class="verdict-words">{resultStrings.outOfRange.verdict}</p>
      <p>{shownWords(outOfRangeText('shown', reason))}</p>
      <p>{resultStrings.outOfRange.none}</p>
    </div>
  );
}
