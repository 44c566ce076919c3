import { useContext, useRef, useState } from 'preact/hooks';
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
  /** What the paper on the table was made of, whatever the form says by now. */
  readonly made: PaperWish | undefined;
  /** Whether it could not be fetched or marked. */
  readonly isLost: boolean;
  readonly begin: (wish: PaperWish, hasClock: boolean) => Promise<void>;
  /** Puts a paper on the table again that was begun another time. */
  readonly resume: (begun: BegunPaper) => Promise<void>;
  readonly give: (id: string, given: Given) => void;
  readonly handIn: () => Promise<void>;
  readonly leave: () => void;
}

interface Table {
  readonly paper: PaperState;
  readonly made: PaperWish;
}

type Change = (make: (before: PaperState) => PaperState) => void;

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
  const [table, setTable] = useState<Table>();
  const [isLost, setLost] = useState(false);
  const change: Change = (make) => setTable((before) => before && { ...before, paper: make(before.paper) });
  /** The paper that was asked for last counts: one that comes later must not take its place. */
  const laying = useRef(0);
  /** Draws a paper and puts it on the table. */
  const lay = async (
    { seed, length, topics: named }: PaperWish,
    put: (sittings: readonly ShownSitting[], nowMs: number) => PaperState,
  ): Promise<void> => {
    laying.current += 1;
    const mine = laying.current;
    const made = { seed, length, topics: named };
    const chosen = chosenTopics(
      named,
      topics.map(({ id }) => id),
    );
    const found = await import('./paper-plan.ts')
      .then(({ drawnPapers }) => drawnPapers(questions, [{ ...made, topics: chosen }]))
      .catch(() => undefined);
    if (mine !== laying.current) return;
    setLost(found === undefined);
    if (found?.[0]) setTable({ paper: put(found[0].sittings, Date.now()), made });
  };
  const begin = (wish: PaperWish, hasClock: boolean): Promise<void> =>
    lay(wish, (sittings, begunMs) => ({ sittings, given: new Map(), begunMs, hasClock, handed: undefined }));
  return {
    paper: table?.paper,
    made: table?.made,
    isLost,
    begin,
    resume: (begun) => lay(begun, (sittings, nowMs) => resumedPaper(begun, sittings, nowMs)),
    handIn: useHandIn(table?.paper, book, { change, setLost }),
    give: (id, given) => change((before) => withGiven(before, id, given)),
    leave: () => setTable(undefined),
  };
}

/** The way to hand a paper in, once: what marks is fetched then, and a second press meanwhile is none. */
function useHandIn(
  paper: PaperState | undefined,
  book: Book,
  { change, setLost }: { readonly change: Change; readonly setLost: (isLost: boolean) => void },
): () => Promise<void> {
  const marking = useRef(false);
  return async () => {
    if (paper === undefined || marking.current) return;
    marking.current = true;
    const found = await marksOf(paper).catch(() => undefined);
    marking.current = false;
    setLost(found === undefined);
    if (found === undefined) return;
    const now = new Date();
    const marks = new Map(found.map(([{ id }, one]) => [id, one]));
    // with the answers that it was handed in with
    change(() => ({ ...paper, handed: { atMs: now.getTime(), marks } }));
    // what has no answer teaches the schedule nothing
    const given = found.filter(([, { outcome }]) => outcome !== 'unread');
    const noted = { unsure: false, at: now.toISOString() };
    void book.add(new Map(given.map(([sitting, one]) => [sitting.id, [notedAnswer(sitting, one, noted)]])));
  };
}
