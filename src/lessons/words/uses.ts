import { getCollection } from 'astro:content';
import { inOrder } from '../order.ts';
import { wordsIn } from '../words.ts';

/** A lesson that uses a word. */
export interface Use {
  readonly title: string;
  readonly path: string;
}

/** Lessons by the words that they tag, in the order of the lessons. */
export async function usesOfWords(): Promise<ReadonlyMap<string, readonly Use[]>> {
  const uses = new Map<string, Use[]>();
  for (const { id, body = '', data } of inOrder(await getCollection('lessons')))
    for (const word of wordsIn(body))
      uses.set(word, [...(uses.get(word) ?? []), { title: data.title, path: `/learn/${id}/` }]);
  return uses;
}
