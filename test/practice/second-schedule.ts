/**
 * The Free Spaced Repetition Scheduler, version 6, written down a second time from its published formulas ("The Algorithm", the page
 * of its authors; here from memory, with their 21 parameters): plain numbers, no rounding on the way, nothing of the library's code.
 * What the formulas leave open is the library's choice and is marked so.
 */
const w = [
  0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
  1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
] as const;

/** 1 again, 2 hard, 3 good, 4 easy. */
export type Mark = 1 | 2 | 3 | 4;

export interface Memory {
  readonly stability: number;
  readonly difficulty: number;
}

const within = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** The chance to know it after some days: nine in ten when they are as many as the stability. */
export function chance(days: number, stability: number): number {
  const factor = 0.9 ** (-1 / w[20]) - 1;
  return (1 + (factor * days) / stability) ** -w[20];
}

const firstDifficulty = (mark: Mark): number => w[4] - Math.exp(w[5] * (mark - 1)) + 1;

/** After the first answer. */
export const first = (mark: Mark): Memory => ({
  stability: w[(mark - 1) as 0 | 1 | 2 | 3],
  difficulty: within(firstDifficulty(mark), 1, 10),
});

function nextDifficulty(difficulty: number, mark: Mark): number {
  const damped = difficulty + (-w[6] * (mark - 3) * (10 - difficulty)) / 9;
  return within(w[7] * firstDifficulty(4) + (1 - w[7]) * damped, 1, 10);
}

function afterRecall({ stability, difficulty }: Memory, recall: number, mark: Mark): number {
  const penalty = mark === 2 ? w[15] : 1;
  const bonus = mark === 4 ? w[16] : 1;
  const growth =
    Math.exp(w[8]) * (11 - difficulty) * stability ** -w[9] * (Math.exp(w[10] * (1 - recall)) - 1);
  return stability * (1 + growth * penalty * bonus);
}

function afterLapse({ stability, difficulty }: Memory, recall: number): number {
  const fresh =
    w[11] * difficulty ** -w[12] * ((stability + 1) ** w[13] - 1) * Math.exp(w[14] * (1 - recall));
  return Math.min(fresh, stability / Math.exp(w[17] * w[18]));
}

/** Again on the same day. That a hard answer does not lower the stability either is the library's choice. */
function sameDay(stability: number, mark: Mark): number {
  const growth = Math.exp(w[17] * (mark - 3 + w[18])) * stability ** -w[19];
  return stability * (mark >= 2 ? Math.max(growth, 1) : growth);
}

/** After one more answer, so many whole days after the last. */
export function next(memory: Memory, days: number, mark: Mark): Memory {
  const difficulty = nextDifficulty(memory.difficulty, mark);
  if (days === 0) return { stability: sameDay(memory.stability, mark), difficulty };
  const recall = chance(days, memory.stability);
  const stability = mark === 1 ? afterLapse(memory, recall) : afterRecall(memory, recall, mark);
  return { stability, difficulty };
}

/** Days to rest for a chance of nine in ten: the stability in whole days, at least one. */
export const rest = (stability: number, most: number): number => within(Math.round(stability), 1, most);

/**
 * Days to rest after an answer; `before` is undefined for the first. That a good answer rests a day longer than a hard one would have is
 * the library's choice.
 */
export function restAfter(before: Memory | undefined, days: number, mark: Mark, most: number): number {
  const alone = (of: Mark): number => rest((before ? next(before, days, of) : first(of)).stability, most);
  if (before === undefined || mark === 1) return alone(mark);
  const hard = Math.min(alone(2), alone(3));
  return mark === 2 ? hard : Math.max(alone(3), hard + 1);
}
