import { demonstrationEntries, freshEntries } from '../bench/entries/fresh.ts';
import { blankLink, type LinkEntries, type SheetEntries } from '../sheet/entries.ts';
import type { CompareEntries } from './entries.ts';

/** What both sheets have in common: the transmitter itself. */
export const SPREAD = 'Spread of the transmitter';

const spread = (id: string): LinkEntries => ({
  ...blankLink(id),
  label: SPREAD,
  kind: 'transmitter',
  amount: '0.15',
  source: 'measured',
});

/** The club's transmitter through pads into the lent meter, and by an oscilloscope across a load; all of it invented. */
export function demonstrationSheets(): readonly SheetEntries[] {
  const club = demonstrationEntries();
  const { links, ...scope } = freshEntries('oscilloscope');
  const { power, delivery, plane, conditions } = club;
  return [
    { ...club, title: 'Pads and meter', links: [...club.links, spread('spread')] },
    {
      ...scope,
      title: 'Oscilloscope',
      ...{ power, delivery, plane, conditions },
      scopeBandwidth: '50 MHz',
      probeBandwidth: '100 MHz',
      links: [...links.map((link) => ({ ...link, assumed: false })), spread('spread')],
      points: club.points.slice(0, 1).map((point) => ({ ...point, readings: '13.4\n13.5\n13.4' })),
    },
  ];
}

/** The prepared sheet that goes by a name, `club 1` or `club 2`; undefined for anything else. */
export function preparedSheet(name: string): SheetEntries | undefined {
  const [, number] = /^club (\d)$/.exec(name.trim()) ?? [];
  return number === undefined ? undefined : demonstrationSheets()[Number(number) - 1];
}

/** What the page opens with. */
export const demonstrationCompare = (): CompareEntries => ({
  rows: [1, 2].map((number) => ({ id: `sheet${number}`, address: `club ${number}`, point: '' })),
  same: [SPREAD],
  apart: [],
});
