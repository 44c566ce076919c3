import { randomFrom } from '#compute';
import { drawFrom, shuffled } from './ranges.ts';
import type { BankQuestion, Made, Payload, Sitting } from './types.ts';

/** Seeds are whole numbers below this. */
export const SEEDS = 2 ** 32;

/** Draws until the numbers go together; more than enough, since a fair share of all draws does. */
const MOST_DRAWS = 400;

/** A number of 21 bits from a name (Fowler, Noll, Vo 1a), so that questions of one seed draw apart from each other. */
function hashOf(name: string): number {
  let hash = 0x811c9dc5;
  for (const letter of name) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return hash >>> 11;
}

/** Whether all that can be chosen reads differently, and every known mistake is far enough from the answer to be told from it. */
function distinct(payload: Payload): boolean {
  switch (payload.kind) {
    case 'choice':
      return new Set(payload.options.map(({ text }) => text)).size === payload.options.length;
    case 'order':
      return new Set(payload.items.map(({ text }) => text)).size === payload.items.length;
    case 'place':
      return new Set(payload.places.map(({ words }) => words)).size === payload.places.length;
    case 'typed': {
      const { value, tolerance, near } = payload;
      const reach = tolerance.of === 'share' ? Math.abs(value) * tolerance.size : tolerance.size;
      const all = [value, ...near.map((slip) => slip.value)];
      return all.every((one, at) => all.every((two, from) => at === from || Math.abs(one - two) > 2 * reach));
    }
  }
}

function made(question: BankQuestion, random: () => number): { drawn: Sitting['drawn']; made: Made } {
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const drawn = drawFrom(question.given, random);
    if (!question.suits(drawn)) continue;
    const result = question.make(drawn);
    if (distinct(result.payload)) return { drawn, made: result };
  }
  throw new RangeError(
    `sitting: ${question.id} must find numbers that go together, got none in ${MOST_DRAWS} draws`,
  );
}

/** The payload in an order of chance; options take their letters in the order shown. */
function mixed(payload: Payload, random: () => number): Payload {
  if (payload.kind === 'choice') {
    const order = shuffled(payload.options, random);
    const letter = (at: number): string => 'abcdef'[at] ?? '';
    return {
      ...payload,
      options: order.map((option, at) => ({ ...option, id: letter(at) })),
      answer: letter(order.findIndex(({ id }) => id === payload.answer)),
    };
  }
  if (payload.kind !== 'order') return payload;
  let items = shuffled(payload.items, random);
  while (items.every(({ id }, at) => id === payload.answer[at])) items = shuffled(payload.items, random);
  return { ...payload, items };
}

/**
 * A question with the numbers and the order that a seed gives: the same for the same seed, everywhere.
 * @throws RangeError for a seed that is not a whole number from 0 to 2^32 - 1.
 */
export function sitting(question: BankQuestion, seed: number): Sitting {
  if (!(Number.isInteger(seed) && seed >= 0 && seed < SEEDS))
    throw new RangeError(`sitting: seed must be a whole number from 0 to ${SEEDS - 1}, got ${seed}`);
  const random = randomFrom(hashOf(question.id) * SEEDS + seed);
  const { drawn, made: result } = made(question, random);
  const { id, topic, lesson, syllabus, difficulty, kind } = question;
  const facts = { id, topic, lesson, syllabus, difficulty, kind };
  return { ...facts, seed, drawn, ...result, payload: mixed(result.payload, random) };
}
