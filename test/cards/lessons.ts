import type { CardedLesson } from '../../src/cards/lesson-card.ts';
import { filesBelow } from '../rules/sources.ts';

/** A line of a lesson's front matter; nothing where it is not there. */
const line = (front: string, name: string): string | undefined =>
  new RegExp(`^ *${name}: '?(.+?)'?$`, 'm').exec(front)?.[1];

/** Every lesson with what its front matter says of its card. */
export const cardedLessons: readonly CardedLesson[] = filesBelow('src/lessons', ['.mdx']).map(
  ({ path, text }) => {
    const front = /^---[\s\S]*?\n---/.exec(text)?.[0] ?? '';
    const [value, says, title = ''] = ['value', 'says', 'title'].map((name) => line(front, name));
    const card = value === undefined || says === undefined ? ({ band: 'club' } as const) : { value, says };
    return { id: path.replace(/^src\/lessons\/|\.mdx$/g, ''), title, card };
  },
);
