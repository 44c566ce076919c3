import type { SheetEntries } from '../../sheet/entries.ts';
import type { Kept } from '../../store/kept.ts';

/** A kept sheet with the words by which it can be found. */
export interface Findable {
  readonly sheet: Kept<SheetEntries>;
  /** All of them in one text, in small letters. */
  readonly words: string;
}

/** Small letters in one spelling, so that an umlaut is found however it was typed. */
const folded = (text: string): string => text.normalize('NFKC').toLowerCase();

/** The words of a sheet: its name and dates, what was noted, and the names of its points and links. */
export function findable(sheet: Kept<SheetEntries>): Findable {
  const { name, created, changed, value } = sheet;
  const { by, date, instruments, certificates, supply, remarks, plane, conditions, points, links } = value;
  const noted = [by, date, instruments, certificates, supply, remarks, plane, conditions];
  const parts = [
    ...points.flatMap(({ label, frequency }) => [label, frequency]),
    ...links.map(({ label }) => label),
  ];
  // days alone: what stands behind them are hours that nobody looks for
  const days = [created, changed].map((time) => time.slice(0, 10));
  return { sheet, words: folded([name, ...days, ...noted, ...parts].join('\n')) };
}

/** The sheets that have every word that was typed, in their order; all of them where none was. */
export function found(all: readonly Findable[], query: string): readonly Kept<SheetEntries>[] {
  const wanted = folded(query)
    .split(/\s+/)
    .filter((word) => word !== '');
  return all.filter(({ words }) => wanted.every((word) => words.includes(word))).map(({ sheet }) => sheet);
}
