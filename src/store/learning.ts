import { LESSON } from './progress.ts';

/** What a reader leaves behind while learning: progress (`progress.ts`), and guesses (`guesses.ts`). */
const LEARNING = [LESSON, 'guess:'] as const;

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
