import { countText } from '../text/count-text.ts';
import type { Kind } from './document.ts';

/** Most results that are shown at a time. */
export const MOST_SHOWN = 30;

const many = (count: number, one: string, several: string): string =>
  `${countText('shown', count)} ${count === 1 ? one : several}`;

/** Words of the search. */
export const strings = {
  kinds: {
    lesson: 'Lesson',
    example: 'Worked example',
    word: 'Word',
    formula: 'Formula',
    question: 'Question',
    table: 'Table',
    checks: 'Published checks',
    page: 'Page',
  } satisfies Record<Kind, string>,
  loading: 'Fetching what can be found …',
  failed:
    'What can be found could not be fetched. Are you connected? Try again, or look through the lists below.',
  nothingAsked: 'These words stand on every page. Name a thing: a pad, a guard band, a standing wave ratio.',
  told: (count: number, whole: boolean): string => {
    if (count === 0) return 'Nothing found. Fewer words, or another name for the thing, may help.';
    const more = count > MOST_SHOWN ? `, the first ${countText('shown', MOST_SHOWN)} are shown` : '';
    if (!whole)
      return `Nothing has all of these words; ${many(count, 'result has', 'results have')} some${more}.`;
    return `${many(count, 'result', 'results')}${more}.`;
  },
} as const;
