import type { Grade } from './answers.ts';
import type { ListedQuestion } from './facts.ts';

/** A question to be asked in a round. */
export interface Ask extends ListedQuestion {
  /** Whether it is asked once more in the same round because it went wrong. */
  readonly again: boolean;
}

/** How a question of the round went. */
export interface Went {
  readonly id: string;
  readonly again: boolean;
  readonly grade: Grade;
  readonly mistake: string;
}

/** A round of questions, one after the other. `at` beyond the last means that it is over. */
export interface RoundState {
  readonly queue: readonly Ask[];
  readonly at: number;
  readonly went: readonly Went[];
}

export type RoundAction =
  | { readonly type: 'begin'; readonly questions: readonly ListedQuestion[] }
  | { readonly type: 'answered'; readonly grade: Grade; readonly mistake: string }
  | { readonly type: 'next' }
  | { readonly type: 'leave' };

export const noRound: RoundState = { queue: [], at: 0, went: [] };

/** The question that is asked now. */
export const askedNow = ({ queue, at }: RoundState): Ask | undefined => queue[at];
export const isOver = ({ queue, at }: RoundState): boolean => queue.length > 0 && at >= queue.length;

/** Whether the question asked now has its answer. */
const isAnswered = ({ at, went }: RoundState): boolean => went.length > at;

/** Whether the question asked now comes once more later in the round. */
export const isAskedLater = ({ queue, at }: RoundState): boolean =>
  queue.slice(at + 1).some(({ id }) => id === queue[at]?.id);

/** Total and pure. What went wrong comes once more at the end, with other numbers. */
export function reduceRound(state: RoundState, action: RoundAction): RoundState {
  switch (action.type) {
    case 'begin':
      return { queue: action.questions.map((question) => ({ ...question, again: false })), at: 0, went: [] };
    case 'answered': {
      const asked = askedNow(state);
      if (asked === undefined || isAnswered(state)) return state;
      const { grade, mistake } = action;
      const more = grade === 'wrong' && !asked.again ? [{ ...asked, again: true }] : [];
      const went = [...state.went, { id: asked.id, again: asked.again, grade, mistake }];
      return { ...state, queue: [...state.queue, ...more], went };
    }
    case 'next':
      return isAnswered(state) ? { ...state, at: state.at + 1 } : state;
    case 'leave':
      return noRound;
  }
}

/** What a round came to, by the first answer to each question. */
export function sumOf({ went }: RoundState): {
  readonly right: number;
  readonly unsure: number;
  readonly asked: number;
  readonly mistakes: readonly string[];
} {
  const first = went.filter(({ again }) => !again);
  return {
    right: first.filter(({ grade }) => grade !== 'wrong').length,
    unsure: first.filter(({ grade }) => grade === 'unsure').length,
    asked: first.length,
    mistakes: [...new Set(went.map(({ mistake }) => mistake).filter((mistake) => mistake !== ''))],
  };
}
