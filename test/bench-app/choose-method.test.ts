import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries, freshEntries } from '../../src/bench/entries/fresh.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { MOST_LINKS } from '../../src/bench/read/spec.ts';
import { chooseMethod } from '../../src/bench/state/choose-method.ts';
import { withNamedUnits } from '../../src/bench/state/named-units.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { METHODS, UNITS_OF } from '../../src/sheet/method.ts';
import { anyEntries } from './any-entries.ts';
import { typedEntries } from './typed-sheet.ts';

const anyMethod = fc.constantFrom(...METHODS);
const untouched = ({ links }: SheetEntries) => links.filter(({ assumed }) => assumed);
const touched = ({ links }: SheetEntries) => links.filter(({ assumed }) => !assumed);

describe('another method', () => {
  it('keeps every link that somebody touched, and every text of the form', () => {
    fc.assert(
      fc.property(anyEntries, anyMethod, (entries, method) => {
        const next = chooseMethod(entries, method);
        const { links: _, method: __, delivery: ___, ...texts } = entries;
        const points =
          method === entries.method
            ? entries.points
            : entries.points.map((point) => withNamedUnits(point, entries.method));
        expect(next).toMatchObject({ ...texts, points });
        if (method !== entries.method)
          expect(next.links.filter((link) => touched(entries).includes(link))).toEqual(touched(entries));
      }),
    );
  });

  it('is nothing new where it is the same method', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        expect(chooseMethod(entries, entries.method)).toBe(entries);
      }),
    );
  });

  it('gives every link an id of its own, however often methods are tried', () => {
    fc.assert(
      fc.property(anyEntries, fc.array(anyMethod, { maxLength: 6 }), (entries, methods) => {
        const ids = methods.reduce(chooseMethod, entries).links.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });

  it('of a sheet that nobody touched is that of a fresh one, from any method to any other', () => {
    for (const before of METHODS)
      for (const method of METHODS)
        expect(chooseMethod(freshEntries(before), method)).toEqual(freshEntries(method));
  });

  it('means what goes forward less what comes back in line, an ideal load elsewhere, and leaves a choice', () => {
    const sheet = (method: SheetEntries['method'], delivery: SheetEntries['delivery']) => ({
      ...freshEntries(method),
      delivery,
    });
    expect(chooseMethod(sheet('oscilloscope', 'intoIdeal'), 'inLine').delivery).toBe('net');
    expect(chooseMethod(sheet('inLine', 'net'), 'oscilloscope').delivery).toBe('intoIdeal');
    for (const chosen of ['delivered', 'incident'] as const) {
      expect(chooseMethod(sheet('oscilloscope', chosen), 'inLine').delivery).toBe(chosen);
      expect(chooseMethod(sheet('inLine', chosen), 'oscilloscope').delivery).toBe(chosen);
    }
  });

  it('brings its links to where those of the method before stood, among what stays', () => {
    const meter = freshEntries('padsIntoMeter');
    const [first, ...others] = meter.links;
    if (first === undefined) throw new Error('wish a link of the method, got none');
    const known = { ...first, id: 'own', label: 'Own', assumed: false };
    const next = chooseMethod({ ...meter, links: [known, first, ...others] }, 'inLine');
    expect(next.links[0]).toBe(known);
    expect(next.links.slice(1)).toEqual(freshEntries('inLine').links);
  });

  it('leaves out what it would bring beyond the last link that a chain may have', () => {
    const full = typedEntries({ links: Array.from({ length: MOST_LINKS - 2 }, () => ({ assumed: false })) });
    const next = chooseMethod(full, 'oscilloscope');
    expect(next.links).toHaveLength(MOST_LINKS);
    expect(untouched(next)).toHaveLength(2);
  });
});

describe('a fresh sheet', () => {
  it('has nothing but links that nobody has looked into, each in a unit of its method', () => {
    for (const method of METHODS) {
      const { links, points, title } = freshEntries(method);
      expect(links.length).toBeGreaterThan(0);
      for (const { assumed, unit } of links) {
        expect(assumed).toBe(true);
        expect(UNITS_OF[method]).toContain(unit);
      }
      expect(points).toEqual([expect.objectContaining({ readings: '', nominal: '' })]);
      expect(title).toBe('');
    }
  });

  it('asks for readings, and finds nothing wrong with the links that it brings', () => {
    for (const method of METHODS) {
      const { problems } = readMeasurement(freshEntries(method));
      const paths = problems.map(({ path }) => path);
      expect(paths).toContain('point1.readings');
      for (const { id } of freshEntries(method).links)
        expect(paths.filter((path) => path.startsWith(`${id}.`))).toEqual([]);
    }
  });

  it('is not what the bench opens with, which can be used at once', () => {
    expect(readMeasurement(demonstrationEntries()).problems).toEqual([]);
    expect(demonstrationEntries().links.some(({ assumed }) => assumed)).toBe(false);
  });
});
