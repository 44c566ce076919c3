import { useContext, useEffect, useState } from 'preact/hooks';
import { whileOpening } from '../widgets/parts/opening.ts';
import { chosenTopics, seedsFrom } from './paper.ts';
import type { DrawnPaper } from './paper-plan.ts';
import { AroundContext } from './views/context.ts';

/** Which papers are to be printed. */
export interface PapersWish {
  readonly seed: number;
  readonly length: number;
  readonly topics: string;
  readonly papers: number;
}

export interface Papers {
  /** Those that were drawn last; the written ones before anything else was. */
  readonly papers: readonly DrawnPaper[];
  readonly isWaiting: boolean;
  readonly isLost: boolean;
  readonly retry: () => void;
}

/** Draws the papers that are wished for; until they are there, the last ones stay. */
export function usePapers(wish: PapersWish, usual: PapersWish, written: DrawnPaper): Papers {
  const { questions, topics } = useContext(AroundContext);
  const [papers, setPapers] = useState<readonly DrawnPaper[]>([written]);
  const [standing, setStanding] = useState<'there' | 'waiting' | 'lost'>('there');
  const [attempt, setAttempt] = useState(0);
  const key = [wish.seed, wish.length, wish.topics, wish.papers].join();
  const isUsual = key === [usual.seed, usual.length, usual.topics, usual.papers].join();
  useEffect(() => {
    let isWanted = true;
    const show = (found: readonly DrawnPaper[]): void => {
      if (!isWanted) return;
      setPapers(found);
      setStanding('there');
    };
    const chosen = chosenTopics(
      wish.topics,
      topics.map(({ id }) => id),
    );
    const wishes = seedsFrom(wish.seed, wish.papers).map((seed) => ({
      seed,
      length: wish.length,
      topics: chosen,
    }));
    if (isUsual) show([written]);
    else {
      setStanding('waiting');
      // whoever prints what an address asks for waits for all of it
      void whileOpening(() =>
        import('./paper-plan.ts')
          .then(({ drawnPapers }) => drawnPapers(questions, wishes))
          .then(show, () => isWanted && setStanding('lost')),
      );
    }
    return () => {
      isWanted = false;
    };
  }, [key, attempt]);
  return {
    papers,
    isWaiting: standing === 'waiting',
    isLost: standing === 'lost',
    retry: () => setAttempt((before) => before + 1),
  };
}
