import type { LinkEntries } from '../../sheet/entries.ts';
import { strings } from '../strings.ts';

/** Where a link stands after it was moved, by its name or by where it stood; nothing where it had no way to go. */
export function movedWords(links: readonly LinkEntries[], { id, to }: { id: string; to: number }): string {
  const from = links.findIndex((link) => link.id === id);
  const link = links[from];
  if (link === undefined || links[to] === undefined) return '';
  const name = link.label.trim() || strings.link.unnamed(from + 1);
  return strings.link.moved({ name, place: to + 1, of: links.length });
}
