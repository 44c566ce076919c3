import { seenSource, type Tag, tagsIn } from './tags.ts';

/** A figure where it stands in a lesson. */
export interface PlacedFigure {
  readonly tag: string;
  readonly attributes: Tag['attributes'];
  /** Title of its step. */
  readonly step: string;
  /** Its place on the page, which is the fragment of a link to it. */
  readonly place: string;
}

/** The figures of a lesson in their order. */
export function figuresIn(mdx: string): readonly PlacedFigure[] {
  const found: PlacedFigure[] = [];
  let step = '';
  for (const { name, isClosing, attributes } of tagsIn(seenSource(mdx))) {
    if (name === 'Step' && !isClosing) step = String(attributes.title);
    if (!name.endsWith('Figure')) continue;
    const { instance } = attributes;
    found.push({ tag: name, attributes, step, place: typeof instance === 'string' ? instance : 'figure' });
  }
  return found;
}
