/**
 * Where a page that has moved leads on to: its new address, with the numbers (`search`) and the step (`hash`) of the link that
 * was followed.
 */
export function ledOn(target: string, { search, hash }: Pick<Location, 'search' | 'hash'>): string {
  const url = new URL(target);
  url.search = search;
  url.hash = hash;
  return url.href;
}
