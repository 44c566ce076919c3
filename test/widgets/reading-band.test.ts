import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oscilloscopeOnALoad } from '../../src/examples/oscilloscope-on-a-load.ts';
import { amountOf } from '../../src/sheet/amount.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { AMOUNT } from '../../src/widgets/reading-band/amount.ts';
import { presetSheet } from '../../src/widgets/reading-band/presets.ts';
import {
  allowed,
  type BandAction,
  type BandState,
  halfSpanOf,
  initialState,
  reduceBand,
} from '../../src/widgets/reading-band/state.ts';
import { answersOf, summarise } from '../../src/widgets/reading-band/words.ts';

const start = (): BandState => initialState({ sheet: clubSheet() });
const amounts = ({ sheet }: BandState) =>
  Object.fromEntries(sheet.links.map(({ id, statement }) => [id, amountOf(statement)]));

const id = fc.constantFrom('national', 'laboratory', 'meter', 'mismatch', 'pad', 'coax', 'nobody');
const wild = fc.oneof(
  fc.double({ min: -1, max: 5 }),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
);
const action: fc.Arbitrary<BandAction> = fc.oneof(
  fc.record({ type: fc.constant('set' as const), id, amount: wild }),
  fc.constant({ type: 'grasp' } as const),
  fc.record({ type: fc.constant('pull' as const), id, expandedDb: wild }),
  fc.constant({ type: 'release' } as const),
  fc.constant({ type: 'cancel' } as const),
  fc.record({
    type: fc.constant('show' as const),
    what: fc.constantFrom('limits' as const, 'curve' as const),
    on: fc.boolean(),
  }),
  fc.constant({ type: 'replace', sheet: twoPadsSheet() } as const),
);

describe('the reading band under any sequence of actions', () => {
  it('keeps every amount within its limits and on its step, and never throws', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduceBand, start());
        for (const [name, amount] of Object.entries(amounts(state))) {
          expect(amount, name).toBeGreaterThanOrEqual(AMOUNT.min);
          expect(amount, name).toBeLessThanOrEqual(AMOUNT.max);
          expect(Math.abs(amount / AMOUNT.step - Math.round(amount / AMOUNT.step)), name).toBeLessThan(1e-9);
        }
        expect(halfSpanOf(state)).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a dragged handle', () => {
  it('puts the end of the band where the pointer is, as near as a step of the amount allows', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.7, max: 2.5, noNaN: true }), (expandedDb) => {
        const state = reduceBand(start(), { type: 'pull', id: 'pad', expandedDb });
        const rung = chainOf(state.sheet).rungs.find((candidate) => candidate.id === 'pad');
        expect(Math.abs((rung?.cumulative.propagation.expanded ?? 0) - expandedDb)).toBeLessThan(
          2 * AMOUNT.step,
        );
      }),
      { numRuns: 40 },
    );
  });

  it('takes nothing away from the rungs above, however far in it is pushed', () => {
    const state = reduceBand(start(), { type: 'pull', id: 'pad', expandedDb: 0.01 });
    expect(amounts(state)).toEqual({ ...amounts(start()), pad: 0 });
  });

  it('comes to nothing on the other side of the middle', () => {
    expect(amounts(reduceBand(start(), { type: 'pull', id: 'national', expandedDb: -0.5 })).national).toBe(0);
  });

  it('leaves everything as it was when it is cancelled', () => {
    const held = reduceBand(start(), { type: 'grasp' });
    const pulled = [0.8, 1.4, 2].reduce(
      (state, expandedDb) => reduceBand(state, { type: 'pull', id: 'pad', expandedDb }),
      held,
    );
    expect(amounts(pulled)).not.toEqual(amounts(start()));
    const cancelled = reduceBand(pulled, { type: 'cancel' });
    expect(cancelled).toEqual(start());
  });

  it('keeps the axis still until it is let go', () => {
    const held = reduceBand(start(), { type: 'grasp' });
    const pulled = reduceBand(held, { type: 'pull', id: 'pad', expandedDb: 3 });
    expect(halfSpanOf(pulled)).toBe(halfSpanOf(start()));
    expect(halfSpanOf(reduceBand(pulled, { type: 'release' }))).toBeGreaterThan(halfSpanOf(start()));
  });

  it('leaves the band from before it was grasped as the ghost', () => {
    const held = reduceBand(start(), { type: 'grasp' });
    const twice = [1, 2].reduce(
      (state, expandedDb) => reduceBand(state, { type: 'pull', id: 'pad', expandedDb }),
      held,
    );
    expect(twice.before).toEqual(clubSheet());
    expect(reduceBand(twice, { type: 'release' }).before).toEqual(clubSheet());
  });

  it('changes nothing for a rung that is not there or a place that is no number', () => {
    expect(reduceBand(start(), { type: 'pull', id: 'nobody', expandedDb: 1 })).toEqual(start());
    expect(reduceBand(start(), { type: 'pull', id: 'pad', expandedDb: Number.NaN })).toEqual(start());
  });

  it('is not there to cancel when nothing is held', () => {
    expect(reduceBand(start(), { type: 'cancel' })).toEqual(start());
  });
});

