import { keepText, keptText } from './kept-text.ts';

const keyOf = (id: string): string => `guess:${id}`;

/** The guess kept for a question, or undefined: none made, or the browser keeps nothing. */
export const keptGuess = (id: string): string | undefined => keptText(keyOf(id));

/** Keeps a guess in this browser; false where the browser refuses. */
export const keepGuess = (id: string, option: string): boolean => keepText(keyOf(id), option);
