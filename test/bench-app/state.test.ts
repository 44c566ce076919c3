import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries-of.ts';
import { type BenchAction, type BenchState, demonstration, reduceBench } from '../../src/bench/state.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { LINK_KINDS } from '../../src/sheet/sheet.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { anyEntries } from './any-entries.ts';

const bench = (...actions: readonly BenchAction[]): BenchState =>
  actions.reduce(reduceBench, demonstration());
const ids = ({ entries }: BenchState): readonly string[] => entries.links.map(({ id }) => id);
const amount = (state: BenchState, id: string): string | undefined =>
  state.entries.links.find((link) => link.id === id)?.amount;
const typeAmount = (id: string, text: string): BenchAction => ({
  type: 'editLink',
  id,
  path: `${id}.amount`,
  change: { amount: text },
});
const typeReading = (text: string): BenchAction => ({
  type: 'edit',
  path: 'readings',
  change: { readings: text },
});

const anyId = fc.constantFrom('national', 'meter', 'pad', 'coax', 'link7', 'link8', 'nobody');
const anyAction: fc.Arbitrary<BenchAction> = fc.oneof(
  fc.string().map((text) => typeReading(text)),
  fc.tuple(anyId, fc.constantFrom('0.4', '1,5', 'x', '')).map(([id, text]) => typeAmount(id, text)),
  fc.constantFrom(...LINK_KINDS).map((kind) => ({ type: 'add', kind, label: kind }) as const),
  anyId.map((id) => ({ type: 'remove', id }) as const),
  fc
    .tuple(anyId, fc.constantFrom(-1 as const, 1 as const))
    .map(([id, by]) => ({ type: 'move', id, by }) as const),
  fc.tuple(anyId, fc.double()).map(([id, expandedDb]) => ({ type: 'pull', id, expandedDb }) as const),
  anyEntries.map((entries) => ({ type: 'open', entries, problems: ['damaged'] }) as const),
  fc.constantFrom<BenchAction>(
    { type: 'bringBack' },
    { type: 'demonstration' },
    { type: 'grasp' },
    { type: 'release' },
    { type: 'cancel' },
  ),
);

describe('whatever happens', () => {
  it('every link keeps an id of its own, and the shown sheet is that of the last usable entries', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 12 }), (actions) => {
        let state = demonstration();
        for (const action of actions) {
          const next = reduceBench(state, action);
          expect(new Set(ids(next)).size).toBe(ids(next).length);
          if (next.problems.length > 0 && next.entries !== state.entries)
            expect(next.sheet).toBe(state.sheet);
          state = next;
        }
      }),
    );
  });

  it('nothing that was removed is lost: bringing back undoes each removal in turn', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(['national', 'laboratory', 'meter', 'mismatch', 'pad', 'coax']),
        (chosen) => {
          const removed = bench(...chosen.map((id) => ({ type: 'remove', id }) as const));
          const back = chosen.reduce((state) => reduceBench(state, { type: 'bringBack' }), removed);
          expect(back.entries).toEqual(demonstration().entries);
          expect(back.taken).toEqual([]);
        },
      ),
    );
  });
});

describe('typing', () => {
  it('changes the sheet as soon as it can be used', () => {
    expect(bench(typeReading('10 mW')).sheet.readings).toEqual([10]);
  });

  it('keeps what cannot be used as typed, tells of it, and shows the last usable sheet', () => {
    const state = bench(typeReading('8'), typeReading('8 dBx'));
    expect(state.entries.readings).toBe('8 dBx');
    expect(state.problems).toHaveLength(1);
    expect(state.sheet.readings).toEqual([8]);
  });

  it('is one change as long as it stays in one field: the ghost is the sheet before it', () => {
    const state = bench(typeAmount('pad', '0.7'), typeAmount('pad', '0.75'));
    expect(state.before).toEqual(clubSheet());
    const next = reduceBench(state, typeAmount('coax', '0.2'));
    expect(next.before).toBe(state.sheet);
  });

  it('into a link that is not there changes nothing', () => {
    const state = demonstration();
    expect(reduceBench(state, typeAmount('nobody', '1'))).toBe(state);
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
    const many = Array.from({ length: 250 }, () => ({ type: 'add', kind: 'pad', label: 'Pad' }) as const);
    expect(ids(bench(...many))).toHaveLength(200);
  });

  it('move one place up or down, and not beyond the ends', () => {
    expect(ids(bench({ type: 'move', id: 'coax', by: -1 })).slice(-2)).toEqual(['coax', 'pad']);
    expect(ids(bench({ type: 'move', id: 'national', by: 1 })).slice(0, 2)).toEqual([
      'laboratory',
      'national',
    ]);
    expect(bench({ type: 'move', id: 'coax', by: 1 }).entries).toEqual(demonstration().entries);
    expect(bench({ type: 'move', id: 'national', by: -1 }).entries).toEqual(demonstration().entries);
    expect(bench({ type: 'move', id: 'nobody', by: 1 }).entries).toEqual(demonstration().entries);
  });

  it('come back to their place with another id where theirs has been given away', () => {
    const added = bench(
      { type: 'add', kind: 'pad', label: 'A' },
      { type: 'remove', id: 'link7' },
      { type: 'add', kind: 'pad', label: 'B' },
    );
    const back = reduceBench(added, { type: 'bringBack' });
    expect(back.entries.links.slice(-2).map(({ id, label }) => `${id} ${label}`)).toEqual([
      'link8 A',
      'link7 B',
    ]);
  });
});

