import { useEffect, useRef, useState } from 'preact/hooks';
import type { Keeping } from '../../store/begun.ts';
import { blankGiven, type Given } from '../answering.ts';
import { answerKey } from '../keys.ts';
import type { PaperWish } from '../paper.ts';
import { minutesLeft, openCount, type PaperState } from '../paper-state.ts';
import { strings } from '../strings.ts';
import { useSign } from '../use-sign.ts';
import { AnswerFields } from './AnswerFields.tsx';
import { KeepingNote } from './KeepingNote.tsx';
import { PaperMade } from './PaperMade.tsx';

interface PaperTableProps {
  readonly paper: PaperState;
  readonly wish: PaperWish;
  /** Whether it is kept, and the ways on where another tab has it. */
  readonly keeping: Keeping;
  readonly onTake: () => void;
  readonly onApart: () => void;
  readonly onGiven: (id: string, given: Given) => void;
  readonly onHandIn: () => void;
}

/** The clock is looked at every so often; it counts whole minutes, and nobody is hurried by seconds. */
const LOOK_MS = 5000;
/** With so many minutes left it is spoken as well. */
const SPOKEN = [5, 1, 0];

/** A paper being answered, all questions on one page as on paper. */
export function PaperTable({ paper, wish, keeping, onTake, onApart, onGiven, onHandIn }: PaperTableProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const toHeading = (): void => heading.current?.focus();
  useEffect(toHeading, []);
  const { seen } = useSign();
  return (
    <>
      <h2 ref={heading} tabIndex={-1}>
        {strings.paper.heading(wish.seed)}
      </h2>
      <p class="small muted">
        <PaperMade wish={wish} count={paper.sittings.length} />
      </p>
      {/* its buttons go away with the choice */}
      <KeepingNote
        keeping={keeping}
        onTake={() => {
          toHeading();
          onTake();
        }}
        onApart={() => {
          toHeading();
          onApart();
        }}
      />
      <Clock paper={paper} />
      <ol class="paper">
        {paper.sittings.map((sitting) => (
          <li key={sitting.id}>
            {/* a form of its own for the digit keys; Enter hands nothing in here */}
            <form onKeyDown={answerKey} onSubmit={(event) => event.preventDefault()}>
              <AnswerFields
                sitting={seen(sitting)}
                given={paper.given.get(sitting.id) ?? blankGiven(sitting.payload)}
                isDone={false}
                onGiven={(given) => onGiven(sitting.id, given)}
              />
            </form>
          </li>
        ))}
      </ol>
      <p role="status">{strings.paper.open(openCount(paper))}</p>
      <p class="screen-only">
        <button type="button" onClick={onHandIn}>
          {strings.paper.hand}
        </button>
      </p>
    </>
  );
}

function Clock({ paper }: { readonly paper: PaperState }) {
  const [nowMs, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!paper.hasClock) return;
    const timer = setInterval(() => setNow(Date.now()), LOOK_MS);
    return () => clearInterval(timer);
  }, [paper.hasClock]);
  const left = minutesLeft(paper, nowMs);
  if (left === undefined) return null;
  const words = left === 0 ? strings.paper.over : strings.paper.left(left);
  const isSpoken = SPOKEN.includes(left);
  return (
    <>
      {/* the same words twice would be read twice */}
      <p class="paper-clock screen-only" aria-hidden={isSpoken || undefined}>
        {words}
      </p>
      <p class="visually-hidden" role="status">
        {isSpoken ? words : ''}
      </p>
    </>
  );
}
