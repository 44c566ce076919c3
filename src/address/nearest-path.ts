/**
 * The page that an address was meant for, where forum software took a bracket or comma behind it along or cut its end off, or its own name is
 * right and the way there is not; undefined where no page is like it, or more than one could be meant.
 */
export function nearestPath(pathname: string, pages: readonly string[]): string | undefined {
  const asked = pathname.toLowerCase();
  const [longest] = pages
    .filter((page) => asked.startsWith(page.replace(/\/$/, '')))
    .toSorted((one, other) => other.length - one.length);
  if (longest !== undefined) return longest;
  const name = asked.split('/').findLast((part) => part !== '');
  const named = pages.filter((page) => page.endsWith(`/${name}/`));
  if (named.length === 1) return named[0];
  const cut = pages.filter((page) => page.startsWith(asked));
  return cut.length === 1 ? cut[0] : undefined;
}
