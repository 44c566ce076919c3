import type { Sitting } from '../../questions/bank/types.ts';
import { answerTexts } from '../answering.ts';
import { strings } from '../strings.ts';
import { LessonLink } from './LessonLink.tsx';

/** One text, or several as a list in order. */
export const Texts = ({ texts }: { readonly texts: readonly string[] }) =>
  texts.length === 1 ? (
    <p>
      <strong>{texts[0]}</strong>
    </p>
  ) : (
    <ol>
      {texts.map((text) => (
        <li key={text}>
          <strong>{text}</strong>
        </li>
      ))}
    </ol>
  );

/** The right answer and the way there. */
export const WorkedLines = ({ sitting }: { readonly sitting: Sitting }) => (
  <>
    <Texts texts={answerTexts(sitting)} />
    {sitting.worked.map((line) => (
      <p key={line}>{line}</p>
    ))}
  </>
);

/** The worked answer, folded until somebody wants it, with the lesson that it belongs to. */
export const Solution = ({
  sitting,
  isOpen = false,
}: {
  readonly sitting: Sitting;
  readonly isOpen?: boolean;
}) => (
  <details class="answer" open={isOpen}>
    <summary>{strings.form.worked}</summary>
    <WorkedLines sitting={sitting} />
    <p>
      {strings.form.lesson} <LessonLink id={sitting.lesson} />
    </p>
  </details>
);
