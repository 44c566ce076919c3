import { useEffect, useRef, useState } from 'preact/hooks';
import { forgetPapers } from '../store/begun.ts';
import { failed, type Outcome, type StoreProblem } from '../store/outcome.ts';
import { onReturned } from '../store/returned.ts';
import { type Answer, type Answers, joinedAnswers } from './answers.ts';
import type { AnswerBook, KeptAnswers } from './kept-answers.ts';
import type { Standing } from './schedule.ts';

/** The reader's answers: what is kept, and in this tab also what could not be kept. */
export interface Book {
  /** Whether what is kept has been read, or could not be. */
  readonly isRead: boolean;
  readonly answers: Answers;
  readonly unreadable: number;
  readonly problem: StoreProblem | undefined;
  readonly add: (answers: Answers) => Promise<void>;
  readonly note: (id: string, answer: Answer) => Promise<void>;
  /** Forgets everything that is kept. Resolves to whether the browser did. */
  readonly clear: () => Promise<boolean>;
}

const joined = (one: Answers, other: Answers): Answers => {
  const all = new Map(one);
  for (const [id, given] of other) all.set(id, joinedAnswers(all.get(id) ?? [], given));
  return all;
};

/** The book itself is fetched after the page has been drawn: whatever is asked of it meanwhile waits. */
const openBook = async (): Promise<AnswerBook> => (await import('./kept-answers.ts')).answerBook();

/** Where nothing could be fetched, nothing is kept either. */
const asked = async <Value>(work: Promise<Outcome<Value>> | undefined): Promise<Outcome<Value>> =>
  (await work?.catch(() => undefined)) ?? failed('refused');

/** What was given in this tab, as long as it is not known to be kept. */
interface OwnAnswers {
  answers: Answers;
  /** How often answers are being added, and looked for. */
  adds: number;
  looks: number;
  /** Whether something could not be kept: from then on all of it stays here. */
  isLost: boolean;
}

const ownAnswers = (): OwnAnswers => ({ answers: new Map(), adds: 0, looks: 0, isLost: false });

/** The book, opened once the page is awake; `look` is called then, and whenever something else may stand in it. */
function useOpened(look: () => void): { readonly current: Promise<AnswerBook> | undefined } {
  const book = useRef<Promise<AnswerBook>>();
  useEffect(() => {
    const opening = openBook();
    book.current = opening;
    look();
    const watching = opening.then((opened) => opened.watch(look));
    const unhear = onReturned(look);
    return () => {
      unhear();
      void watching
        .then((end) => end())
        .then(() => opening)
        .then((opened) => opened.close())
        .catch(() => undefined); // it never came
    };
  }, []);
  return book;
}

/** Opens the book of answers, and follows what other tabs add to it. */
export function useBook(): Book {
  const [isRead, setRead] = useState(false);
  const [{ answers, unreadable }, setKept] = useState<KeptAnswers>({ answers: new Map(), unreadable: 0 });
  const [problem, setProblem] = useState<StoreProblem>();
  const { current: own } = useRef(ownAnswers());
  const book = useOpened(() => void read());
  const read = async (): Promise<void> => {
    own.looks += 1;
    const all = await asked(book.current?.then((opened) => opened.all()));
    own.looks -= 1;
    // what was read may be older than what was given here
    if (all.ok) setKept({ ...all.value, answers: joined(all.value.answers, own.answers) });
    else setProblem(all.problem);
    setRead(true);
  };
  const add = async (given: Answers): Promise<void> => {
    own.answers = joined(own.answers, given);
    own.adds += 1;
    setKept((before) => ({ ...before, answers: joined(before.answers, given) }));
    const added = await asked(book.current?.then((opened) => opened.add(given)));
    own.adds -= 1;
    setProblem(added.ok ? undefined : added.problem);
    own.isLost ||= !added.ok;
    if (own.isLost || own.adds > 0) return;
    own.answers = new Map();
    if (own.looks > 0) await read();
  };
  const clear = async (): Promise<boolean> => {
    Object.assign(own, ownAnswers());
    const cleared = await asked(book.current?.then((opened) => opened.clear()));
    setProblem(cleared.ok ? undefined : cleared.problem);
    setKept({ answers: new Map(), unreadable: 0 });
    forgetPapers();
    await read();
    return cleared.ok;
  };
  return {
    isRead,
    answers,
    unreadable,
    problem,
    add,
    clear,
    note: (id, answer) => add(new Map([[id, [answer]]])),
  };
}

/** How every answered question stands. */
interface Standings {
  /** Undefined until it is known. */
  readonly standings: ReadonlyMap<string, Standing> | undefined;
  /** Whether what knows it could not be fetched; `retry` tries again. */
  readonly isLost: boolean;
  readonly retry: () => void;
}

/** How every answered question stands. The schedule is fetched with the first answer. */
export function useStandings({ answers, isRead }: Book): Standings {
  const [standings, setStandings] = useState<ReadonlyMap<string, Standing>>();
  const [isLost, setLost] = useState(false);
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    if (!isRead) return;
    if (answers.size === 0) {
      setStandings(new Map());
      return;
    }
    let isWanted = true;
    import('./schedule.ts').then(
      ({ givenBy, standingOf }) => {
        const now = new Date().toISOString();
        const found = [...answers].flatMap(([id, given]) => {
          const standing = standingOf(givenBy(given, now));
          return standing === undefined ? [] : [[id, standing] as const];
        });
        if (!isWanted) return;
        setStandings(new Map(found));
        setLost(false);
      },
      () => isWanted && setLost(true),
    );
    return () => {
      isWanted = false;
    };
  }, [answers, isRead, attempt]);
  return { standings, isLost, retry: () => setAttempt((before) => before + 1) };
}
