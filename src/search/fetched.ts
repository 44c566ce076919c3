import type { Found, SearchIndex } from './engine.ts';

/** What answers a query. */
export type Ask = (query: string) => Found;

async function fetched(address: string): Promise<Ask> {
  const [{ find, readIndex }, answer] = await Promise.all([import('./engine.ts'), fetch(address)]);
  if (!answer.ok) throw new Error(`search: wish an index at ${address}, got ${answer.status}`);
  const index: SearchIndex = readIndex(await answer.text());
  return (query) => find(index, query);
}

/** Fetches the engine and the index when first asked, and once; a fetch that failed is tried again when next asked. */
export function fetchedOnce(address: string): () => Promise<Ask> {
  let ask: Promise<Ask> | undefined;
  return () => {
    ask ??= fetched(address).catch((error: unknown) => {
      ask = undefined;
      throw error;
    });
    return ask;
  };
}
