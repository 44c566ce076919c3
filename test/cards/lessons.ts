import type { CardedLesson } from '../../src/cards/lesson-card.ts';
import { filesBelow } from '../rules/sources.ts';

/** The first match of a pattern in a lesson's front matter; nothing where there is none. */
const found = (front: string, pattern: RegExp): string => pattern.exec(front)?.[1] ?? '';

/** Every lesson with what its front matter says of its card. */
export const cardedLessons: readonly CardedLesson[] = filesBelow('src/lessons', ['.mdx']).map(
  ({ path, text }) => {
    const front = /^---[\s\S]*?\n---/.exec(text)?.[0] ?? '';
    const value = found(front, /^card: \{ value: ([\w.]+),/m);
    const [figure, state] = [found(front, /, figure: ([\w ]+),/), found(front, /, state: '([^']+)',/)];
    const says = found(front, /, says: '(.*)' \}$/m);
    const card =
      value === '' ? ({ band: 'club' } as const) : { value, figure, says, ...(state !== '' && { state }) };
    return { id: path.replace(/^src\/lessons\/|\.mdx$/g, ''), title: found(front, /^title: (.*)$/m), card };
  },
);
