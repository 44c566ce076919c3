import { type KeptForm, type KeptStore, keptStore } from '../store/kept.ts';
import { done, type Outcome } from '../store/outcome.ts';
import { type Answer, type Answers, answerFrom, joinedAnswers } from './answers.ts';

/** How answers are kept: a list for each question. Raise the version when an older page could not read what is written. */
const FORM: KeptForm<readonly Answer[]> = {
  version: 1,
  read(value) {
    if (!Array.isArray(value)) return undefined;
    const answers = value.map(answerFrom);
    const all = answers.filter((answer) => answer !== undefined);
    return all.length === answers.length ? joinedAnswers(all, []) : undefined;
  },
};

/** Everything that was answered and is kept in this browser, and how much of it cannot be read (and stays as it is). */
export interface KeptAnswers {
  readonly answers: Answers;
  readonly unreadable: number;
}

/** The reader's answers. No call throws where the browser refuses: it answers with the problem. */
export interface AnswerBook {
  all(): Promise<Outcome<KeptAnswers>>;
  /** Adds answers to what is kept, question by question; what is there already is not added twice. */
  add(answers: Answers): Promise<Outcome<undefined>>;
  /** Removes every answer, readable or not. */
  clear(): Promise<Outcome<undefined>>;
  /** Calls whenever another tab adds or removes answers. */
  watch(onChange: () => void): () => void;
  close(): void;
}

type Store = KeptStore<readonly Answer[]>;

/** Does one after the other, whatever becomes of each; answers with the first problem. */
async function inTurn(steps: readonly (() => Promise<Outcome<unknown>>)[]): Promise<Outcome<undefined>> {
  let first: Outcome<undefined> = done(undefined);
  for (const step of steps) {
    const outcome = await step();
    if (!outcome.ok && first.ok) first = outcome;
  }
  return first;
}

async function listed(store: Store): Promise<Outcome<KeptAnswers>> {
  const list = await store.list();
  if (!list.ok) return list;
  const { items, unreadable } = list.value;
  return done({
    answers: new Map(items.map(({ id, value }) => [id, value])),
    unreadable: unreadable.length,
  });
}

async function cleared(store: Store): Promise<Outcome<undefined>> {
  const list = await store.list();
  if (!list.ok) return list;
  const ids = [...list.value.items, ...list.value.unreadable].map(({ id }) => id);
  return inTurn(
    ids.map((id) => async () => {
      const removed = await store.remove(id);
      return removed.ok || removed.problem !== 'missing' ? removed : done(undefined); // another tab was quicker
    }),
  );
}

/** The answers kept in this browser; nothing is opened before the first call. */
export function answerBook(now?: () => string): AnswerBook {
  const store = keptStore('practice', FORM, now);
  return {
    all: () => listed(store),
    add: (answers) =>
      inTurn(
        [...answers].map(
          ([id, given]) =>
            () =>
              store.change(id, (before) => joinedAnswers(before ?? [], given)),
        ),
      ),
    clear: () => cleared(store),
    watch: (onChange) => store.watch(onChange),
    close: () => store.close(),
  };
}