describe('a typed amount', () => {
  it('is brought to the nearest step within the limits', () => {
    expect(allowed(0.126)).toBe(0.13);
    expect(allowed(-4)).toBe(0);
    expect(allowed(99)).toBe(3);
    expect(allowed(Number.NaN)).toBe(0);
  });

  it('shows the state before it as the ghost', () => {
    const state = reduceBand(start(), { type: 'set', id: 'pad', amount: 0.1 });
    expect(state.before).toEqual(clubSheet());
    expect(amounts(state).pad).toBe(0.1);
  });
});

describe('what is shown beyond the strip', () => {
  it('is switched part by part', () => {
    const off = reduceBand(start(), { type: 'show', what: 'limits', on: false });
    expect([off.showLimits, off.showCurve]).toEqual([false, false]);
    const curve = reduceBand(off, { type: 'show', what: 'curve', on: true });
    expect([curve.showLimits, curve.showCurve]).toEqual([false, true]);
  });
});

describe('the three answers', () => {
  it('give the level, lopsided watts, and the rung that decides', () => {
    const [level, watts, most] = answersOf(chainOf(clubSheet()));
    expect(level?.figure).toBe('27.10\u00a0dBm ±0.69\u00a0dB');
    expect(watts?.figure).toBe('513\u00a0mW, 438 to 601');
    expect(most?.figure).toBe('20 dB pad widens it most');
    expect(most?.words).toMatch(/^70\u00a0% of the variance; half as wrong, it would leave ±0\.47\u00a0dB$/);
  });

  it('speak in words without signs', () => {
    expect(summarise(chainOf(clubSheet()))).toBe(
      '27.10 decibel-milliwatts plus or minus 0.69 decibels, 513 milliwatts, 438 to 601. 20 dB pad widens it most.',
    );
  });

  it('say that nothing widens it where nothing does', () => {
    const exact = reduceBand(start(), { type: 'replace', sheet: { ...clubSheet(), links: [] } });
    const answers = answersOf(chainOf(exact.sheet));
    expect(answers[2]?.figure).toBe('Nothing widens it');
    expect(answers[0]?.figure).toBe('7.00\u00a0dBm');
  });
});

describe('prepared chains', () => {
  it('are the sheets of their names', () => {
    expect(presetSheet('club')).toEqual(clubSheet());
    expect(presetSheet('two-pads')).toEqual(twoPadsSheet());
  });
});

describe('a rung that is stated in percent', () => {
  const percent = (): BandState => initialState({ sheet: oscilloscopeOnALoad.sheet() });

  it('takes as many percent as it is given, up to half, where decibels end at three', () => {
    const set = (amount: number) => amounts(reduceBand(percent(), { type: 'set', id: 'gain', amount }));
    expect(set(20)).toMatchObject({ gain: 20 });
    expect(set(80)).toMatchObject({ gain: 50 });
    expect(amounts(reduceBand(start(), { type: 'set', id: 'pad', amount: 20 }))).toMatchObject({ pad: 3 });
  });

  it('follows its handle beyond three percent, as far as it may be set', () => {
    const pulled = (expandedDb: number) => reduceBand(percent(), { type: 'pull', id: 'gain', expandedDb });
    const { sheet } = pulled(1.5);
    const rung = chainOf(sheet).rungs.find((candidate) => candidate.id === 'gain');
    expect(rung?.cumulative.propagation.expanded).toBeCloseTo(1.5, 1);
    expect(amounts(pulled(100))).toMatchObject({ gain: 50 });
  });

  it('widens the band as its decibels say', () => {
    const { sheet } = reduceBand(percent(), { type: 'set', id: 'gain', amount: 6 });
    const before = chainOf(percent().sheet).result.propagation.budget[0]?.contribution ?? 0;
    const after = chainOf(sheet).result.propagation.budget[0]?.contribution ?? 0;
    expect(after / before).toBeCloseTo(2, 1);
  });
});
