import { useContext } from 'preact/hooks';
import { tallyOf } from '../plan.ts';
import { strings } from '../strings.ts';
import { useBook, useStandings } from '../use-book.ts';
import { AroundContext } from './context.ts';
import { ProgressPart } from './ProgressPart.tsx';
import { SignChoice } from './SignChoice.tsx';

/** The ways in: topics with how much of them is due, and what was practised. */
export function Home() {
  const { root, questions, topics } = useContext(AroundContext);
  const book = useBook();
  const { standings } = useStandings(book);
  return (
    <>
      <ul class="practice-topics">
        {topics.map(({ id, title, words }) => {
          const own = questions.filter(({ topic }) => topic === id);
          const tally = standings && tallyOf(own, standings, new Date().toISOString());
          return (
            <li key={id}>
              <a href={`${root}practice/${id}/`}>{title}</a>
              <p>{words}</p>
              <p class="small muted needs-script">{tally && strings.round.tally(tally)}</p>
            </li>
          );
        })}
      </ul>
      <ProgressPart book={book} />
      <SignChoice />
    </>
  );
}
