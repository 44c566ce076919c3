import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { readOnce } from '../../src/bench/read/read-once.ts';

describe('reading once', () => {
  it('reads again only for other entries, or where something else is different that the reading hangs on', () => {
    const read: string[] = [];
    const once = readOnce<{ text: string }, number>();
    const entries = { text: 'a' };
    const take = (of: { text: string }, key: string) => once(of, key, () => read.push(`${of.text} ${key}`));
    expect([take(entries, 'x'), take(entries, 'x')]).toEqual([1, 1]);
    expect(take({ text: 'a' }, 'x')).toBe(2);
    expect(take(entries, 'y')).toBe(3);
    expect(take(entries, 'x')).toBe(4);
    expect(read).toEqual(['a x', 'a x', 'a y', 'a x']);
  });
});

describe('a sheet that is read for the second time', () => {
  const sheet = demonstrationEntries();
  const [link] = sheet.links;
  const [point] = sheet.points;
  if (link === undefined || point === undefined)
    throw new Error('the demonstration must have a link and a point');

  it('comes to the same, its links and points being those of the first time', () => {
    const [first, second] = [readMeasurement(sheet), readMeasurement({ ...sheet, title: 'Another' })];
    expect(second.measurement?.links[0]).toBe(first.measurement?.links[0]);
    expect(second.measurement?.points[0]).toBe(first.measurement?.points[0]);
    expect(second.measurement?.title).toBe('Another');
  });

  it('tells again what is wrong with a link and with a point', () => {
    const faulty = {
      ...sheet,
      links: [{ ...link, amount: 'abc' }, ...sheet.links.slice(1)],
      points: [{ ...point, nominal: 'none' }],
    };
    const told = () => readMeasurement(faulty).problems.map(({ path }) => path);
    expect(told()).toEqual([`${point.id}.nominal`, `${link.id}.amount`]);
    expect(told()).toEqual([`${point.id}.nominal`, `${link.id}.amount`]);
  });

  it('is checked anew where a link makes its chain too wide', () => {
    expect(readMeasurement(sheet).problems).toEqual([]);
    const wide = {
      ...sheet,
      links: sheet.links.map((each) => ({ ...each, form: 'rectangular' as const, amount: '20' })),
    };
    const many = {
      ...wide,
      links: Array.from({ length: 8 }, (_, k) => ({ ...link, ...wide.links[0], id: `wide${k}` })),
    };
    expect(readMeasurement(many).problems).toHaveLength(1);
    expect(readMeasurement(many).problems).toHaveLength(1);
    expect(readMeasurement(sheet).problems).toEqual([]);
  });
});
