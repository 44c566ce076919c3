const KEY = (id: string): string => `guess:${id}`;

/** The guess kept for a question, or undefined: none made, or the browser keeps nothing. */
export function keptGuess(id: string): string | undefined {
  try {
    return localStorage.getItem(KEY(id)) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a guess in this browser; false where the browser refuses. */
export function keepGuess(id: string, option: string): boolean {
  try {
    localStorage.setItem(KEY(id), option);
    return true;
  } catch {
    return false;
  }
}
