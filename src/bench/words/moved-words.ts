import type { LinkEntries } from '../../sheet/entries.ts';
import { saidText } from '../../text/said-text.ts';
import { strings } from '../strings.ts';

/** What is said of where a link stands after it was moved, by its name or by where it stood; nothing where it had no way to go. */
export function movedWords(links: readonly LinkEntries[], { id, to }: { id: string; to: number }): string {
  const from = links.findIndex((link) => link.id === id);
  const link = links[from];
  if (link === undefined || links[to] === undefined) return '';
  const name = saidText(link.label.trim()) || strings.link.unnamed(from + 1);
  return strings.link.moved({ name, place: to + 1, of: links.length });
}

type Links = readonly LinkEntries[];

const moved = (links: Links, from: number, to: number): Links =>
  links.toSpliced(from, 1).toSpliced(to, 0, ...links.slice(from, from + 1));

/**
 * Which link went where between two orders of the same links, by whatever brought them about; undefined where no single one did.
 * @param meant id of the one that is meant where two have changed places
 */
export function moveBetween(
  before: Links,
  after: Links,
  meant?: string,
): { id: string; to: number } | undefined {
  const [first = 0, ...others] = before.flatMap((link, at) => (link === after[at] ? [] : [at]));
  const last = others.at(-1);
  if (last === undefined || before.length !== after.length) return undefined;
  const ways = [
    { from: first, to: last },
    { from: last, to: first },
  ].filter(({ from, to }) => moved(before, from, to).every((link, at) => link === after[at]));
  const found = ways.map(({ from, to }) => ({ id: before[from]?.id ?? '', to }));
  return found.find(({ id }) => id === meant) ?? found[0];
}
