import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_LINKS, MOST_POINTS, STARTS } from '../../src/bench/read/spec.ts';
import { changed, changedIn, freeId } from '../../src/bench/state/changed.ts';
import { addLink, duplicateLink, editLink, moveLink, removeLink } from '../../src/bench/state/edit-links.ts';
import { addPoint, editPoint, removePoint } from '../../src/bench/state/edit-points.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import { LINK_KINDS } from '../../src/sheet/sheet.ts';
import { anyEntries } from './any-entries.ts';
import { typedEntries } from './typed-sheet.ts';

const ids = ({ links }: SheetEntries): readonly string[] => links.map(({ id }) => id);
const many = (count: number): SheetEntries =>
  typedEntries({ links: Array.from({ length: count }, () => ({})) });
const place = fc.integer({ min: -2, max: 6 });
const someId = fc.constantFrom('link1', 'link2', 'link4', 'nobody');

describe('a change', () => {
  it('that changes nothing gives back the very thing, so that nobody redraws for it', () => {
    fc.assert(
      fc.property(fc.record({ a: fc.anything(), b: fc.double() }), (thing) => {
        expect(changed(thing, {})).toBe(thing);
        expect(changed(thing, { ...thing })).toBe(thing);
      }),
    );
    const list = [{ id: 'a', text: '1' }];
    expect(changedIn(list, 'a', (item) => item)).toBe(list);
    expect(changedIn(list, 'nobody', () => ({ id: 'b', text: '' }))).toBe(list);
  });

  it('reaches the item of its id alone', () => {
    const list = [
      { id: 'a', text: '1' },
      { id: 'b', text: '2' },
    ];
    const next = changedIn(list, 'b', (item) => ({ ...item, text: '3' }));
    expect(next[0]).toBe(list[0]);
    expect(next[1]).toEqual({ id: 'b', text: '3' });
  });

  it('gives a new item an id that none has', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 12 })), (taken) => {
        const list = taken.map((number) => ({ id: `link${number}` }));
        const id = freeId('link', list);
        expect(list.map((item) => item.id)).not.toContain(id);
        expect(Number(id.slice('link'.length))).toBeGreaterThan(list.length);
      }),
    );
  });
});

describe('the list of links', () => {
  it('has the same links after one is moved, and the others keep their order', () => {
    fc.assert(
      fc.property(anyEntries, someId, place, (entries, id, to) => {
        const moved = moveLink(entries, { id, to });
        expect(moved.links.toSorted((a, b) => a.id.localeCompare(b.id))).toEqual(entries.links);
        expect(ids(moved).filter((other) => other !== id)).toEqual(
          ids(entries).filter((other) => other !== id),
        );
        const wasMoved = ids(entries).includes(id) && entries.links[to] !== undefined;
        expect(ids(moved).indexOf(id)).toBe(wasMoved ? to : ids(entries).indexOf(id));
      }),
    );
  });

  it('is what it was once a link is doubled and its double taken out again', () => {
    fc.assert(
      fc.property(anyEntries, someId, (entries, id) => {
        const doubled = duplicateLink(entries, { id, label: 'again' });
        const fresh = ids(doubled).filter((other) => !ids(entries).includes(other));
        expect(fresh).toHaveLength(ids(entries).includes(id) ? 1 : 0);
        expect(removeLink(doubled, fresh[0] ?? 'none').links).toEqual(entries.links);
      }),
    );
  });

  it('is left as it is by what concerns no link of it', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        expect(removeLink(entries, 'nobody')).toBe(entries);
        expect(duplicateLink(entries, { id: 'nobody', label: '' })).toBe(entries);
        expect(moveLink(entries, { id: 'nobody', to: 0 })).toBe(entries);
        expect(editLink(entries, 'nobody', { amount: '1' })).toBe(entries);
      }),
    );
  });

  it('takes no link beyond the last that a chain may have, new or doubled', () => {
    const full = many(MOST_LINKS);
    expect(addLink(full, { kind: 'pad', label: 'x' })).toBe(full);
    expect(duplicateLink(full, { id: 'link1', label: 'x' })).toBe(full);
    expect(addLink(many(MOST_LINKS - 1), { kind: 'pad', label: 'x' }).links).toHaveLength(MOST_LINKS);
  });

  it('begins a link with the form that its kind is usually stated in, at the foot and with no doubt yet', () => {
    for (const kind of LINK_KINDS) {
      const added = addLink(many(2), { kind, label: 'new' });
      expect(ids(added).slice(0, 2)).toEqual(ids(many(2)));
      expect(added.links.at(-1)).toMatchObject({ kind, label: 'new', amount: '0', ...STARTS[kind] });
    }
    // a certificate has U and k, a mismatch of unknown phase is U-shaped (GUM H.1.6 and common practice)
    expect(STARTS.comparison.form).toBe('expanded');
    expect(STARTS.mismatch.form).toBe('arcsine');
  });

  it('takes a link for looked into once what it states is touched, and not before', () => {
    const assumed = typedEntries({ links: [{ assumed: true }] });
    const edited = (change: Parameters<typeof editLink>[2]) => editLink(assumed, 'link1', change).links[0];
    expect(edited({ off: true })?.assumed).toBe(true);
    expect(edited({ better: '0.1' })?.assumed).toBe(true);
    expect(edited({ amount: '0.4' })?.assumed).toBe(false);
    expect(edited({ off: true, amount: '0.4' })?.assumed).toBe(false);
  });
});

