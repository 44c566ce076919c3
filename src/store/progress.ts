import { keepText, keptText } from './kept-text.ts';

/** How far a reader is with a lesson. */
export type Progress = 'begun' | 'finished';

const LESSON = 'lesson:';
/** What a reader leaves behind while learning: progress, and guesses (`guesses.ts`). */
const LEARNING = [LESSON, 'guess:'] as const;

/** How far the reader is with a lesson (`track/slug`); undefined if not begun, or if the browser keeps nothing. */
export function keptProgress(id: string): Progress | undefined {
  const kept = keptText(LESSON + id);
  return kept === 'begun' || kept === 'finished' ? kept : undefined;
}

/** Keeps how far the reader is in this browser; false where the browser refuses. */
export const keepProgress = (id: string, progress: Progress): boolean => keepText(LESSON + id, progress);

/**
 * Notes that a lesson was opened. What is kept already is not written again: another tab may have finished the lesson since it was
 * read. False where the browser refuses.
 */
export const beginLesson = (id: string): boolean =>
  keptProgress(id) !== undefined || keepProgress(id, 'begun');

/** Forgets progress and guesses, and nothing else that is kept; false where the browser refuses. */
export function forgetLearning(): boolean {
  try {
    const keys = Array.from({ length: localStorage.length }, (_, index) => localStorage.key(index) ?? '');
    for (const key of keys)
      if (LEARNING.some((prefix) => key.startsWith(prefix))) localStorage.removeItem(key);
    return true;
  } catch {
    return false;
  }
}

/** Whether this browser keeps anything at all. */
export function remembers(): boolean {
  const probe = `${LESSON}probe`;
  try {
    localStorage.setItem(probe, '');
    localStorage.removeItem(probe);
    return true;
  } catch {
    return false;
  }
}
