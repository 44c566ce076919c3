import type { Answer } from './answer.ts';

export interface PlainAnswersProps {
  readonly answers: readonly Answer[];
}

/** Answers in a row under a figure: each a number in large type and a sentence on what it is. */
export function PlainAnswers({ answers }: PlainAnswersProps) {
  return (
    <dl class="answers">
      {answers.map(({ figure, words }, index) => (
        <div key={String(index)}>
          <dt>{figure}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
