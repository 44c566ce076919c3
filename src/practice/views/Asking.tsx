import { useRef, useState } from 'preact/hooks';
import { notedAnswer } from '../answering.ts';
import { nextSeed } from '../answers.ts';
import { daysUntil } from '../due.ts';
import { type Ask, isAskedLater, type RoundAction, type RoundState } from '../round.ts';
import type { Standing } from '../schedule.ts';
import { strings } from '../strings.ts';
import type { Book } from '../use-book.ts';
import { useDrawn } from '../use-drawn.ts';
import { AskForm } from './AskForm.tsx';
import { Waiting } from './Waiting.tsx';

interface AskingProps {
  readonly ask: Ask;
  readonly state: RoundState;
  readonly send: (action: RoundAction) => void;
  readonly leave: () => void;
  readonly book: Book;
  readonly standing: Standing | undefined;
}

/** The question of a round that is asked now. */
export function Asking({ ask, state, send, leave, book, standing }: AskingProps) {
  // the numbers are settled when the question comes up, not when its answer is noted
  const seed = useRef(nextSeed(book.answers.get(ask.id) ?? []));
  const { sitting, isLost, retry } = useDrawn(ask, seed.current);
  const [answeredAt, setAnswered] = useState<string>();
  const isLast = state.at + 1 >= state.queue.length;
  const place = strings.round.place({ at: state.at + 1, of: state.queue.length });
  return (
    <>
      <p class="muted" id="round-place">
        {place}
        {ask.again && `. ${strings.round.again}`}
      </p>
      {sitting === undefined && <Waiting isLost={isLost} retry={retry} />}
      {sitting && (
        <AskForm
          sitting={sitting}
          inTurn
          place="round-place"
          onMarked={({ marked, unsure }) => {
            const answer = notedAnswer(sitting, marked, { unsure, at: new Date().toISOString() });
            setAnswered(answer.at);
            send({ type: 'answered', grade: answer.grade, mistake: answer.mistake });
            void book.note(ask.id, answer);
          }}
          after={{
            text: isLast ? strings.round.finish : strings.round.next,
            go: () => send({ type: 'next' }),
          }}
          told={
            // until this answer counts, it stands as it stood before
            standing !== undefined &&
            standing.last === answeredAt && (
              <p>
                {strings.round.comesBack({
                  days: daysUntil(standing, new Date().toISOString()),
                  inRound: isAskedLater(state),
                })}
              </p>
            )
          }
        />
      )}
      <p>
        <button type="button" class="plain" onClick={leave}>
          {strings.round.leave}
        </button>
      </p>
    </>
  );
}
