/** How well a question went: not known, known with help or by guessing, or known. */
export const GRADES = ['wrong', 'unsure', 'right'] as const;
export type Grade = (typeof GRADES)[number];

/** One answer that was given to a question. */
export interface Answer {
  /** When (ISO 8601, UTC), by the clock of the device. */
  readonly at: string;
  /** The seed of the numbers that were drawn. */
  readonly seed: number;
  readonly grade: Grade;
  /** The misconception behind a wrong answer; empty where none was recognised. */
  readonly mistake: string;
}

/** What was answered, oldest first, by question. */
export type Answers = ReadonlyMap<string, readonly Answer[]>;

/** So many answers to a question are kept; the oldest go first. Nobody gets there by revising when it is due. */
export const MOST_ANSWERS = 200;

/** Largest seed: four digits are soon typed from a sheet of paper. */
export const LARGEST_SEED = 9999;

const keyOf = ({ at, seed, grade, mistake }: Answer): string => `${at} ${seed} ${grade} ${mistake}`;
const compared = (one: string, other: string): number => (one < other ? -1 : Number(one > other));

/** Two lists of answers to one question as one: each answer once, in the order of time, the latest kept. */
export function joinedAnswers(one: readonly Answer[], other: readonly Answer[]): readonly Answer[] {
  const all = new Map([...one, ...other].map((answer) => [keyOf(answer), answer]));
  return [...all]
    .sort(([a], [b]) => compared(a, b))
    .map(([, answer]) => answer)
    .slice(-MOST_ANSWERS);
}

/** The seed that a question is asked with next: other numbers than the last time. */
export const nextSeed = (answers: readonly Answer[]): number =>
  ((answers.at(-1)?.seed ?? 0) % LARGEST_SEED) + 1;

const isTime = (value: unknown): value is string =>
  typeof value === 'string' &&
  /^\d{4}-\d{2}-\d{2}T[\d:.]{5,12}Z$/.test(value) &&
  !Number.isNaN(Date.parse(value));
const isSeed = (value: unknown): value is number =>
  Number.isInteger(value) && Number(value) >= 1 && Number(value) <= LARGEST_SEED;
const isGrade = (value: unknown): value is Grade => GRADES.some((grade) => grade === value);

/** An answer from what claims to be one; undefined where it is none. */
export function answerFrom(value: unknown): Answer | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { at, seed, grade, mistake } = value as Partial<Record<keyof Answer, unknown>>;
  if (!isTime(at) || !isSeed(seed) || !isGrade(grade) || typeof mistake !== 'string') return undefined;
  // one way to write a time, so that the order of the letters is that of time
  return { at: new Date(at).toISOString(), seed, grade, mistake };
}
