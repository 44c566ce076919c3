const KEY = (question: string): string => `hands:${question}`;

/** Counts by option that a room gave in this sitting; empty where none were, or the browser keeps nothing. */
export function keptHands(question: string): Readonly<Record<string, string>> {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(KEY(question)) ?? '{}');
    if (typeof found !== 'object' || found === null) return {};
    return Object.fromEntries(
      Object.entries(found).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}

/** Keeps the counts for this sitting; false where the browser refuses. */
export function keepHands(question: string, counts: Readonly<Record<string, string>>): boolean {
  try {
    sessionStorage.setItem(KEY(question), JSON.stringify(counts));
    return true;
  } catch {
    return false;
  }
}
