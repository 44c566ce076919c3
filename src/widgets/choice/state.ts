import type { Option, Question } from '../../questions/question.ts';

export interface ChoiceState {
  readonly chosen: string | undefined;
  /** Whether the reader has committed to the choice. */
  readonly given: boolean;
}

export type ChoiceAction =
  | { readonly type: 'choose'; readonly option: string }
  | { readonly type: 'give' }
  | { readonly type: 'again' }
  /** A guess kept from an earlier visit. */
  | { readonly type: 'recall'; readonly option: string };

export const noChoice: ChoiceState = { chosen: undefined, given: false };

/** Total and pure. A given answer stands until `again`. */
export function reduceChoice(state: ChoiceState, action: ChoiceAction): ChoiceState {
  switch (action.type) {
    case 'choose':
      return state.given ? state : { ...state, chosen: action.option };
    case 'give':
      return state.chosen === undefined ? state : { ...state, given: true };
    case 'again':
      return noChoice;
    case 'recall':
      return { chosen: action.option, given: true };
  }
}

/** The option chosen, if it is one of the question's. */
export const chosenOption = (question: Question, { chosen }: ChoiceState): Option | undefined =>
  question.options.find(({ id }) => id === chosen);
