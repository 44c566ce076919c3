import { useEffect, useRef } from 'preact/hooks';
import type { Sitting } from '../../questions/bank/types.ts';
import { givenTexts, type Marked } from '../answering.ts';
import type { PaperWish } from '../paper.ts';
import { type HandedIn, minutesLeft, mistakesIn, type PaperState, rightCount } from '../paper-state.ts';
import { strings } from '../strings.ts';
import { type Signed, useSign } from '../use-sign.ts';
import { LessonLink } from './LessonLink.tsx';
import { MistakeLine, MistakeList } from './Mistakes.tsx';
import { PaperMade } from './PaperMade.tsx';
import { Texts, WorkedLines } from './Solution.tsx';

interface PaperReviewProps {
  readonly paper: PaperState;
  readonly wish: PaperWish;
  readonly handed: HandedIn;
  readonly onAgain: () => void;
}

/** What a paper came to, and every answer beside the right one, with the mistake behind it named. */
export function PaperReview({ paper, wish, handed, onAgain }: PaperReviewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { marks, atMs } = handed;
  const mistakes = mistakesIn(marks);
  const { seen, say } = useSign();
  return (
    <>
      <h2 ref={heading} tabIndex={-1} aria-describedby="marks">
        {strings.paper.heading(wish.seed)}
      </h2>
      <p class="small muted">
        <PaperMade wish={wish} count={paper.sittings.length} />
      </p>
      <p class="lead" id="marks">
        {strings.paper.marks({ right: rightCount(marks), all: paper.sittings.length })}
      </p>
      {minutesLeft(paper, atMs) === 0 && <p>{strings.paper.late}</p>}
      {mistakes.length > 0 && (
        <>
          <p>{strings.round.mistakes}:</p>
          <MistakeList ids={mistakes} />
        </>
      )}
      <p class="screen-only">
        <button type="button" onClick={onAgain}>
          {strings.paper.again}
        </button>
      </p>
      <h3>{strings.paper.review}</h3>
      <ol class="paper">
        {paper.sittings.map(seen).map((sitting) => (
          <li key={sitting.id}>
            <Reviewed
              sitting={sitting}
              mark={marks.get(sitting.id)}
              texts={givenTexts(sitting, paper.given.get(sitting.id) ?? '')}
              say={say}
            />
          </li>
        ))}
      </ol>
    </>
  );
}

interface ReviewedProps {
  readonly sitting: Sitting;
  readonly mark: Marked | undefined;
  readonly texts: readonly string[];
  readonly say: Signed['say'];
}

const verdictOf = (mark: Marked | undefined, isAnswered: boolean): string => {
  if (!isAnswered) return strings.paper.none;
  if (mark?.outcome === 'right') return strings.form.right;
  return mark?.outcome === 'near' ? strings.form.near : strings.form.wrong;
};

function Reviewed({ sitting, mark, texts, say }: ReviewedProps) {
  const isRight = mark?.outcome === 'right';
  const isAnswered = texts.length > 0;
  return (
    <div class="keep">
      <p>{sitting.stem}</p>
      <p>
        <strong>{verdictOf(mark, isAnswered)}</strong> {mark !== undefined && isAnswered && say(mark.reply)}
      </p>
      {isAnswered && !isRight && (
        <>
          <p class="muted">{strings.paper.yours}:</p>
          <Texts texts={texts} />
        </>
      )}
      {mark?.misconception && <MistakeLine id={mark.misconception} />}
      <details class="answer">
        <summary>{strings.form.worked}</summary>
        <WorkedLines sitting={sitting} />
        <p>
          {strings.form.lesson} <LessonLink id={sitting.lesson} />
        </p>
      </details>
    </div>
  );
}
