import { useRef } from 'preact/hooks';
import { ghostText } from './ghost-text.ts';
import { strings } from './strings.ts';

/** What stands for an answer while it is worked out. */
export const UNKNOWN = '…';

/** The ghost of the answer before the last change, in words and numbers; none while what was prepared stands. */
export function Before({ answer, beside = '' }: { readonly answer: string; readonly beside?: string }) {
  const kept = useRef({ begun: answer, now: answer, before: '' });
  const { begun, now } = kept.current;
  if (answer !== now && !answer.includes(UNKNOWN)) kept.current = { begun, now: answer, before: now };
  if (kept.current.now === begun || kept.current.before === '') return null;
  return (
    <>
      {' '}
      <span class="stage-ghost">
        {ghostText(kept.current.before, kept.current.now, beside, strings.before)}
      </span>
    </>
  );
}

/** The one number that a slide is about, in large type, and the ghost of what it was. */
export function StageAnswer({
  answer,
  ghost = answer,
}: {
  readonly answer: string;
  readonly ghost?: string;
}) {
  return (
    <p class="stage-answer">
      {answer}
      <Before answer={ghost} beside={answer} />
    </p>
  );
}
