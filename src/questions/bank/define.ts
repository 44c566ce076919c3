import type { KindName } from '../../text/read/kind.ts';
import type { UnitName } from '../../text/units.ts';
import { MISCONCEPTIONS, type MisconceptionId } from './misconceptions.ts';
import type { Drawn, Ranges } from './ranges.ts';
import type { TopicId } from './topics.ts';
import type {
  BankQuestion,
  ChoicePayload,
  Made,
  OrderItem,
  OrderPayload,
  Slip,
  Tolerance,
  TypedPayload,
} from './types.ts';
import { withinWords } from './write.ts';

/** What every question states. */
export interface Facts {
  readonly id: string;
  readonly lesson: string;
  readonly syllabus?: readonly string[];
  readonly difficulty: 1 | 2 | 3;
}

/** A wrong value, the mistake that leads to it, and a reply of its own where the mistake's is not enough. */
export type WrongValue = readonly [value: number, by: MisconceptionId, says?: string | undefined];
/** A wrong text, likewise. */
export type WrongText = readonly [text: string, by: MisconceptionId, says?: string | undefined];

/** How an answer is typed. */
export interface Typing {
  readonly quantity: KindName;
  readonly unit: UnitName;
  readonly tolerance: Tolerance;
}

/** A question whose answer is a number. Without `typed` it is one to choose. */
export interface NumericSource<R extends Ranges> extends Facts {
  readonly given: R;
  /** Whether the drawn numbers go together; if not, others are drawn. */
  readonly suits?: (n: Drawn<R>) => boolean;
  readonly stem: (n: Drawn<R>) => string;
  readonly answer: (n: Drawn<R>) => number;
  readonly write: (value: number) => string;
  readonly typed?: Typing;
  readonly wrong: (n: Drawn<R>) => readonly WrongValue[];
  /** Lines of the solution; the last one is followed by the answer. */
  readonly worked: (n: Drawn<R>) => readonly string[];
  readonly right: string;
}

/** What is put in order, and what to say where the order is wrong. */
export interface OrderSource {
  /** What stands at the two ends. */
  readonly ends: readonly [first: string, last: string];
  readonly items: readonly OrderItem[];
  /** What to say where it was given from its end. */
  readonly reversed: string;
  readonly otherwise: Slip;
}

/** The slip of a misconception, with its usual reply unless there is another. */
export const slip = (by: MisconceptionId, says?: string): Slip => ({
  misconception: by,
  reply: says ?? MISCONCEPTIONS[by].reply,
});

/** Things to put in order: they come in the right one. */
export const inOrder = ({ ends, items, reversed, otherwise }: OrderSource): OrderPayload => ({
  kind: 'order',
  first: ends[0],
  last: ends[1],
  items,
  answer: items.map(({ id }) => id),
  reversed: { misconception: undefined, reply: reversed },
  otherwise,
});

/** Options of a choice: the right one first, ids in the order of the author. */
export function choices(right: { text: string; reply: string }, wrong: readonly WrongText[]): ChoicePayload {
  const options = [
    { ...right, id: 'a', misconception: undefined },
    ...wrong.map(([text, by, says], k) => ({ ...slip(by, says), text, id: 'bcdef'[k] ?? '' })),
  ];
  return { kind: 'choice', options, answer: 'a' };
}

/** Levels that a wrong answer is to lie off the right one, in decibels, and the share of all other numbers. */
const APART = { level: 0.1, share: 0.02 } as const;

/** Whether every wrong answer is far enough off that nobody has to look at the last digit. */
function areApart<R extends Ranges>({ answer, wrong, write }: NumericSource<R>, n: Drawn<R>): boolean {
  const right = answer(n);
  const isLevel = write(right).endsWith('dBm');
  return wrong(n).every(([value]) => {
    const least = isLevel ? APART.level : APART.share * Math.max(Math.abs(value), Math.abs(right));
    return Math.abs(value - right) > least * (1 - 1e-9);
  });
}

function numericPayload<R extends Ranges>(
  source: NumericSource<R>,
  n: Drawn<R>,
): ChoicePayload | TypedPayload {
  const value = source.answer(n);
  const wrong = source.wrong(n);
  const text = source.write(value);
  if (source.typed === undefined)
    return choices(
      { text, reply: source.right },
      wrong.map(([is, by, says]) => [source.write(is), by, says] as const),
    );
  return {
    kind: 'typed',
    ...source.typed,
    value,
    within: withinWords(source.typed),
    answer: text,
    near: wrong.map(([is, by, says]) => ({ value: is, ...slip(by, says) })),
  };
}

/** A question with a number for an answer: chosen, or typed where `typed` says how. */
export function numeric<const R extends Ranges>(topic: TopicId, source: NumericSource<R>): BankQuestion {
  return {
    ...factsOf(topic, source),
    kind: source.typed === undefined ? 'choice' : 'typed',
    given: source.given,
    suits: (drawn) => (source.suits?.(drawn as Drawn<R>) ?? true) && areApart(source, drawn as Drawn<R>),
    make: (drawn) => {
      const n = drawn as Drawn<R>;
      const lines = source.worked(n);
      const answer = source.write(source.answer(n));
      return {
        stem: source.stem(n),
        payload: numericPayload(source, n),
        worked: lines.map((line, k) => (k === lines.length - 1 ? `${line} ${answer}.` : line)),
        right: source.right,
      };
    },
  };
}

const factsOf = (topic: TopicId, { id, lesson, syllabus = [], difficulty }: Facts) => ({
  id,
  topic,
  lesson,
  syllabus,
  difficulty,
});

/** A question on words, methods and cautions: nothing is drawn, only the order of the options changes. */
export interface ConceptSource extends Facts {
  readonly stem: string;
  /** The right answer and what to say to it. */
  readonly answer: readonly [text: string, reply: string];
  readonly wrong: readonly WrongText[];
  readonly worked: string;
}

/** A question without numbers. */
export function concept(topic: TopicId, source: ConceptSource): BankQuestion {
  const [text, reply] = source.answer;
  const made: Made = {
    stem: source.stem,
    payload: choices({ text, reply }, source.wrong),
    worked: [source.worked],
    right: reply,
  };
  return { ...factsOf(topic, source), kind: 'choice', given: {}, suits: () => true, make: () => made };
}

/** A question that is neither a number nor a choice of words, or whose options are texts with drawn numbers. */
export interface OtherSource<R extends Ranges> extends Facts {
  readonly given: R;
  readonly suits?: (n: Drawn<R>) => boolean;
  readonly make: (n: Drawn<R>) => Made;
}

/** A question of any kind, made from drawn numbers by hand. */
export function other<const R extends Ranges>(
  topic: TopicId,
  kind: BankQuestion['kind'],
  source: OtherSource<R>,
): BankQuestion {
  return {
    ...factsOf(topic, source),
    kind,
    given: source.given,
    suits: (drawn) => source.suits?.(drawn as Drawn<R>) ?? true,
    make: (drawn) => source.make(drawn as Drawn<R>),
  };
}
