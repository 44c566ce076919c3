import type { CollectionEntry } from 'astro:content';
import type { Example } from '../examples/example.ts';
import { TRACKS, type Track } from '../lessons/tracks.ts';

/** A page that steps can be picked from. */
export interface TalkSource {
  readonly title: string;
  /** Where its steps are shown, under the site's base. */
  readonly stage: string;
  readonly steps: readonly { readonly id: string; readonly title: string; readonly part: string }[];
}

const step = /<Step id="([^"]+)" title="([^"]+)"/g;

/** The steps of a lesson, as its source names them. */
export function lessonSource({
  id,
  body = '',
  data,
}: Pick<CollectionEntry<'lessons'>, 'id' | 'body' | 'data'>): TalkSource {
  const steps = [...body.matchAll(step)].map(([, name = '', title = '']) => ({
    id: name,
    title,
    part: `${id.replace('/', '.')}.${name}`,
  }));
  return { title: data.title, stage: `/stage/learn/${id}/`, steps };
}

/** Steps that every example has around those of its sum, by their anchors. */
export const exampleFrame = {
  question: 'The question',
  chain: 'The band along the chain',
  answer: 'The answer',
  mistake: 'The mistake to guard against',
  care: 'Take care',
} as const;

/** The steps of an example; `hasChain` says whether its band is shown. */
export function exampleSource(example: Example, hasChain: boolean): TalkSource {
  const sum = example.steps().map(({ id, title }) => ({ id: `step-${id}`, title }));
  const framed = (Object.keys(exampleFrame) as (keyof typeof exampleFrame)[]).map((id) => ({
    id,
    title: exampleFrame[id],
  }));
  const [question, ...rest] = framed.filter(({ id }) => hasChain || id !== 'chain');
  const steps = [...(question ? [question] : []), ...sum, ...rest];
  return {
    title: example.title,
    stage: `/stage/examples/${example.slug}/`,
    steps: steps.map((one) => ({ ...one, part: `examples.${example.slug}.${one.id}` })),
  };
}

/** Lessons in the order in which they build on each other. */
export const inOrder = <Of extends Pick<CollectionEntry<'lessons'>, 'data'>>(
  lessons: readonly Of[],
): readonly Of[] => {
  const tracks = Object.keys(TRACKS) as Track[];
  return lessons.toSorted(
    ({ data: a }, { data: b }) => tracks.indexOf(a.track) - tracks.indexOf(b.track) || a.order - b.order,
  );
};
