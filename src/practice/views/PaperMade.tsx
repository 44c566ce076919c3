import { useContext } from 'preact/hooks';
import { chosenTopics, type PaperWish, topicTitles } from '../paper.ts';
import { strings } from '../strings.ts';
import { AroundContext } from './context.ts';

/** What a mock paper was made of, so that it can be made again. */
export function PaperMade({ wish, count }: { readonly wish: PaperWish; readonly count: number }) {
  const { topics } = useContext(AroundContext);
  const chosen = chosenTopics(
    wish.topics,
    topics.map(({ id }) => id),
  );
  return <>{strings.paper.made({ seed: wish.seed, count, topics: topicTitles(chosen, topics) })}</>;
}
