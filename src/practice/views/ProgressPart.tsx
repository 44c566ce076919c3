import { useEffect, useRef, useState } from 'preact/hooks';
import { type LeftPapers, leftPapers, NOTHING_LEFT } from '../left-papers.ts';
import { recurring } from '../plan.ts';
import { progressStrings as strings } from '../progress-strings.ts';
import type { Book } from '../use-book.ts';
import { MistakeList } from './Mistakes.tsx';
import { counted, ProgressFiles } from './ProgressFiles.tsx';
import { StoreNote } from './StoreNote.tsx';

/** What the browser has noted: in sum, what came back, and the ways to save, add and forget it. */
export function ProgressPart({ book }: { readonly book: Book }) {
  const { answers, unreadable } = book;
  const papers = useLeftPapers(book);
  const again = recurring(answers);
  const heading = useRef<HTMLHeadingElement>(null);
  const times = new Map(again.map((each) => [each.mistake, each.times]));
  return (
    <section class="measure needs-script" aria-labelledby="practised">
      <h2 id="practised" ref={heading} tabIndex={-1}>
        {strings.heading}
      </h2>
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
      <ProgressFiles book={book} papers={papers} onClear={() => heading.current?.focus()} />
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
