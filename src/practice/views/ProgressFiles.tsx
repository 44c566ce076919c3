import { useId, useState } from 'preact/hooks';
import type { LeftPapers } from '../left-papers.ts';
import { progressStrings as strings } from '../progress-strings.ts';
import type { Book } from '../use-book.ts';

/** How many answers there are, and to how many questions. */
export const counted = (answers: Book['answers']): { answers: number; questions: number } => ({
  answers: [...answers.values()].reduce((sum, given) => sum + given.length, 0),
  questions: answers.size,
});

interface ProgressFilesProps {
  readonly book: Book;
  readonly papers: LeftPapers;
  /** Called before all is forgotten. */
  readonly onClear: () => void;
}

/** The ways to save what is noted, to add to it and to forget it. */
export function ProgressFiles({ book, papers, onClear }: ProgressFilesProps) {
  const id = useId();
  const [told, setTold] = useState<{
    readonly text: string;
    readonly notes?: readonly string[];
    readonly isBad?: boolean;
  }>();
  const save = async (): Promise<void> => {
    const { saveAnswers } = await import('../progress-files.ts');
    const problem = saveAnswers(book.answers, new Date());
    setTold(problem === undefined ? { text: strings.saved } : { text: problem, isBad: true });
  };
  const open = async (file: File): Promise<void> => {
    const { addPapers, readAnswers } = await import('../progress-files.ts');
    const read = await readAnswers(file);
    if (!read.ok) {
      setTold({ text: read.problem, isBad: true });
      return;
    }
    const papersTold = addPapers(read.papers); // before the book, which has them counted again
    await book.add(read.answers);
    setTold({ text: strings.added(counted(read.answers)), notes: [...papersTold, ...read.notes] });
  };
  const clear = async (): Promise<void> => {
    if (!confirm(strings.reallyClear)) return;
    onClear(); // its button is no longer of use
    // where the browser did not, that is said above
    setTold((await book.clear()) ? { text: strings.cleared } : undefined);
  };
  const tried = (work: Promise<void>): Promise<void> =>
    work.catch(() => setTold({ text: strings.lost, isBad: true }));
  const isEmpty = book.answers.size + papers.left.length === 0;
  const isClear = isEmpty && book.unreadable + papers.unreadable === 0;
  return (
    <div class="practice-files">
      <button type="button" disabled={isEmpty} onClick={() => void tried(save())}>
        {strings.save}
      </button>
      <button type="button" disabled={isClear} onClick={() => void clear()}>
        {strings.clear}
      </button>
      <label for={id}>{strings.open}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        aria-describedby={`${id}t`}
        aria-invalid={told?.isBad ? 'true' : undefined}
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          // the same file may be chosen again after it was mended
          if (file) void tried(open(file)).finally(() => (input.value = ''));
        }}
      />
      <div id={`${id}t`} role="status">
        <p class={told?.isBad ? 'problem' : undefined}>{told?.text}</p>
        {told?.notes?.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
    </div>
  );
}
