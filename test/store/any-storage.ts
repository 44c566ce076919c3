/** What a browser keeps for a site, of this test alone; two tabs may share it. */
export function storage(begun: Readonly<Record<string, string>> = {}) {
  const kept = new Map(Object.entries(begun));
  return {
    kept,
    get length() {
      return kept.size;
    },
    key: (index: number) => [...kept.keys()][index] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
}

const refuse = (): never => {
  throw new Error('SecurityError');
};

/** A browser that keeps nothing. */
export const refusing = {
  get length() {
    return refuse();
  },
  key: refuse,
  getItem: refuse,
  setItem: refuse,
  removeItem: refuse,
};
