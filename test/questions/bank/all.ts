import { bankQuestions } from '../../../src/questions/bank/index.ts';
import { sitting } from '../../../src/questions/bank/sitting.ts';
import type { BankQuestion, Payload, Sitting } from '../../../src/questions/bank/types.ts';

export const SEEDS = 200;

const kept = new Map<string, readonly Sitting[]>();

/** Two hundred sittings of a question, drawn once a file of tests. */
export function sittingsOf(question: BankQuestion): readonly Sitting[] {
  const found = kept.get(question.id);
  if (found !== undefined) return found;
  const all = Array.from({ length: SEEDS }, (_, seed) => sitting(question, seed));
  kept.set(question.id, all);
  return all;
}

export const hasNumbers = ({ given }: BankQuestion): boolean => Object.keys(given).length > 0;
export const numbered = (): readonly BankQuestion[] => bankQuestions().filter(hasNumbers);
export const worded = (): readonly BankQuestion[] =>
  bankQuestions().filter((question) => !hasNumbers(question));

/** Everything that a reader of a sitting could come to read. */
export function textsOf({ stem, payload, worked, right }: Sitting): readonly string[] {
  return [stem, ...worked, right, ...payloadTexts(payload)];
}

function payloadTexts(payload: Payload): readonly string[] {
  switch (payload.kind) {
    case 'choice':
      return payload.options.flatMap(({ text, reply }) => [text, reply]);
    case 'typed':
      return [payload.answer, payload.within, ...payload.near.map(({ reply }) => reply)];
    case 'order':
      return [
        payload.first,
        payload.last,
        payload.reversed.reply,
        payload.otherwise.reply,
        ...payload.items.map(({ text }) => text),
      ];
    case 'place':
      return [payload.figure.name, ...payload.places.flatMap(({ words, reply }) => [words, reply])];
  }
}

/** The right answer as text. */
export function answerText({ payload }: Sitting): string {
  switch (payload.kind) {
    case 'choice':
      return payload.options.find(({ id }) => id === payload.answer)?.text ?? '';
    case 'typed':
      return payload.answer;
    case 'order':
      return payload.answer.map((id) => payload.items.find((item) => item.id === id)?.text ?? '').join('; ');
    case 'place':
      return payload.places.find(({ id }) => id === payload.answer)?.words ?? '';
  }
}
