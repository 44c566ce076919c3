import type { BegunPaper } from '../begun-paper.ts';
import { minutesOf } from '../paper-state.ts';
import { strings } from '../strings.ts';
import { PaperMade } from './PaperMade.tsx';

interface BegunOfferProps {
  readonly begun: BegunPaper;
  readonly onResume: () => void;
  readonly onForget: () => void;
}

/** A paper from another time, to be gone on with. */
export const BegunOffer = ({ begun, onResume, onForget }: BegunOfferProps) => (
  <section class="begun" aria-labelledby="begun">
    <h2 id="begun">{strings.paper.begun}</h2>
    <p>
      <PaperMade wish={begun} count={begun.count} />{' '}
      {strings.paper.begunWords({ given: begun.answers.length, all: begun.count })}{' '}
      {begun.hasClock && strings.paper.begunClock(minutesOf(begun.count, begun.spentMs))}
    </p>
    <p class="practice-actions">
      <button type="button" onClick={onResume}>
        {strings.paper.goOn}
      </button>
      <button type="button" onClick={onForget}>
        {strings.paper.drop}
      </button>
    </p>
  </section>
);
