/**
 * The page that an address was meant for, where forum software took a bracket or comma behind it along or cut its end off; undefined where
 * no page is like it, or more than one could be meant.
 */
export function nearestPath(pathname: string, pages: readonly string[]): string | undefined {
  const asked = pathname.toLowerCase();
  const [longest] = pages
    .filter((page) => asked.startsWith(page.replace(/\/$/, '')))
    .toSorted((one, other) => other.length - one.length);
  if (longest !== undefined) return longest;
  const cut = pages.filter((page) => page.startsWith(asked));
  return cut.length === 1 ? cut[0] : undefined;
}
