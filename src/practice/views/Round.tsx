import { useReducer, useRef } from 'preact/hooks';
import { notedAnswer } from '../answering.ts';
import { nextSeed } from '../answers.ts';
import { daysUntil } from '../due.ts';
import type { ListedQuestion } from '../facts.ts';
import type { Tally } from '../plan.ts';
import {
  type Ask,
  askedNow,
  isOver,
  noRound,
  type RoundAction,
  type RoundState,
  reduceRound,
} from '../round.ts';
import type { Standing } from '../schedule.ts';
import { strings } from '../strings.ts';
import type { Book } from '../use-book.ts';
import { useDrawn } from '../use-drawn.ts';
import { AskForm } from './AskForm.tsx';
import { RoundSum } from './RoundSum.tsx';
import { StoreNote } from './StoreNote.tsx';
import { Waiting } from './Waiting.tsx';

interface RoundProps {
  readonly book: Book;
  /** What would be asked now, and how the questions stand; undefined until it is known. */
  readonly plan: readonly ListedQuestion[] | undefined;
  readonly tally: Tally | undefined;
  readonly standings: ReadonlyMap<string, Standing> | undefined;
}

/** A round of questions in turn. After it a reader knows what went wrong and why; the browser knows when to ask again. */
export function Round({ book, plan, tally, standings }: RoundProps) {
  const [state, send] = useReducer(reduceRound, noRound);
  const asked = askedNow(state);
  return (
    <section class="round needs-script">
      {tally && asked === undefined && <p>{strings.round.tally(tally)}</p>}
      {plan && state.queue.length === 0 && (
        <Begin plan={plan} onBegin={() => send({ type: 'begin', questions: plan })} />
      )}
      {asked && (
        <Asking
          key={`${asked.id} ${state.at}`}
          ask={asked}
          state={state}
          send={send}
          book={book}
          standing={standings?.get(asked.id)}
        />
      )}
      {isOver(state) && <RoundSum state={state} onMore={() => send({ type: 'leave' })} />}
      <StoreNote book={book} />
    </section>
  );
}

const Begin = ({ plan, onBegin }: { plan: readonly ListedQuestion[]; onBegin: () => void }) =>
  plan.length === 0 ? (
    <p>{strings.round.nothing}</p>
  ) : (
    <p>
      <button type="button" onClick={onBegin}>
        {strings.round.begin(plan.length)}
      </button>
    </p>
  );

interface AskingProps {
  readonly ask: Ask;
  readonly state: RoundState;
  readonly send: (action: RoundAction) => void;
  readonly book: Book;
  readonly standing: Standing | undefined;
}

function Asking({ ask, state, send, book, standing }: AskingProps) {
  // the numbers are settled when the question comes up, not when its answer is noted
  const seed = useRef(nextSeed(book.answers.get(ask.id) ?? []));
  const { sitting, isLost, retry } = useDrawn(ask, seed.current);
  const isLast = state.at + 1 >= state.queue.length;
  const place = strings.round.place({ at: state.at + 1, of: state.queue.length });
  return (
    <>
      <p class="muted">
        {place}
        {ask.again && ` · ${strings.round.again}`}
      </p>
      {sitting === undefined && <Waiting isLost={isLost} retry={retry} />}
      {sitting && (
        <AskForm
          sitting={sitting}
          inTurn
          onMarked={({ marked, unsure }) => {
            const answer = notedAnswer(sitting, marked, { unsure, at: new Date().toISOString() });
            send({ type: 'answered', grade: answer.grade, mistake: answer.mistake });
            void book.note(ask.id, answer);
          }}
          after={{
            text: isLast ? strings.round.finish : strings.round.next,
            go: () => send({ type: 'next' }),
          }}
          told={standing && <p>{strings.round.comesBack(daysUntil(standing, new Date().toISOString()))}</p>}
        />
      )}
      <p>
        <button type="button" class="plain" onClick={() => send({ type: 'leave' })}>
          {strings.round.leave}
        </button>
      </p>
    </>
  );
}
