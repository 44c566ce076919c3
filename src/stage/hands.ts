/** Most hands at one option: more than any hall of a club holds. */
const MOST = 999;

/** What was typed as a count of hands; undefined for nothing or for what is no count. */
export function readHands(typed: string): number | undefined {
  const text = typed.trim();
  return /^\d{1,4}$/.test(text) && Number(text) <= MOST ? Number(text) : undefined;
}

/** The room's guesses: each option's count, and of how many hands. */
export interface Room {
  readonly counts: readonly number[];
  readonly total: number;
}

/** Counts what was typed, option by option; undefined while nobody's hand is counted. */
export function roomOf(typed: readonly (string | undefined)[]): Room | undefined {
  const counts = typed.map((text) => readHands(text ?? '') ?? 0);
  const total = counts.reduce((sum, count) => sum + count, 0);
  return total === 0 ? undefined : { counts, total };
}

/** `7 of 24`. */
export const handsText = (count: number, total: number): string => `${count} of ${total}`;
