import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { answerKey } from '../keys.ts';
import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import { type Attempt, useAttempt } from '../use-attempt.ts';
import { useSign } from '../use-sign.ts';
import { AnswerFields } from './AnswerFields.tsx';
import { AskActions } from './AskActions.tsx';
import { MistakeLine } from './Mistakes.tsx';
import { Solution } from './Solution.tsx';

interface AskFormProps {
  readonly sitting: ShownSitting;
  /** Called once for each answer that could be marked. */
  readonly onMarked: (
    attempt: Pick<Attempt, 'unsure'> & { readonly marked: NonNullable<Attempt['marked']> },
  ) => void;
  /** What Enter and the button do once it is marked; `text` stands on the button. */
  readonly after: { readonly text: string; readonly go: () => void } | undefined;
  /** What else there is to say once it is marked. */
  readonly told?: ComponentChildren;
  /** Whether the focus goes to a new question by itself, as in a round. */
  readonly inTurn?: boolean;
  /** Id of what says where the question stands in the round. */
  readonly place?: string;
}

const verdictOf = ({ marked, unsure }: Attempt): string => {
  if (marked?.outcome === 'right') return unsure ? strings.form.rightUnsure : strings.form.right;
  return marked?.outcome === 'near' ? strings.form.near : strings.form.wrong;
};

/** One question with its controls, and beside the answer in words what it was worth. */
export function AskForm({ sitting, onMarked, after, told, inTurn = false, place }: AskFormProps) {
  const attempt = useAttempt(sitting, strings.round.lost);
  const { marked, problem } = attempt;
  const { seen, say } = useSign();
  const shown = seen(sitting);
  const form = useRef<HTMLFormElement>(null);
  const reply = useRef<HTMLDivElement>(null);
  const toQuestion = (): void => form.current?.querySelector('fieldset')?.focus();
  useEffect(() => {
    if (inTurn) toQuestion();
  }, [sitting, inTurn]);
  useEffect(() => {
    if (marked) reply.current?.focus();
  }, [marked]);
  const submit = async (): Promise<void> => {
    if (marked !== undefined) {
      if (after) return after.go();
      attempt.again();
      return toQuestion();
    }
    const found = await attempt.check();
    if (found) onMarked({ marked: found, unsure: attempt.unsure });
  };
  return (
    <form
      ref={form}
      class="ask-form"
      onKeyDown={answerKey}
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <AnswerFields
        sitting={shown}
        given={attempt.given}
        onGiven={attempt.give}
        isDone={marked !== undefined}
        problem={problem}
        place={place}
      />
      <div id="reply" class="choice-reply">
        {/* read out because the focus goes to it; what is spoken by itself stands apart, so that nothing is heard twice */}
        {marked && (
          // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls
          <div ref={reply} role="group" tabIndex={-1} aria-labelledby="verdict">
            <p id="verdict">
              <strong>{verdictOf(attempt)}</strong> {say(marked.reply)}
            </p>
          </div>
        )}
        <div role="status">
          {problem !== undefined && <p class="problem">{problem}</p>}
          {marked && told}
        </div>
      </div>
      {marked?.misconception && <MistakeLine id={marked.misconception} />}
      <AskActions attempt={attempt} after={after?.text} sitting={sitting} />
      <Solution
        key={`${sitting.id} ${sitting.seed} ${marked === undefined}`}
        sitting={shown}
        isOpen={marked !== undefined}
      />
    </form>
  );
}
