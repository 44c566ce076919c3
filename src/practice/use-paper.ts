import { useContext, useState } from 'preact/hooks';
import { type Given, notedAnswer } from './answering.ts';
import { marked } from './bank.ts';
import { chosenTopics } from './paper.ts';
import { type PaperState, withGiven } from './paper-state.ts';
import type { Book } from './use-book.ts';
import { AroundContext } from './views/context.ts';

/** What a paper is made of, as the reader chose it. */
export interface PaperWish {
  readonly seed: number;
  readonly length: number;
  /** As in an address: ids with full stops between, empty for all. */
  readonly topics: string;
}

/** A paper from its beginning to its marks. */
export interface PaperUse {
  readonly paper: PaperState | undefined;
  /** Whether it could not be fetched or marked. */
  readonly isLost: boolean;
  readonly begin: (wish: PaperWish, hasClock: boolean) => Promise<void>;
  readonly give: (id: string, given: Given) => void;
  readonly handIn: () => Promise<void>;
  readonly leave: () => void;
}

export function usePaper(book: Book): PaperUse {
  const { questions, topics } = useContext(AroundContext);
  const [paper, setPaper] = useState<PaperState>();
  const [isLost, setLost] = useState(false);
  const begin = async (wish: PaperWish, hasClock: boolean): Promise<void> => {
    const chosen = chosenTopics(
      wish.topics,
      topics.map(({ id }) => id),
    );
    const found = await import('./paper-plan.ts')
      .then(({ drawnPapers }) => drawnPapers(questions, [{ ...wish, topics: chosen }]))
      .catch(() => undefined);
    setLost(found === undefined);
    if (found?.[0])
      setPaper({
        sittings: found[0].sittings,
        given: new Map(),
        begunMs: Date.now(),
        hasClock,
        handed: undefined,
      });
  };
  const handIn = async (): Promise<void> => {
    if (paper === undefined) return;
    const mark = async (sitting: PaperState['sittings'][number]) =>
      [sitting, await marked(sitting, paper.given.get(sitting.id) ?? '')] as const;
    const found = await Promise.all(paper.sittings.map(mark)).catch(() => undefined);
    setLost(found === undefined);
    if (found === undefined) return;
    const now = new Date();
    setPaper({
      ...paper,
      handed: { atMs: now.getTime(), marks: new Map(found.map(([{ id }, one]) => [id, one])) },
    });
    // what has no answer teaches the schedule nothing
    const given = found.filter(([, { outcome }]) => outcome !== 'unread');
    const noted = { unsure: false, at: now.toISOString() };
    void book.add(new Map(given.map(([sitting, one]) => [sitting.id, [notedAnswer(sitting, one, noted)]])));
  };
  return {
    paper,
    isLost,
    begin,
    handIn,
    give: (id, given) => setPaper((before) => before && withGiven(before, id, given)),
    leave: () => setPaper(undefined),
  };
}
