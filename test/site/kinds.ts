import { type PageKind, pageKinds } from '../../src/access/kinds.ts';
import type { BuiltPage } from './pages.ts';

/** What is wrong with the list of kinds for these pages: a page of none or of two, a kind without a page. */
export const kindProblems = (
  pages: readonly BuiltPage[],
  kinds: readonly PageKind[] = pageKinds,
): readonly string[] => [
  ...pages.flatMap(({ path }) => {
    const own = kinds.filter(({ paths }) => paths.test(path)).map(({ name }) => name);
    return own.length === 1 ? [] : [`${path}: ${own.join(' and ') || 'no kind'}`];
  }),
  ...kinds
    .filter(({ paths }) => !pages.some(({ path }) => paths.test(path)))
    .map(({ name }) => `${name}: no page`),
];

/** The page of each kind that has most on it. */
export const pageOfEachKind = (
  pages: readonly BuiltPage[],
  kinds: readonly PageKind[] = pageKinds,
): readonly { readonly name: string; readonly path: string }[] =>
  kinds.flatMap(({ name, paths }) => {
    const [largest] = pages
      .filter(({ path }) => paths.test(path))
      .toSorted((a, b) => b.html.length - a.html.length);
    return largest === undefined ? [] : [{ name, path: largest.path }];
  });
