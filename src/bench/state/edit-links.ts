import { blankLink, type LinkEntries, type SheetEntries } from '../../sheet/entries.ts';
import type { LinkKind } from '../../sheet/sheet.ts';
import { MOST_LINKS, STARTS } from '../read/spec.ts';
import { changed, changedIn, freeId } from './changed.ts';

type Links = readonly LinkEntries[];

const withLinks = (entries: SheetEntries, links: Links): SheetEntries =>
  links === entries.links ? entries : { ...entries, links };

/** What says nothing of what a data sheet states: an assumption stays one. */
const ASIDE: readonly string[] = ['off', 'better'] satisfies readonly (keyof LinkEntries)[];

/** What a sheet says of a link that an instrument states; what it then states stays the instrument's. */
const OF_SHEET: readonly string[] = [
  'off',
  'better',
  'label',
  'cause',
  'direction',
  'temperature',
  'years',
  'reliability',
] satisfies readonly (keyof LinkEntries)[];

/** Stated by no instrument. */
const OWN = { instrument: '', part: 'statement', calibrated: '', interval: '' } as const;

/**
 * One link changed: no longer assumed where what it states was touched, and then no longer what the instrument states that it was taken
 * from.
 */
export function editLink(entries: SheetEntries, id: string, change: Partial<LinkEntries>): SheetEntries {
  const keys = Object.keys(change);
  const aside = keys.length > 0 && keys.every((key) => ASIDE.includes(key));
  const kept = keys.every((key) => OF_SHEET.includes(key));
  const touched = aside ? change : { ...change, ...(!kept && OWN), assumed: false };
  return withLinks(
    entries,
    changedIn(entries.links, id, (link) => changed(link, touched)),
  );
}

/** A new link goes in at the foot, next to the transmitter. */
export function addLink(
  entries: SheetEntries,
  { kind, label }: { kind: LinkKind; label: string },
): SheetEntries {
  if (entries.links.length >= MOST_LINKS) return entries;
  const link = { ...blankLink(freeId('link', entries.links)), kind, label, ...STARTS[kind], amount: '0' };
  return withLinks(entries, [...entries.links, link]);
}

/** A second link like one, right below it. */
export function duplicateLink(
  entries: SheetEntries,
  { id, label }: { id: string; label: string },
): SheetEntries {
  const { links } = entries;
  const index = links.findIndex((link) => link.id === id);
  const link = links[index];
  if (link === undefined || links.length >= MOST_LINKS) return entries;
  return withLinks(entries, links.toSpliced(index + 1, 0, { ...link, id: freeId('link', links), label }));
}

export function removeLink(entries: SheetEntries, id: string): SheetEntries {
  const links = entries.links.filter((link) => link.id !== id);
  return withLinks(entries, links.length === entries.links.length ? entries.links : links);
}

/** A link taken to another place; unchanged where that is none of the list. */
export function moveLink(entries: SheetEntries, { id, to }: { id: string; to: number }): SheetEntries {
  const { links } = entries;
  const from = links.findIndex((link) => link.id === id);
  const link = links[from];
  if (link === undefined || links[to] === undefined || from === to) return entries;
  return withLinks(entries, links.toSpliced(from, 1).toSpliced(to, 0, link));
}
