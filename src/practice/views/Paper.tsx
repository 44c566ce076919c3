import { useRef, useState } from 'preact/hooks';
import type { BegunPaper } from '../begun-paper.ts';
import { type PaperWish, paperAddress, USUAL_PAPER } from '../paper.ts';
import { strings } from '../strings.ts';
import { useBegun } from '../use-begun.ts';
import { useBook } from '../use-book.ts';
import { usePaper } from '../use-paper.ts';
import { useQuery } from '../use-query.ts';
import { BegunOffer } from './BegunOffer.tsx';
import { PaperForm } from './PaperForm.tsx';
import { PaperReview } from './PaperReview.tsx';
import { PaperTable } from './PaperTable.tsx';
import { Problems } from './Problems.tsx';
import { StoreNote } from './StoreNote.tsx';

/** A mock paper: chosen, answered in any order, handed in, and looked through again. */
export function Paper() {
  const book = useBook();
  const [wish, setWish] = useState<PaperWish>(USUAL_PAPER);
  const [isChanged, setChanged] = useState(false);
  const { paper, made = wish, isLost, begin, resume, give, handIn, leave } = usePaper(book);
  const { left, unreadable, keeping, forget, take, letGo, others, keepApart } = useBegun(paper, made);
  const state = isChanged ? made : undefined;
  const problems = useQuery({ spec: paperAddress, state, open: setWish });
  const change = (part: Partial<PaperWish>): void => {
    setWish((before) => ({ ...before, ...part }));
    setChanged(true);
  };
  const section = useRef<HTMLElement>(null);
  /** For when the button that was pressed goes away. */
  const toSection = (): void => section.current?.focus();
  const goOn = (begun: BegunPaper): void => {
    change({ seed: begun.seed, length: begun.length, topics: begun.topics });
    void resume(begun);
  };
  const takeOther = (): void => {
    const begun = others();
    if (begun) goOn(begun);
  };
  // a paper that is there can be printed, with what was answered so far
  return (
    <section
      class={paper ? 'round' : 'round needs-script'}
      ref={section}
      tabIndex={-1}
      aria-label={strings.paper.title}
    >
      <Problems problems={problems} isLost={isLost} />
      {paper === undefined && left.length + unreadable > 0 && (
        <BegunOffer
          left={left}
          unreadable={unreadable}
          onResume={(each) => {
            take(each);
            goOn(each.paper);
          }}
          onForget={(each) => {
            forget(each);
            toSection();
          }}
        />
      )}
      {paper === undefined && (
        <PaperForm
          wish={wish}
          onChange={change}
          onBegin={(hasClock) => {
            letGo();
            void begin(wish, hasClock);
          }}
        />
      )}
      {paper && paper.handed === undefined && (
        <PaperTable
          paper={paper}
          wish={made}
          keeping={keeping}
          onTake={takeOther}
          onApart={keepApart}
          onGiven={give}
          onHandIn={() => void handIn()}
        />
      )}
      {paper?.handed && (
        <PaperReview
          paper={paper}
          wish={made}
          handed={paper.handed}
          onAgain={() => {
            toSection();
            leave();
          }}
        />
      )}
      <StoreNote book={book} />
    </section>
  );
}
