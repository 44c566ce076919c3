import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { answerKey } from '../keys.ts';
import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import { type Attempt, useAttempt } from '../use-attempt.ts';
import { useSign } from '../use-sign.ts';
import { AnswerFields } from './AnswerFields.tsx';
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
}

const verdictOf = ({ marked, unsure }: Attempt): string => {
  if (marked?.outcome === 'right') return unsure ? strings.form.rightUnsure : strings.form.right;
  return marked?.outcome === 'near' ? strings.form.near : strings.form.wrong;
};

/** One question with its controls, and beside the answer in words what it was worth. */
export function AskForm({ sitting, onMarked, after, told, inTurn = false }: AskFormProps) {
  const attempt = useAttempt(sitting, strings.round.lost);
  const { marked, problem } = attempt;
  const { seen, say } = useSign();
  const shown = seen(sitting);
  const form = useRef<HTMLFormElement>(null);
  const reply = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (inTurn) form.current?.querySelector<HTMLElement>('input[type="text"], fieldset')?.focus();
  }, [sitting, inTurn]);
  const submit = async (): Promise<void> => {
    if (marked !== undefined) {
      if (after) after.go();
      else attempt.again();
      return;
    }
    const found = await attempt.check();
    if (found === undefined) return;
    onMarked({ marked: found, unsure: attempt.unsure });
    reply.current?.focus();
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
      />
      <div ref={reply} id="reply" class="choice-reply" role="status" tabIndex={-1}>
        {problem !== undefined && <p class="problem">{problem}</p>}
        {marked && (
          <p>
            <strong>{verdictOf(attempt)}</strong> {say(marked.reply)}
          </p>
        )}
        {marked && told}
      </div>
      {marked?.misconception && <MistakeLine id={marked.misconception} />}
      <AskActions attempt={attempt} after={after?.text} keys={keyCount(sitting)} />
      <Solution
        key={`${sitting.id} ${sitting.seed} ${marked === undefined}`}
        sitting={shown}
        isOpen={marked !== undefined}
      />
    </form>
  );
}

/** How many options a digit can choose. */
const keyCount = ({ payload }: ShownSitting): number => {
  if (payload.kind === 'choice') return payload.options.length;
  return payload.kind === 'place' ? payload.places.length : 0;
};

interface AskActionsProps {
  readonly attempt: Attempt;
  readonly after: string | undefined;
  readonly keys: number;
}

const AskActions = ({ attempt, after, keys }: AskActionsProps) => (
  <div class="choice-actions needs-script">
    {attempt.marked === undefined && (
      <label class="ask-unsure">
        <input
          type="checkbox"
          checked={attempt.unsure}
          onChange={(event) => attempt.doubt(event.currentTarget.checked)}
        />
        <span>{strings.form.unsure}</span>
      </label>
    )}
    <button type="submit">
      {attempt.marked === undefined ? strings.form.check : (after ?? strings.form.again)}
    </button>
    {attempt.marked === undefined && <span class="small muted">{strings.form.keys(keys)}</span>}
  </div>
);
