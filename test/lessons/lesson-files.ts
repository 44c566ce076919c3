import type { FoundLesson } from '../../src/lessons/findable/lessons.ts';
import { filesBelow } from '../rules/sources.ts';

/** One line of the front matter. */
const given = (front: string, key: string): string =>
  new RegExp(`^${key}: (.*)$`, 'm').exec(front)?.[1] ?? '';

/** The lessons as the site's collection has them, as far as search and embedding look at them. */
export const lessonFiles = (): readonly (FoundLesson & { readonly body: string })[] =>
  filesBelow('src/lessons', ['.mdx']).map(({ path, text }) => {
    const front = /^---[\s\S]*?\n---/.exec(text)?.[0] ?? '';
    const list = /objectives:\n((?: {2}- .*\n)*)/.exec(front)?.[1] ?? '';
    return {
      id: path.replace(/^src\/lessons\/|\.mdx$/g, ''),
      body: text.slice(front.length),
      data: {
        title: given(front, 'title'),
        summary: given(front, 'summary'),
        objectives: [...list.matchAll(/- (.*)/g)].map(([, objective = '']) => objective),
      },
    };
  });
