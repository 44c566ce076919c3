import { useId } from 'preact/hooks';
import type { LeftPaper, LeftPapers } from '../left-papers.ts';
import { minutesOf } from '../paper-state.ts';
import { strings } from '../strings.ts';
import { PaperMade } from './PaperMade.tsx';

interface BegunOfferProps extends LeftPapers {
  readonly onResume: (left: LeftPaper) => void;
  readonly onForget: (left: LeftPaper) => void;
}

/** Papers from another time, to be gone on with. */
export const BegunOffer = ({ left, unreadable, onResume, onForget }: BegunOfferProps) => (
  <section class="begun" aria-labelledby="begun">
    <h2 id="begun">{strings.paper.begun(left.length + unreadable)}</h2>
    {left.map((each) => (
      <OneLeft key={each.id} {...each} onResume={() => onResume(each)} onForget={() => onForget(each)} />
    ))}
    {unreadable > 0 && <p>{strings.paper.unreadable(unreadable)}</p>}
  </section>
);

interface OneLeftProps extends LeftPaper {
  readonly onResume: () => void;
  readonly onForget: () => void;
}

function OneLeft({ paper, onResume, onForget }: OneLeftProps) {
  const id = useId();
  const { answers, count, hasClock, spentMs } = paper;
  return (
    <>
      <p id={id}>
        <PaperMade wish={paper} count={count} />{' '}
        {strings.paper.begunWords({ given: answers.length, all: count })}{' '}
        {hasClock && strings.paper.begunClock(minutesOf(count, spentMs))}
      </p>
      <p class="practice-actions">
        <button type="button" aria-describedby={id} onClick={onResume}>
          {strings.paper.goOn}
        </button>
        <button type="button" aria-describedby={id} onClick={onForget}>
          {strings.paper.drop}
        </button>
      </p>
    </>
  );
}
