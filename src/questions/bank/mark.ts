import { markTyped } from './mark-typed.ts';
import type { MisconceptionId } from './misconceptions.ts';
import type { OrderPayload, Sitting } from './types.ts';

/** What an answer is worth. */
export interface Marked {
  /** `unread` is no answer yet: what was typed is not a number of the kind, or nothing was chosen. */
  readonly outcome: 'right' | 'near' | 'wrong' | 'unread';
  readonly reply: string;
  readonly misconception: MisconceptionId | undefined;
}

/** An answer as given: the id of an option or place, the text typed, or ids in order. */
export type Given = string | readonly string[];

const UNREAD: Marked = { outcome: 'unread', reply: 'Nothing is chosen yet.', misconception: undefined };

function markOrder(
  { items, answer, reversed, otherwise }: OrderPayload,
  given: readonly string[],
  right: string,
): Marked {
  const complete = given.length === answer.length && items.every(({ id }) => given.includes(id));
  if (!complete) return { ...UNREAD, reply: 'Not all of them have their place yet.' };
  if (given.every((id, at) => id === answer[at]))
    return { outcome: 'right', reply: right, misconception: undefined };
  const back = given.every((id, at) => id === answer[answer.length - 1 - at]);
  return { outcome: back ? 'near' : 'wrong', ...(back ? reversed : otherwise) };
}

function markChosen(
  all: readonly { id: string; reply: string; misconception: MisconceptionId | undefined }[],
  answer: string,
  given: string,
): Marked {
  const chosen = all.find(({ id }) => id === given);
  if (chosen === undefined) return UNREAD;
  const { reply, misconception } = chosen;
  return { outcome: given === answer ? 'right' : 'wrong', reply, misconception };
}

/** Marks an answer. Never throws: what cannot be read is `unread`, with a sentence. */
export function mark({ payload, right }: Sitting, given: Given): Marked {
  const text = typeof given === 'string' ? given : given.join(' ');
  switch (payload.kind) {
    case 'choice':
      return markChosen(payload.options, payload.answer, text);
    case 'place':
      return markChosen(payload.places, payload.answer, text);
    case 'order':
      return markOrder(payload, typeof given === 'string' ? given.split(' ') : given, right);
    case 'typed':
      return markTyped(payload, text, right);
  }
}
