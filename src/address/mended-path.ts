/**
 * The address as it was before mail or forum software wrote `%23` for its `#`, which makes the sheet look like a part of the path;
 * undefined where there is nothing to mend. The state after it is repaired and told by whoever opens it.
 */
export function mendedPath({
  pathname,
  search,
}: {
  readonly pathname: string;
  readonly search: string;
}): string | undefined {
  const at = pathname.indexOf('%23');
  if (at < 0) return undefined;
  const page = pathname.slice(0, at).replace(/\/?$/, '/');
  // Only a place on this site: a path that begins with two slashes would be another host's.
  return `${page.replace(/^[/\\]+/, '/')}#${pathname.slice(at + 3)}${search}`;
}
