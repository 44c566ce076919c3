import { useEffect, useId, useState } from 'preact/hooks';
import { type LeftPapers, leftPapers, NOTHING_LEFT } from '../left-papers.ts';
import { recurring } from '../plan.ts';
import { progressStrings as strings } from '../progress-strings.ts';
import type { Book } from '../use-book.ts';
import { MistakeList } from './Mistakes.tsx';
import { StoreNote } from './StoreNote.tsx';

const counted = (answers: Book['answers']): { answers: number; questions: number } => ({
  answers: [...answers.values()].reduce((sum, given) => sum + given.length, 0),
  questions: answers.size,
});

/** What the browser has noted: in sum, what came back, and the ways to save, add and forget it. */
export function ProgressPart({ book }: { readonly book: Book }) {
  const { answers, unreadable } = book;
  const papers = useLeftPapers(book);
  const again = recurring(answers);
  const times = new Map(again.map((each) => [each.mistake, each.times]));
  return (
    <section class="measure needs-script" aria-labelledby="practised">
      <h2 id="practised">{strings.heading}</h2>
      <p>{answers.size === 0 ? strings.none : strings.count(counted(answers))}</p>
      {unreadable > 0 && <p>{strings.unreadable(unreadable)}</p>}
      {papers.left.length > 0 && <p>{strings.papers(papers.left.length)}</p>}
      {papers.unreadable > 0 && <p>{strings.unreadablePapers(papers.unreadable)}</p>}
      {again.length > 0 && (
        <>
          <h3>{strings.recurring}</h3>
          <p>{strings.recurringLead}</p>
          <MistakeList
            ids={again.map(({ mistake }) => mistake)}
            told={(id) => strings.times(times.get(id) ?? 0)}
          />
        </>
      )}
      <StoreNote book={book} />
      <ProgressFiles book={book} papers={papers} />
    </section>
  );
}

/** Papers that are not handed in, as they lie in the browser; looked for again whenever answers change, or another tab keeps something. */
function useLeftPapers({ answers }: Book): LeftPapers {
  const [papers, setPapers] = useState(NOTHING_LEFT);
  useEffect(() => {
    const look = (): void => setPapers(leftPapers());
    look();
    addEventListener('storage', look);
    return () => removeEventListener('storage', look);
  }, [answers]);
  return papers;
}

function ProgressFiles({ book, papers }: { readonly book: Book; readonly papers: LeftPapers }) {
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
    await book.clear();
    setTold({ text: strings.cleared });
  };
  const isEmpty = book.answers.size + papers.left.length === 0;
  const isClear = isEmpty && book.unreadable + papers.unreadable === 0;
  return (
    <div class="practice-files">
      <button type="button" disabled={isEmpty} onClick={() => void save()}>
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
          if (file) void open(file).finally(() => (input.value = ''));
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
