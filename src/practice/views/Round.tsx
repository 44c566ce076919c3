import { useReducer, useRef } from 'preact/hooks';
import type { ListedQuestion } from '../facts.ts';
import type { Tally } from '../plan.ts';
import { askedNow, isOver, noRound, reduceRound } from '../round.ts';
import type { Standing } from '../schedule.ts';
import { strings } from '../strings.ts';
import type { Book } from '../use-book.ts';
import { Asking } from './Asking.tsx';
import { RoundSum } from './RoundSum.tsx';
import { StoreNote } from './StoreNote.tsx';

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
  const section = useRef<HTMLElement>(null);
  const leave = (): void => {
    section.current?.focus(); // its button goes away
    send({ type: 'leave' });
  };
  return (
    <section class="round needs-script" ref={section} tabIndex={-1} aria-label={strings.round.name}>
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
          leave={leave}
          book={book}
          standing={standings?.get(asked.id)}
        />
      )}
      {isOver(state) && <RoundSum state={state} onMore={leave} />}
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