describe('another sheet', () => {
  const twoPads: BenchAction = { type: 'open', entries: entriesOf(twoPadsSheet()), problems: [] };

  it('takes the place of the demonstration, which needs no bringing back', () => {
    const state = bench(twoPads);
    expect(state.sheet.title).toBe('Two pads into a receiver');
    expect(state.taken).toEqual([]);
  });

  it('can be undone where it took the place of a reader’s own', () => {
    const own = bench(typeReading('9 dBm'));
    const opened = reduceBench(own, twoPads);
    expect(reduceBench(opened, { type: 'bringBack' }).entries).toEqual(own.entries);
    const back = reduceBench(own, { type: 'demonstration' });
    expect(back.entries).toEqual(demonstration().entries);
    expect(reduceBench(back, { type: 'bringBack' }).entries).toEqual(own.entries);
  });

  it('tells what of its address could not be read, until another is opened', () => {
    const damaged = bench({ ...twoPads, problems: ['cut short'] } as BenchAction);
    expect(damaged.addressProblems).toEqual(['cut short']);
    expect(reduceBench(damaged, twoPads).addressProblems).toEqual([]);
    expect(bench({ type: 'refuse', problems: ['later version'] })).toMatchObject({
      addressProblems: ['later version'],
      entries: demonstration().entries,
    });
  });

  it('comes in even if not all of it can be used, with the last usable one shown', () => {
    const state = bench({
      type: 'open',
      entries: { ...entriesOf(twoPadsSheet()), nominal: '' },
      problems: [],
    });
    expect(state.entries.nominal).toBe('');
    expect(state.problems.map(({ path }) => path)).toEqual(['nominal']);
    expect(state.sheet).toEqual(clubSheet());
  });
});

describe('dragging', () => {
  const grasp: BenchAction = { type: 'grasp' };

  it('sets the amount that makes the band as wide as the handle says', () => {
    // Above the pad: 0.0100, 0.0300, 0.25/sqrt 3, 0.16/sqrt 2 add up to u = 0.1877 dB; U = 1 dB wants u = 0.5, so the pad
    // brings sqrt(0.5^2 - 0.1877^2) = 0.4634 dB, limits of 0.4634 x sqrt 3 = 0.8027 dB.
    const state = bench(grasp, { type: 'pull', id: 'pad', expandedDb: 1 });
    expect(amount(state, 'pad')).toBe('0.8');
  });

  it('cannot undo what stands above, and stops at the largest amount that can be typed', () => {
    expect(amount(bench({ type: 'pull', id: 'pad', expandedDb: 0.1 }), 'pad')).toBe('0');
    expect(amount(bench({ type: 'pull', id: 'pad', expandedDb: -3 }), 'pad')).toBe('0');
    expect(amount(bench({ type: 'pull', id: 'pad', expandedDb: 1000 }), 'pad')).toBe('20');
    expect(bench({ type: 'pull', id: 'pad', expandedDb: Number.NaN }).entries).toEqual(
      demonstration().entries,
    );
  });

  it('keeps the proportions of lopsided limits', () => {
    const lopsided = bench({
      type: 'editLink',
      id: 'pad',
      path: 'pad.form',
      change: { form: 'asymmetric', lower: '-0.2', upper: '0.6' },
    });
    const state = reduceBench(lopsided, { type: 'pull', id: 'pad', expandedDb: 1 });
    const pad = state.entries.links.find(({ id }) => id === 'pad');
    expect(Number(pad?.upper) / Number(pad?.lower)).toBeCloseTo(-3, 2);
    expect(Number(pad?.upper) - Number(pad?.lower)).toBeCloseTo(1.6, 2);
  });

  it('shows the state before it as a ghost, and gives it back on cancel', () => {
    const pulled = bench(
      grasp,
      { type: 'pull', id: 'pad', expandedDb: 1 },
      { type: 'pull', id: 'pad', expandedDb: 1.4 },
    );
    expect(pulled.before).toEqual(clubSheet());
    const released = reduceBench(pulled, { type: 'release' });
    expect(released).toMatchObject({ held: undefined, before: clubSheet() });
    const cancelled = reduceBench(pulled, { type: 'cancel' });
    expect(cancelled.entries).toEqual(demonstration().entries);
    expect(cancelled).toMatchObject({ sheet: clubSheet(), before: undefined, held: undefined });
  });

  it('cancels nothing where nothing is held', () => {
    const state = bench(typeReading('9'));
    expect(reduceBench(state, { type: 'cancel' })).toBe(state);
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
