import type { Reading } from './NumberField.tsx';

/** What stands in a field beside its value: a text that is being typed, read, or wrong. */
export interface Draft {
  /** What was typed; nothing where the field shows its value. */
  readonly text: string | undefined;
  /** Whether the text waits for its reading: what reads may still be on its way. */
  readonly awaited: boolean;
  /** Whether the field was left since. */
  readonly left: boolean;
  readonly problem: string | undefined;
}

/** A field that shows its value. */
export const NO_DRAFT: Draft = { text: undefined, awaited: false, left: false, problem: undefined };

/** Something was typed; what was wrong before stands until the new text is read. */
export const typed = ({ problem }: Draft, text: string): Draft => ({
  text,
  awaited: true,
  left: false,
  problem,
});

/** The field was left: a text that is wrong, or that nobody has read yet, stays where it is. */
export const afterLeaving = (draft: Draft): Draft =>
  draft.awaited || draft.problem !== undefined ? { ...draft, left: true } : NO_DRAFT;

/** The text was read: a right one stays as typed until the field is left, and gives way to the value where it was left already. */
export function afterReading({ left }: Draft, text: string, reading: Reading): Draft {
  if (!reading.ok) return { text, awaited: false, left, problem: reading.problem };
  return left ? { ...NO_DRAFT } : { text, awaited: false, left, problem: undefined };
}
