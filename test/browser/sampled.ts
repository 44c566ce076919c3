import type { BuiltPage } from '../site/pages.ts';

/**
 * Pages that are made alike by one route from data alone. The checks on the built site (HTML, links, heads, policy, weight) run on each
 * of them, and so does axe in a few visits (`alike.gate.ts`); the gates in the browser, which take seconds a page, run on one of each kind.
 */
interface Alike {
  /** Which pages they are, by their addresses. */
  readonly paths: RegExp;
  /** What tells one kind of them from another: the gates take the first page of each kind. */
  readonly kindOf: (page: BuiltPage) => string;
}

const ALIKE: readonly Alike[] = [
  {
    // a question each, in one form for each way to answer, with or without a figure
    paths: /^\/practice\/q\/[^/]+\/$/,
    kindOf: ({ html }) => {
      const figure = /class="places"/.test(html) ? 'a figure to point at' : '';
      const controls = ['ask-options', 'ask-typed', 'ask-order'].filter((name) =>
        html.includes(`class="${name}"`),
      );
      return `${controls.join()} ${figure}`;
    },
  },
  {
    // a worked example on the wall, with a chain to change or without; `stage.spec.ts` shows every step of each on three walls
    paths: /^\/stage\/examples\/[^/]+\/$/,
    kindOf: ({ html }) => (html.includes('StageBand') ? 'a chain' : 'a sum'),
  },
];

const alikeOf = ({ path }: BuiltPage): Alike | undefined => ALIKE.find(({ paths }) => paths.test(path));

/** Pages that are made like others. */
export const alikePages = (pages: readonly BuiltPage[]): readonly BuiltPage[] =>
  pages.filter((page) => alikeOf(page) !== undefined);

/** The same, group by group: the pages of one share a frame and its styles. */
export const alikeGroups = (pages: readonly BuiltPage[]): readonly (readonly BuiltPage[])[] =>
  ALIKE.map(({ paths }) => pages.filter(({ path }) => paths.test(path))).filter(({ length }) => length > 0);

/** The pages that every gate runs on: all that are made by themselves, and the first of each kind of those that are made alike. */
export function sampledPages(pages: readonly BuiltPage[]): readonly BuiltPage[] {
  const seen = new Set<string>();
  return pages.filter((page) => {
    const alike = alikeOf(page);
    if (alike === undefined) return true;
    const kind = `${alike.paths.source} ${alike.kindOf(page)}`;
    const isFirst = !seen.has(kind);
    seen.add(kind);
    return isFirst;
  });
}
