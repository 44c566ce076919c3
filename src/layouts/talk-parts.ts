import type { CollectionEntry } from 'astro:content';
import type { Example } from '../examples/example.ts';
import { slideId } from '../stage/slides.ts';
import { strings } from '../stage/strings.ts';
import { exampleFrame, figureTitle } from './examples/frame.ts';
import { type Wall, wallOf } from './examples/wall.ts';

/** A page that steps can be picked from. */
export interface TalkSource {
  readonly title: string;
  /** Where its steps are shown, under the site's base. */
  readonly stage: string;
  readonly steps: readonly { readonly id: string; readonly title: string; readonly part: string }[];
}

const STEP = /<Step id="([^"]+)" title="([^"]+)">([\s\S]*?)<\/Step>/g;
const INNERMOST = /<More>(?:(?!<More>)[\s\S])*?<\/More>/;
const PIECE = /<StageBreak \/>|(?=<Mistake\b)/;
const WHAT = /^<Mistake what="([^"]+)"/;

/** What of a step's source is for the wall. */
function onWall(source: string): string {
  const less = source.replace(INNERMOST, '');
  return less === source ? less.replace(/<\/?StageOnly>/g, '') : onWall(less);
}

/** Names of the slides that a step is shown on, as its source has them. */
function slideTitles(title: string, source: string): readonly string[] {
  const pieces = onWall(source)
    .split(PIECE)
    .filter((piece, at) => at > 0 || piece.trim() !== '');
  return pieces.map((piece, at) => {
    const what = pieces.length > 1 ? WHAT.exec(piece)?.[1] : undefined;
    if (what !== undefined) return `${title}: ${what}`;
    return at === 0 ? title : strings.turn(title, at + 1, pieces.length);
  });
}

/** The steps of a lesson, as its source names them, a slide each. */
export function lessonSource({
  id,
  body = '',
  data,
}: Pick<CollectionEntry<'lessons'>, 'id' | 'body' | 'data'>): TalkSource {
  const steps = [...body.matchAll(STEP)].flatMap(([, name = '', title = '', source = '']) =>
    slideTitles(title, source).map((slide, at) => ({ id: slideId(name, at), title: slide })),
  );
  return {
    title: data.title,
    stage: `/stage/learn/${id}/`,
    steps: steps.map((one) => ({ ...one, part: `${id.replace('/', '.')}.${one.id}` })),
  };
}

/** What a chain has behind its sum. */
const CHAIN_STEPS = (['chain', 'tries', 'answer'] as const).map((id) => ({ id, title: exampleFrame[id] }));

/** The steps of an example, a slide each. */
export function exampleSource(example: Example): TalkSource {
  const wall = wallOf(example);
  const slides = (id: keyof Wall) =>
    wall[id].map((_, at) => ({
      id: slideId(id, at),
      title: at === 0 ? exampleFrame[id] : strings.turn(exampleFrame[id], at + 1, wall[id].length),
    }));
  const steps = [
    ...slides('question'),
    ...example.steps().map(({ id, title }) => ({ id: `step-${id}`, title })),
    ...(example.kind === 'chain'
      ? CHAIN_STEPS
      : [{ id: 'figure', title: figureTitle(example.slug) }, ...slides('answer')]),
    ...slides('mistake'),
    ...slides('care'),
  ];
  return {
    title: example.title,
    stage: `/stage/examples/${example.slug}/`,
    steps: steps.map((one) => ({ ...one, part: `examples.${example.slug}.${one.id}` })),
  };
}
