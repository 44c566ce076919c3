import type { Given, Marked } from '../questions/bank/mark.ts';
import type { Payload, Sitting } from '../questions/bank/types.ts';
import type { Answer, Grade } from './answers.ts';

export type { Given, Marked } from '../questions/bank/mark.ts';

/** What stands in the form before anything is done: items in the order shown, nothing chosen, nothing typed. */
export const blankGiven = (payload: Payload): Given =>
  payload.kind === 'order' ? payload.items.map(({ id }) => id) : '';

/** Whether nothing was done yet; an order that was left as it was shown counts as none. */
export const isBlank = ({ payload }: Sitting, given: Given): boolean =>
  given === '' || (payload.kind === 'order' && String(given) === String(blankGiven(payload)));

/** The order with one item moved a place up (-1) or down (1); the same where there is no such place. */
export function movedItem(order: readonly string[], id: string, by: -1 | 1): readonly string[] {
  const from = order.indexOf(id);
  const to = from + by;
  if (from < 0 || to < 0 || to >= order.length) return order;
  const others = order.filter((each) => each !== id);
  return [...others.slice(0, to), id, ...others.slice(to)];
}

/** How an answer counts: right is unsure where the reader said so, and near is not right. */
export function gradeOf({ outcome }: Marked, unsure: boolean): Grade {
  if (outcome !== 'right') return 'wrong';
  return unsure ? 'unsure' : 'right';
}

/** An answer as it is noted. */
export const notedAnswer = (
  { seed }: Pick<Sitting, 'seed'>,
  marked: Marked,
  { unsure, at }: { readonly unsure: boolean; readonly at: string },
): Answer => ({ at, seed, grade: gradeOf(marked, unsure), mistake: marked.misconception ?? '' });

/** The right answer as texts: one, or a list in order. */
export function answerTexts({ payload }: Sitting): readonly string[] {
  switch (payload.kind) {
    case 'choice':
      return payload.options.filter(({ id }) => id === payload.answer).map(({ text }) => text);
    case 'place':
      return payload.places.filter(({ id }) => id === payload.answer).map(({ words }) => words);
    case 'typed':
      return [payload.answer];
    case 'order':
      return textsInOrder(payload, payload.answer);
  }
}

/** What was answered, as texts; none where nothing was. */
export function givenTexts(sitting: Sitting, given: Given): readonly string[] {
  const { payload } = sitting;
  if (isBlank(sitting, given)) return [];
  switch (payload.kind) {
    case 'choice':
      return payload.options.filter(({ id }) => id === given).map(({ text }) => text);
    case 'place':
      return payload.places.filter(({ id }) => id === given).map(({ words }) => words);
    case 'typed':
      return [String(given)];
    case 'order':
      return textsInOrder(payload, typeof given === 'string' ? [] : given);
  }
}

const textsInOrder = (
  { items }: { readonly items: readonly { readonly id: string; readonly text: string }[] },
  order: readonly string[],
): readonly string[] => order.flatMap((id) => items.filter((item) => item.id === id).map(({ text }) => text));
