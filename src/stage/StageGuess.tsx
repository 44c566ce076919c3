import { useEffect, useId, useRef } from 'preact/hooks';
import type { Question } from '../questions/question.ts';
import { keepHands, keptHands } from '../store/hands.ts';
import { saidText } from '../text/said-text.ts';
import { Problem } from '../widgets/parts/Problem.tsx';
import { handsText, readHands, roomOf } from './hands.ts';
import { useMirrored } from './mirror.ts';
import { strings } from './strings.ts';

interface Asked {
  /** What was counted, by option, as typed. */
  readonly typed: Readonly<Record<string, string>>;
  readonly open: boolean;
}

const changed = (asked: Asked, change: Partial<Asked>): Asked => ({ ...asked, ...change });

/** Length of the longest bar, in units of its drawing. */
const FULL = 100;

/** One option's share of the room as a bar, with its words. */
function Share({ count, total, isAnswer }: { count: number; total: number; isAnswer: boolean }) {
  return (
    <span class="hands-share">
      <svg viewBox={`0 0 ${FULL} 10`} preserveAspectRatio="none" aria-hidden="true">
        <rect class={isAnswer ? 'hands-right' : 'hands-other'} width={(FULL * count) / total} height="10" />
      </svg>
      {handsText(count, total)}
      <span class="visually-hidden">{strings.ofHands}</span>
    </span>
  );
}

/**
 * A question for the room: hands are counted and typed beside each option, and the answer, hidden until asked for, is set against
 * them. The counts stay for the sitting, so that nothing is lost by a reload.
 */
export default function StageGuess({ question }: { readonly question: Question }) {
  const id = useId();
  const details = useRef<HTMLDetailsElement>(null);
  const [{ typed, open }, change] = useMirrored<Asked, Partial<Asked>>(
    changed,
    { typed: {}, open: false },
    () => ({
      typed: keptHands(question.id),
      // opened before this part woke
      open: details.current?.open ?? false,
    }),
  );
  useEffect(() => {
    if (Object.keys(typed).length > 0) keepHands(question.id, typed);
  }, [question, typed]);
  const count = (option: string, text: string): void => change({ typed: { ...typed, [option]: text } });
  const answer = question.options.find((option) => option.id === question.answer);
  const isOdd = (option: string): boolean =>
    Boolean(typed[option]) && readHands(typed[option] ?? '') === undefined;
  const room = roomOf(question.options.map((option) => typed[option.id]));
  return (
    <section class="stage-guess" aria-labelledby={id}>
      <p class="stage-stem" id={id}>
        {question.wall ?? question.stem}
      </p>
      <ul>
        {question.options.map((option, index) => (
          <li key={option.id} class={open && option.id === question.answer ? 'hands-answer' : undefined}>
            <input
              class="needs-script"
              type="text"
              inputMode="numeric"
              autoComplete="off"
              maxLength={3}
              aria-label={strings.hands(saidText(option.text))}
              aria-invalid={isOdd(option.id) ? 'true' : undefined}
              aria-describedby={isOdd(option.id) ? `${id}odd` : undefined}
              value={typed[option.id] ?? ''}
              onInput={(event) => count(option.id, event.currentTarget.value)}
            />
            <span>
              {option.text}
              {open && option.id === question.answer && (
                <strong>
                  <span aria-hidden="true"> ✓</span> {strings.isAnswer}
                </strong>
              )}
            </span>
            {open && room && (
              <Share
                count={room.counts[index] ?? 0}
                total={room.total}
                isAnswer={option.id === question.answer}
              />
            )}
          </li>
        ))}
      </ul>
      <Problem id={`${id}odd`}>
        {question.options.some((option) => isOdd(option.id)) && strings.noCount}
      </Problem>
      <details
        ref={details}
        class="answer"
        open={open}
        onToggle={(event) => {
          if (event.currentTarget.open !== open) change({ open: event.currentTarget.open });
        }}
      >
        <summary>{strings.answer}</summary>
        <p>
          <strong class="hands-named">{answer?.text} </strong>
          {question.worked}
        </p>
      </details>
    </section>
  );
}
