import { useContext, useState } from 'preact/hooks';
import { type Given, isBlank, notedAnswer } from './answering.ts';
import { marked } from './bank.ts';
import { type BegunPaper, resumedPaper } from './begun-paper.ts';
import { chosenTopics, type PaperWish } from './paper.ts';
import { type PaperState, withGiven } from './paper-state.ts';
import type { ShownSitting } from './shown.ts';
import type { Book } from './use-book.ts';
import { AroundContext } from './views/context.ts';

/** A paper from its beginning to its marks. */
export interface PaperUse {
  readonly paper: PaperState | undefined;
  /** Whether it could not be fetched or marked. */
  readonly isLost: boolean;
  readonly begin: (wish: PaperWish, hasClock: boolean) => Promise<void>;
  /** Puts a paper on the table again that was begun another time. */
  readonly resume: (begun: BegunPaper) => Promise<void>;
  readonly give: (id: string, given: Given) => void;
  readonly handIn: () => Promise<void>;
  readonly leave: () => void;
}

/** Every question with its mark; what was left as it was shown is not answered. */
const marksOf = ({ sittings, given }: PaperState) =>
  Promise.all(
    sittings.map(async (sitting) => {
      const one = given.get(sitting.id) ?? '';
      return [sitting, await marked(sitting, isBlank(sitting, one) ? '' : one)] as const;
    }),
  );

export function usePaper(book: Book): PaperUse {
  const { questions, topics } = useContext(AroundContext);
  const [paper, setPaper] = useState<PaperState>();
  const [isLost, setLost] = useState(false);
  /** Draws a paper and puts it on the table. */
  const lay = async (
    wish: PaperWish,
    table: (sittings: readonly ShownSitting[], nowMs: number) => PaperState,
  ): Promise<void> => {
    const chosen = chosenTopics(
      wish.topics,
      topics.map(({ id }) => id),
    );
    const found = await import('./paper-plan.ts')
      .then(({ drawnPapers }) => drawnPapers(questions, [{ ...wish, topics: chosen }]))
      .catch(() => undefined);
    setLost(found === undefined);
    if (found?.[0]) setPaper(table(found[0].sittings, Date.now()));
  };
  const begin = (wish: PaperWish, hasClock: boolean): Promise<void> =>
    lay(wish, (sittings, begunMs) => ({ sittings, given: new Map(), begunMs, hasClock, handed: undefined }));
  const handIn = async (): Promise<void> => {
    if (paper === undefined) return;
    const found = await marksOf(paper).catch(() => undefined);
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
    resume: (begun) => lay(begun, (sittings, nowMs) => resumedPaper(begun, sittings, nowMs)),
    handIn,
    give: (id, given) => setPaper((before) => before && withGiven(before, id, given)),
    leave: () => setPaper(undefined),
  };
}
