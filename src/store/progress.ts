import { keepText, keptText } from './kept-text.ts';

/** How far a reader is with a lesson. */
export type Progress = 'begun' | 'finished';

/** What the keys of progress begin with, before the lesson. */
export const LESSON = 'lesson:';

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
