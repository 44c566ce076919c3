import type { KindName } from '../../text/read/kind.ts';
import type { UnitName } from '../../text/units.ts';
import type { Figure } from './figure.ts';
import type { MisconceptionId } from './misconceptions.ts';
import type { Ranges } from './ranges.ts';
import type { TopicId } from './topics.ts';

/** The four ways to answer. */
export type KindOfAnswer = 'choice' | 'typed' | 'order' | 'place';

/** A wrong answer: the mistake that leads there and what to say about it. */
export interface Slip {
  /** None where only the direction of an order was mistaken. */
  readonly misconception: MisconceptionId | undefined;
  readonly reply: string;
}

/** One answer to choose; without a slip it is the right one. */
export interface Choice {
  /** Letter in the order shown: a, b, c, d, e. */
  readonly id: string;
  readonly text: string;
  readonly reply: string;
  readonly misconception: MisconceptionId | undefined;
}

export interface ChoicePayload {
  readonly kind: 'choice';
  readonly options: readonly Choice[];
  /** Id of the right option. */
  readonly answer: string;
}

/** How far off a typed answer may be: a share of the value, or so much in the quantity's own unit. */
export interface Tolerance {
  readonly of: 'share' | 'value';
  readonly size: number;
}

export interface TypedPayload {
  readonly kind: 'typed';
  readonly quantity: KindName;
  /** Unit that counts where none is typed; stands beside the field. */
  readonly unit: UnitName;
  /** The answer in the quantity's own unit. */
  readonly value: number;
  readonly tolerance: Tolerance;
  /** The tolerance in words: "within 2 %". */
  readonly within: string;
  /** The answer as it would be written. */
  readonly answer: string;
  /** What known mistakes come to, in the quantity's own unit. */
  readonly near: readonly (Slip & { readonly value: number })[];
}

export interface OrderItem {
  readonly id: string;
  readonly text: string;
}

export interface OrderPayload {
  readonly kind: 'order';
  /** What stands at the two ends: "smallest first", "largest last". */
  readonly first: string;
  readonly last: string;
  /** In the order shown, never the right one. */
  readonly items: readonly OrderItem[];
  /** Ids in the right order. */
  readonly answer: readonly string[];
  /** What to say where the order is exactly reversed, and where it is wrong in another way. */
  readonly reversed: Slip;
  readonly otherwise: Slip;
}

export interface Place {
  /** Id of the place in the figure. */
  readonly id: string;
  /** The place in words, so that the question can be answered without the figure. */
  readonly words: string;
  readonly reply: string;
  readonly misconception: MisconceptionId | undefined;
}

export interface PlacePayload {
  readonly kind: 'place';
  readonly figure: Figure;
  readonly places: readonly Place[];
  /** Id of the right place. */
  readonly answer: string;
}

export type Payload = ChoicePayload | TypedPayload | OrderPayload | PlacePayload;

/** What a question is about, apart from its numbers. */
export interface QuestionFacts {
  /** Short, stable, never used again for another question. */
  readonly id: string;
  readonly topic: TopicId;
  /** Track and slug of the lesson it belongs to. */
  readonly lesson: string;
  /** Clauses of CEPT T/R 61-02 (2024), annex 6, part a; empty: beyond the syllabus. */
  readonly syllabus: readonly string[];
  /** 1: one step, 2: two, 3: more, or a trap. */
  readonly difficulty: 1 | 2 | 3;
  readonly kind: KindOfAnswer;
}

/** What drawn numbers make of a question. Options and items are in the order of the author, the right one first. */
export interface Made {
  readonly stem: string;
  readonly payload: Payload;
  /** The worked solution, line by line; of a question with numbers the last line ends in the answer. */
  readonly worked: readonly string[];
  /** What to say to somebody who has it right. */
  readonly right: string;
}

/** A question before its numbers are drawn. */
export interface BankQuestion extends QuestionFacts {
  /** The numbers it draws and where from; none for a question on words and methods. */
  readonly given: Ranges;
  /** Whether drawn numbers go together; if not, `sitting` draws again. */
  readonly suits: (drawn: Readonly<Record<string, number>>) => boolean;
  readonly make: (drawn: Readonly<Record<string, number>>) => Made;
}

/** A question with its numbers drawn and its options shuffled: plain data, complete for showing and marking. */
export interface Sitting extends QuestionFacts, Made {
  readonly seed: number;
  /** The numbers drawn, by name. */
  readonly drawn: Readonly<Record<string, number>>;
}
