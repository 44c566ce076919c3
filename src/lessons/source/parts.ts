import type { Part } from '../../search/document.ts';
import { plainText } from './plain-text.ts';
import { seenSource, tagsIn } from './tags.ts';

/** Headings of parts that a tag makes, with their places on the page. */
const HEADED: Readonly<Record<string, { readonly at: string; readonly title: string }>> = {
  Takeaways: { at: 'remember', title: 'What to remember' },
  Sources: { at: 'sources', title: 'Where this comes from' },
};

/** The steps of a lesson and what follows them, as plain text with their places on its page. */
export function partsOf(mdx: string): readonly Part[] {
  const source = seenSource(mdx);
  const parts: { at: string; title: string; text: string }[] = [];
  let open = { at: '', title: '' };
  let done = 0;
  const close = (to: number): void => {
    const text = plainText(source.slice(done, to));
    if (text !== '') parts.push({ ...open, text });
  };
  for (const { name, isClosing, attributes, from, to } of tagsIn(source)) {
    const heading = HEADED[name];
    if (name !== 'Step' && heading === undefined) continue;
    close(from);
    const step = { at: String(attributes.id), title: String(attributes.title) };
    open = isClosing ? { at: '', title: '' } : (heading ?? step);
    done = to;
  }
  close(source.length);
  return parts;
}

/** Ids of the questions of a lesson, with the step that each stands in; empty for one after the steps. */
export function questionsIn(mdx: string): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  let step = '';
  for (const { name, isClosing, attributes } of tagsIn(seenSource(mdx))) {
    if (name === 'Step') step = isClosing ? '' : String(attributes.id);
    if (name === 'GuessFirst' || name === 'CheckYourself') places.set(String(attributes.id), step);
  }
  return places;
}
