import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries/entries-of.ts';
import { demonstrationEntries, freshEntries } from '../../src/bench/entries/fresh.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { type BenchAction, type BenchState, reduceBench, shownPoint } from '../../src/bench/state/state.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import type { LinkEntries, PointEntries, SheetEntries } from '../../src/sheet/entries.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { usualLinks } from '../../src/sheet/method-links.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';

const on = (state: BenchState, ...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(reduceBench, state);
const bench = (...actions: readonly BenchAction[]): BenchState => on(demonstration(), ...actions);
const ids = ({ entries }: BenchState): readonly string[] => entries.links.map(({ id }) => id);
const linkOf = (state: BenchState, id: string): LinkEntries | undefined =>
  state.entries.links.find((link) => link.id === id);
const pointOf = (state: BenchState, id: string): PointEntries | undefined =>
  state.entries.points.find((point) => point.id === id);
const editLink = (id: string, change: Partial<Omit<LinkEntries, 'id' | 'assumed'>>): BenchAction => ({
  type: 'editLink',
  id,
  path: `${id}.${Object.keys(change)[0] ?? ''}`,
  change,
});
const editPoint = (id: string, change: Partial<Omit<PointEntries, 'id'>>): BenchAction => ({
  type: 'editPoint',
  id,
  path: `${id}.${Object.keys(change)[0] ?? ''}`,
  change,
});
const typeReading = (text: string): BenchAction => editPoint('point1', { readings: text });
const undo: BenchAction = { type: 'undo' };
const redo: BenchAction = { type: 'redo' };
const club = clubMeasurement('padsIntoMeter');

describe('typing', () => {
  it('changes the measurement as soon as it can be used', () => {
    expect(bench(typeReading('10 mW')).measurement.points[0]?.columns.readings).toEqual([10]);
  });

  it('keeps what cannot be used as typed, tells of it, and shows the last usable measurement', () => {
    const state = bench(typeReading('8'), typeReading('8 dBx'));
    expect(pointOf(state, 'point1')?.readings).toBe('8 dBx');
    expect(state.problems).toHaveLength(1);
    expect(state.measurement.points[0]?.columns.readings).toEqual([8]);
  });

  it('is one change as long as it stays in one field: the ghost is the measurement before it, undo goes there', () => {
    const state = bench(editLink('pad', { amount: '0.7' }), editLink('pad', { amount: '0.75' }));
    expect(state.before).toEqual(demonstration().measurement);
    expect(on(state, undo).entries).toEqual(demonstrationEntries());
    const next = on(state, editLink('coax', { amount: '0.2' }));
    expect(next.before).toBe(state.measurement);
    expect(linkOf(on(next, undo), 'pad')?.amount).toBe('0.75');
  });

  it('starts a new step after undo, even in the same field', () => {
    const state = bench(typeReading('8'), typeReading('81'), undo, typeReading('9'), typeReading('9.5'));
    expect(state.past).toHaveLength(1);
    expect(state.future).toEqual([]);
    expect(on(state, undo, redo).entries).toBe(state.entries);
  });

  it('of what stands there already is no change, and neither is typing into what is not there', () => {
    const state = demonstration();
    const [point] = state.entries.points;
    expect(on(state, typeReading(point?.readings ?? ''))).toBe(state);
    expect(on(state, editLink('nobody', { amount: '1' }))).toBe(state);
    expect(on(state, editPoint('nobody', { nominal: '1' }))).toBe(state);
    expect(on(state, { type: 'editCheck', key: 'off', text: '' })).toBe(state);
    expect(on(state, undo)).toBe(state);
    expect(on(state, redo)).toBe(state);
  });

  it('into the readings of a check and the record is kept too, and undone', () => {
    const state = bench(
      { type: 'editCheck', key: 'off', text: '-60' },
      { type: 'editCheck', key: 'off', text: '-60 dBm' },
      { type: 'edit', path: 'by', change: { by: 'two of us' } },
    );
    expect(state.entries.checks.off).toBe('-60 dBm');
    expect(state.measurement.record.by).toBe('two of us');
    expect(on(state, undo, undo).entries).toEqual(demonstrationEntries());
  });
});

describe('links', () => {
  it('are added next to the transmitter, with the form usual for their kind and no amount yet', () => {
    const state = bench({ type: 'add', kind: 'mismatch', label: 'Another mismatch' });
    expect(state.entries.links.at(-1)).toMatchObject({
      id: 'link7',
      label: 'Another mismatch',
      form: 'arcsine',
      amount: '0',
    });
    expect(state.problems).toEqual([]);
  });

  it('are at most two hundred', () => {
    const add = { type: 'add', kind: 'pad', label: 'Pad' } as const;
    const many = bench(...Array.from({ length: 250 }, () => add));
    expect(ids(many)).toHaveLength(200);
    expect(on(many, { type: 'duplicate', id: 'pad', label: 'x' })).toBe(many);
  });

  it('move to a place in the order, and to none that is not there', () => {
    expect(ids(bench({ type: 'move', id: 'coax', to: 0 }))[0]).toBe('coax');
    expect(ids(bench({ type: 'move', id: 'national', to: 5 })).at(-1)).toBe('national');
    expect(ids(bench({ type: 'move', id: 'national', to: 2 })).slice(0, 3)).toEqual([
      'laboratory',
      'meter',
      'national',
    ]);
    for (const to of [-1, 6, 0.5, Number.NaN])
      expect(bench({ type: 'move', id: 'coax', to }).past).toEqual([]);
    expect(bench({ type: 'move', id: 'coax', to: 5 }).past).toEqual([]);
    expect(bench({ type: 'move', id: 'nobody', to: 1 }).past).toEqual([]);
  });

  it('are doubled right below themselves, under another name', () => {
    const state = bench({ type: 'duplicate', id: 'pad', label: '20 dB pad, second' });
    expect(ids(state)).toEqual(['national', 'laboratory', 'meter', 'mismatch', 'pad', 'link7', 'coax']);
    expect(linkOf(state, 'link7')).toMatchObject({ label: '20 dB pad, second', loss: '20', amount: '0.5' });
    expect(bench({ type: 'duplicate', id: 'nobody', label: 'x' }).past).toEqual([]);
  });

  it('come back to their place with undo', () => {
    const state = bench({ type: 'remove', id: 'pad' });
    expect(ids(state)).not.toContain('pad');
    expect(ids(on(state, undo))).toEqual(ids(demonstration()));
    expect(bench({ type: 'remove', id: 'nobody' }).past).toEqual([]);
  });

  it('are left out of the sums while they are off, and nothing of them is lost', () => {
    const state = bench(editLink('pad', { off: true }));
    expect(state.measurement.links.find(({ id }) => id === 'pad')).toMatchObject({ off: true });
    expect(on(state, editLink('pad', { off: false })).measurement.links).toEqual(
      demonstration().measurement.links,
    );
  });
});

describe('a link that a method brought', () => {
  const fresh = bench({ type: 'fresh', method: 'oscilloscope' });

  it('is assumed until something of what it states is touched', () => {
    expect(linkOf(fresh, 'gain')?.assumed).toBe(true);
    expect(linkOf(on(fresh, editLink('gain', { amount: '2' })), 'gain')?.assumed).toBe(false);
    expect(linkOf(on(fresh, editLink('gain', {})), 'gain')?.assumed).toBe(false); // looked up and found right
    expect(linkOf(on(fresh, editLink('gain', { amount: '2' }), undo), 'gain')?.assumed).toBe(true);
  });

  it('stays assumed while it is only left out, moved, or thought of as better', () => {
    const state = on(fresh, editLink('gain', { off: true }), editLink('gain', { better: '1' }), {
      type: 'move',
      id: 'gain',
      to: 2,
    });
    expect(linkOf(state, 'gain')?.assumed).toBe(true);
  });
});

describe('another method', () => {
  const labels = (entries: SheetEntries) => entries.links.map(({ label }) => label);

  it('brings its usual links in place of those that nobody touched', () => {
    const fresh = bench({ type: 'fresh', method: 'oscilloscope' });
    for (const method of METHODS) {
      const { entries } = on(fresh, { type: 'chooseMethod', method });
      expect(labels(entries)).toEqual(usualLinks(method).map(({ label }) => label));
      expect(entries.links.every(({ assumed }) => assumed)).toBe(true);
    }
  });

  it('keeps links that somebody touched, and brings no second one of the same name', () => {
    const touched = bench({ type: 'fresh', method: 'oscilloscope' }, editLink('load', { amount: '2' }));
    const detector = on(touched, { type: 'chooseMethod', method: 'peakDetector' });
    expect(detector.entries.links.filter(({ label }) => label === 'Load resistance')).toHaveLength(1);
    expect(linkOf(detector, 'load')?.amount).toBe('2');
    const [first] = detector.entries.links;
    expect(first).toMatchObject({ label: 'Voltmeter', assumed: true });
  });

  it('keeps what was typed for the one before, and gives it back', () => {
    const state = bench(typeReading('7.5'), { type: 'chooseMethod', method: 'inLine' });
    expect(pointOf(state, 'point1')?.readings, 'with its unit, now that another is usual').toBe('7.5 dBm');
    const back = on(state, { type: 'chooseMethod', method: 'padsIntoMeter' });
    expect(back.entries.points).toEqual(state.entries.points);
    expect(state.entries.delivery).toBe('net'); // what a meter in the line shows
    expect(back.entries.delivery).toBe('intoIdeal');
    expect(on(state, undo).entries.method).toBe('padsIntoMeter');
    expect(bench({ type: 'chooseMethod', method: 'padsIntoMeter' }).past).toEqual([]);
  });
});

describe('points', () => {
  const two = bench({ type: 'addPoint' });

  it('are added with the specification of the last one and shown, while the result stays that of the one before', () => {
    expect(two.entries.points[1]).toMatchObject({
      id: 'point2',
      nominal: '27 dBm',
      tolerance: '1.5',
      readings: '',
    });
    expect(two.point).toBe('point2');
    expect(two.problems).toEqual([]);
    expect(shownPoint(two)).toBe('point1');
    const read = on(two, editPoint('point2', { readings: '6' }));
    expect(shownPoint(read)).toBe('point2');
    expect(read.measurement.points).toHaveLength(2);
  });

  it('are shown without a step of undo, and only if they are there', () => {
    const shown = on(two, { type: 'showPoint', id: 'point1' });
    expect(shown.point).toBe('point1');
    expect(shown.past).toBe(two.past);
    expect(on(two, { type: 'showPoint', id: 'nobody' })).toBe(two);
  });

  it('go one by one but for the last, and the next one is shown', () => {
    const one = on(two, { type: 'removePoint', id: 'point2' });
    expect(one.point).toBe('point1');
    expect(on(one, { type: 'removePoint', id: 'point1' })).toBe(one);
    expect(on(two, { type: 'removePoint', id: 'nobody' })).toBe(two);
    const first = on(two, { type: 'showPoint', id: 'point1' }, { type: 'removePoint', id: 'point1' });
    expect(first.point).toBe('point2');
  });

  it('are at most fifty', () => {
    const many = bench(...Array.from({ length: 60 }, () => ({ type: 'addPoint' }) as const));
    expect(many.entries.points).toHaveLength(50);
  });
});

describe('another sheet', () => {
  const twoPads: BenchAction = { type: 'open', entries: entriesOf(twoPadsSheet()), problems: [] };

  it('takes the place of this one, which undo brings back', () => {
    const own = bench(typeReading('9 dBm'));
    const opened = on(own, twoPads);
    expect(opened.measurement.title).toBe('Two pads into a receiver');
    expect(on(opened, undo).entries).toBe(own.entries);
    const back = on(own, { type: 'demonstration' });
    expect(back.entries).toEqual(demonstrationEntries());
    expect(on(back, undo).entries).toBe(own.entries);
    expect(on(own, { type: 'fresh', method: 'inLine' }).entries).toEqual(freshEntries('inLine'));
  });

  it('tells what of its address could not be read, until another is opened', () => {
    const damaged = bench({ ...twoPads, problems: ['cut short'] } as BenchAction);
    expect(damaged.addressProblems).toEqual(['cut short']);
    expect(on(damaged, twoPads).addressProblems).toEqual([]);
    expect(on(damaged, undo).addressProblems).toEqual([]);
    const refused = bench({ type: 'refuse', problems: ['later version'] });
    expect(refused).toMatchObject({ addressProblems: ['later version'], past: [] });
  });

  it('comes in even if not all of it can be used, with the last usable one shown', () => {
    const { points, ...rest } = entriesOf(twoPadsSheet());
    const entries = { ...rest, points: points.map((point) => ({ ...point, nominal: '' })) };
    const state = bench({ type: 'open', entries, problems: [] });
    expect(state.problems.map(({ path }) => path)).toEqual(['point1.nominal']);
    expect(state.measurement).toEqual(demonstration().measurement);
  });
});

describe('dragging', () => {
  const grasp: BenchAction = { type: 'grasp' };
  const pull = (expandedDb: number, id = 'pad'): BenchAction => ({ type: 'pull', id, expandedDb });

  it('sets the amount that makes the band as wide as the handle says', () => {
    // Above the pad: 0.0100, 0.0300, 0.25/sqrt 3, 0.16/sqrt 2 add up to u = 0.1877 dB; U = 1 dB wants u = 0.5, so the pad
    // brings sqrt(0.5^2 - 0.1877^2) = 0.4634 dB, limits of 0.4634 x sqrt 3 = 0.8027 dB.
    expect(linkOf(bench(grasp, pull(1)), 'pad')?.amount).toBe('0.8');
  });

  it('sets an amount in the unit of the link, at the reading of the point that is shown', () => {
    // Alone in a fresh chain: U = 0.2 dB wants u = 0.1 dB; 0.1 / (20/ln 10 / 14.2 / sqrt 3) = 0.283 V of 14.2 V from peak to peak
    const scope = entriesOf(clubMeasurement('oscilloscope'));
    const entries = {
      ...scope,
      points: scope.points.map((point) => ({ ...point, readings: '14.2' })),
      links: scope.links.filter(({ id }) => id === 'trace'),
    };
    const state = bench({ type: 'open', entries, problems: [] }, pull(0.2, 'trace'));
    expect(linkOf(state, 'trace')).toMatchObject({ amount: '0.28', unit: 'voltsPeakToPeak' });
  });

  it('makes plain limits of a sum of terms and of two standing-wave ratios, keeping their texts', () => {
    const swr = bench({ type: 'fresh', method: 'padsIntoMeter' }, typeReading('7'), {
      ...editPoint('point1', { nominal: '27', tolerance: '1.5' }),
    });
    expect(swr.problems).toEqual([]);
    expect(linkOf(on(swr, pull(1, 'mismatch')), 'mismatch')).toMatchObject({
      form: 'arcsine',
      unit: 'dB',
      sourceSwr: '1.5',
      assumed: false,
    });
    const terms = bench({ type: 'open', entries: entriesOf(clubMeasurement('peakDetector')), problems: [] });
    expect(linkOf(on(terms, pull(1, 'voltmeter')), 'voltmeter')).toMatchObject({
      form: 'rectangular',
      unit: 'volts',
      digits: '2',
    });
  });

  it('cannot undo what stands above, and stops at the largest amount that can be typed', () => {
    expect(linkOf(bench(pull(0.1)), 'pad')?.amount).toBe('0');
    expect(linkOf(bench(pull(-3)), 'pad')?.amount).toBe('0');
    expect(linkOf(bench(pull(1000)), 'pad')?.amount).toBe('20');
    expect(bench(pull(Number.NaN)).past).toEqual([]);
    expect(bench(pull(1, 'nobody')).past).toEqual([]);
  });

  it('goes on from pull to pull as if each were the first, whatever is edited in between', () => {
    for (const method of METHODS) {
      const opened = bench({ type: 'open', entries: entriesOf(clubMeasurement(method)), problems: [] });
      const { links } = opened.entries;
      const above = editLink(links[0]?.id ?? '', { form: 'rectangular', amount: '0.2', unit: 'dB' });
      for (const { id } of links)
        for (const actions of [
          [pull(1, id), pull(0.7, id), above, pull(1.1, id)],
          [pull(0.5, id), pull(2, id)],
        ])
          expect(on(opened, grasp, ...actions).entries.links, id).toEqual(
            on(opened, ...actions).entries.links,
          );
    }
  });

  it('keeps the proportions of lopsided limits', () => {
    const lopsided = bench(editLink('pad', { form: 'asymmetric', lower: '-0.2', upper: '0.6' }));
    const pad = linkOf(on(lopsided, pull(1)), 'pad');
    expect(Number(pad?.upper) / Number(pad?.lower)).toBeCloseTo(-3, 2);
    expect(Number(pad?.upper) - Number(pad?.lower)).toBeCloseTo(1.6, 2);
  });

  it('shows the measurement before it as a ghost, is one step of undo, and leaves none on cancel', () => {
    const start = demonstration();
    const dragged = on(start, grasp, pull(1), pull(1.2), pull(1.4));
    expect(dragged.before).toBe(start.measurement);
    const released = on(dragged, { type: 'release' });
    expect(released).toMatchObject({ held: undefined, before: start.measurement });
    expect(on(released, undo).entries).toBe(start.entries);
    const again = on(released, grasp, pull(2), { type: 'release' });
    expect(linkOf(on(again, undo), 'pad')?.amount).toBe(linkOf(released, 'pad')?.amount);
    const cancelled = on(dragged, { type: 'cancel' });
    expect(cancelled).toMatchObject({ before: undefined, held: undefined, past: [] });
    expect(cancelled.entries).toBe(start.entries);
    expect(cancelled.measurement).toBe(start.measurement);
  });

  it('cancels nothing where nothing is held', () => {
    const state = bench(typeReading('9'));
    expect(on(state, { type: 'cancel' })).toBe(state);
  });

  it('at a point that the method is out of range at changes nothing', () => {
    const points = entriesOf(clubMeasurement('oscilloscope')).points.map((point) => ({
      ...point,
      frequency: '145',
    }));
    const entries = { ...entriesOf(clubMeasurement('oscilloscope')), points };
    const state = bench({ type: 'open', entries, problems: [] });
    expect(on(state, pull(1, 'gain'))).toBe(state);
  });
});

it('shows and hides end marks and curve', () => {
  expect(bench({ type: 'show', what: 'limits', on: false })).toMatchObject({
    showLimits: false,
    showCurve: false,
  });
  expect(bench({ type: 'show', what: 'curve', on: true })).toMatchObject({
    showLimits: true,
    showCurve: true,
  });
});

it('opens with the demonstration, of which every entry can be used', () => {
  expect(demonstration()).toMatchObject({ point: 'point1', problems: [], past: [] });
  expect(demonstration().measurement.links).toEqual(club.links);
});