describe('the list of points', () => {
  it('never runs empty, whatever is taken out of it', () => {
    fc.assert(
      fc.property(anyEntries, fc.array(fc.constantFrom('point1', 'point2', 'point3')), (entries, gone) => {
        const left = gone.reduce(removePoint, entries);
        expect(left.points.length).toBeGreaterThan(0);
        for (const point of left.points) expect(entries.points).toContain(point);
      }),
    );
  });

  it('goes on with what was demanded at the last point, and with nothing that was read or named there', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { points } = addPoint(entries);
        const last = entries.points.at(-1);
        const { specification, nominal, tolerance, above, below, lowest, highest } = last ?? {};
        expect(points.slice(0, -1)).toEqual(entries.points);
        expect(points.at(-1)).toMatchObject({
          ...{ specification, nominal, tolerance, above, below, lowest, highest },
          ...{ label: '', frequency: '', readings: '', reflected: '', riseDc: '', volts: '', amperes: '' },
        });
      }),
    );
  });

  it('gives no point the id of one that the log still speaks of', () => {
    const one = typedEntries({});
    const log = { lockedAt: '2026-05-09T10:00:00Z', read: ['point1', 'point2', 'point3'], changes: [] };
    expect(addPoint(one).points.at(-1)?.id).toBe('point2');
    expect(['point1', 'point2', 'point3']).not.toContain(addPoint({ ...one, log }).points.at(-1)?.id);
  });

  it('takes no point beyond the last, and is left as it is by what concerns none', () => {
    const full = typedEntries({ points: Array.from({ length: MOST_POINTS }, () => ({})) });
    expect(addPoint(full)).toBe(full);
    expect(editPoint(full, 'nobody', { label: 'x' })).toBe(full);
    expect(removePoint(full, 'nobody')).toBe(full);
  });
});

describe('a link that was taken from an instrument', () => {
  const reference = { instrument: 'a', part: 'statement', calibrated: '2026-05-09', interval: '12' } as const;
  const entries = typedEntries({ links: [{ ...reference, assumed: true }, {}] });
  const edited = (change: Parameters<typeof editLink>[2]) => editLink(entries, 'link1', change).links[0];

  it('stays so while the sheet says only what is its own: a name, a cause, the day’s temperature', () => {
    for (const change of [{ label: 'Pad' }, { cause: 'meter' }, { temperature: '31' }, { off: true }])
      expect(edited(change)).toMatchObject(reference);
  });

  it('is the sheet’s own again once something of its statement is changed', () => {
    for (const change of [{ amount: '0.1' }, { loss: '19' }, { form: 'terms' }, { table: '1 2 3' }] as const)
      expect(edited(change)).toMatchObject({
        instrument: '',
        part: 'statement',
        calibrated: '',
        interval: '',
      });
  });

  it('leaves the others as they are', () => {
    expect(editLink(entries, 'link1', { amount: '1' }).links[1]).toBe(entries.links[1]);
  });
});
