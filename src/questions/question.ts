/** One answer to choose. */
export interface Option {
  /** Letter in the order shown: a, b, c, d. */
  readonly id: string;
  readonly text: string;
  /** What to say to somebody who chose this; for a wrong one, names the misconception and answers it. */
  readonly reply: string;
}

/** A question with its options computed, right and wrong alike; plain data. */
export interface Question {
  readonly id: string;
  readonly stem: string;
  /** The same in fewer numbers for a wall, where the stem has more than a room takes in. */
  readonly wall?: string;
  readonly options: readonly Option[];
  /** Id of the right option. */
  readonly answer: string;
  /** The worked reply, for everyone. */
  readonly worked: string;
}
