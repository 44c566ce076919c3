import { keepText } from './kept-text.ts';

const KEY = 'stage:talk';

/** The talk kept in this browser, part by part; empty if none is, or the browser keeps nothing. */
export function keptTalk(): readonly string[] {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(found) ? found.filter((part): part is string => typeof part === 'string') : [];
  } catch {
    return [];
  }
}

/** Keeps a talk in this browser; false where the browser refuses. */
export const keepTalk = (parts: readonly string[]): boolean => keepText(KEY, JSON.stringify(parts));
