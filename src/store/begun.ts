const KEY = 'practice:paper';

/** What was kept of a paper that is not handed in, as it lies there; undefined where none is, or the browser keeps nothing. */
export function keptBegun(): unknown {
  try {
    const text = localStorage.getItem(KEY);
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Keeps a paper that is not handed in; false where the browser refuses. */
export function keepBegun(paper: unknown): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(paper));
    return true;
  } catch {
    return false;
  }
}

/** Forgets it. */
export function forgetBegun(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // what was never kept need not be forgotten
  }
}
