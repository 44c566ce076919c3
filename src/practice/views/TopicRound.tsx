import { useContext } from 'preact/hooks';
import { revisionPlan, tallyOf, topicPlan } from '../plan.ts';
import { strings } from '../strings.ts';
import { useBook, useStandings } from '../use-book.ts';
import { AroundContext } from './context.ts';
import { Round } from './Round.tsx';

/** The questions of one topic in turn; without a topic, mixed revision of all. */
export function TopicRound({ topic }: { readonly topic: string | undefined }) {
  const { questions } = useContext(AroundContext);
  const book = useBook();
  const { standings, isLost, retry } = useStandings(book);
  const own = topic === undefined ? questions : questions.filter((question) => question.topic === topic);
  if (isLost && standings === undefined)
    return (
      <p class="round needs-script" role="status">
        {strings.round.unplanned}{' '}
        <button type="button" onClick={retry}>
          {strings.round.retry}
        </button>
      </p>
    );
  if (standings === undefined)
    return <Round book={book} plan={undefined} tally={undefined} standings={undefined} />;
  const now = new Date().toISOString();
  const plan = topic === undefined ? revisionPlan(own, standings, now) : topicPlan(own, standings, now);
  return <Round book={book} plan={plan} tally={tallyOf(own, standings, now)} standings={standings} />;
}
