import { getCollection } from 'astro:content';
import { findable } from '../../lessons/findable/index.ts';
import { makeIndex } from '../../search/engine.ts';

/** The index of the search, made with the site. */
export async function GET(): Promise<Response> {
  const index = makeIndex(findable(await getCollection('lessons')));
  return new Response(JSON.stringify(index), { headers: { 'content-type': 'application/json' } });
}
