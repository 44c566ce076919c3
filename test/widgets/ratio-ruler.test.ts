import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dbToAmplitudeRatio, dbToPowerRatio, gainDb } from '#compute';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { ratioText } from '../../src/text/factor-text.ts';
import { readQuantity } from '../../src/text/read/quantity.ts';
import { GAIN, PREPARED_DB, ratioSpec, type Slip, TYPED } from '../../src/widgets/ratio-ruler/spec.ts';
import {
  allowed,
  initialState,
  type RatioAction,
  reduceRatio,
  slippedDb,
} from '../../src/widgets/ratio-ruler/state.ts';
import { stepsOf } from '../../src/widgets/ratio-ruler/steps.ts';
import { answersOf, slipWords, stepsText, summarise } from '../../src/widgets/ratio-ruler/words.ts';

const nb = '\u00a0';
const number = fc.oneof(
  fc.double(),
  fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e-300, 1e300),
);
const slip = fc.constantFrom<Slip>('none', 'tenForVolts', 'twentyForWatts');
const action: fc.Arbitrary<RatioAction> = fc.oneof(
  fc.record({ type: fc.constant('set' as const), gainDb: number }),
  fc.record({
    type: fc.constant('ratio' as const),
    of: fc.constantFrom('power' as const, 'volts' as const),
    ratio: number,
  }),
  fc.constant({ type: 'grasp' } as const),
  fc.record({ type: fc.constant('pull' as const), gainDb: number }),
  fc.constant({ type: 'release' } as const),
  fc.constant({ type: 'cancel' } as const),
  fc.record({ type: fc.constant('slip' as const), slip }),
  fc.record({ type: fc.constant('reset' as const), gainDb: number }),
  fc.record({ type: fc.constant('open' as const), gainDb: number, slip }),
);
const start = () => initialState(PREPARED_DB);
const whole = fc.integer({ min: GAIN.min, max: GAIN.max });

describe('the ruler of ratios under any sequence of actions', () => {
  it('keeps its ratio on the ruler and on its grid, and can always be said', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 25 }), (actions) => {
        const state = actions.reduce(reduceRatio, start());
        expect(state.gainDb).toBeGreaterThanOrEqual(GAIN.min);
        expect(state.gainDb).toBeLessThanOrEqual(GAIN.max);
        expect(Math.abs(state.gainDb * 100 - Math.round(state.gainDb * 100))).toBeLessThan(1e-6);
        expect(Object.is(state.gainDb, -0)).toBe(false);
        for (const { figure, words } of answersOf(state)) expect(figure + words).not.toMatch(/NaN|Infinity/);
        expect(summarise(state)).toMatch(/\.$/);
      }),
    );
  });

  it('comes back from its own address as it was', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 10 }), (actions) => {
        const { gainDb: db, slip: shown } = actions.reduce(reduceRatio, start());
        const spec = ratioSpec();
        const carried = { gainDb: db, slip: shown };
        expect(decode(spec, encode(spec, carried))).toMatchObject({ state: carried, problems: [] });
      }),
    );
  });

  it('is where it was when a pull is cancelled', () => {
    fc.assert(
      fc.property(number, fc.array(number), (before, pulls) => {
        const held = reduceRatio(reduceRatio(start(), { type: 'set', gainDb: before }), { type: 'grasp' });
        const pulled = pulls.reduce((state, db) => reduceRatio(state, { type: 'pull', gainDb: db }), held);
        const { gainDb: back, held: still } = reduceRatio(pulled, { type: 'cancel' });
        expect(back).toBe(held.gainDb);
        expect(still).toBeUndefined();
      }),
    );
  });
});

describe('a ratio in an address that is read late', () => {
  const brought: RatioAction = { type: 'open', gainDb: -3, slip: 'tenForVolts' };

  it('opens where nothing was changed before, and is not written again', () => {
    expect(reduceRatio(start(), brought)).toEqual({ ...initialState(-3), slip: 'tenForVolts' });
  });

  it('leaves a ratio or a slip that was changed before, and brings the other', () => {
    const set = reduceRatio(reduceRatio(start(), { type: 'set', gainDb: 7 }), brought);
    expect(set).toMatchObject({ gainDb: 7, slip: 'tenForVolts', touched: true });
    const slipped = reduceRatio(reduceRatio(start(), { type: 'slip', slip: 'twentyForWatts' }), brought);
    expect(slipped).toMatchObject({ gainDb: -3, slip: 'twentyForWatts', touched: true });
  });

  it('leaves the line in the hand, and is what giving up leads back to', () => {
    const held = reduceRatio(reduceRatio(start(), { type: 'grasp' }), { type: 'pull', gainDb: 5 });
    const opened = reduceRatio(held, brought);
    expect(opened).toMatchObject({ gainDb: 5, held: -3 });
    expect(reduceRatio(opened, { type: 'cancel' }).gainDb).toBe(-3);
  });
});

describe('a typed ratio', () => {
  it('is found by its logarithm, ten times for powers and twenty for volts', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1000, noNaN: true }), (ratio) => {
        const power = reduceRatio(start(), { type: 'ratio', of: 'power', ratio });
        expect(Math.abs(power.gainDb - 10 * Math.log10(ratio))).toBeLessThanOrEqual(0.0051);
        const root = Math.sqrt(ratio);
        const volts = reduceRatio(start(), { type: 'ratio', of: 'volts', ratio: root });
        expect(Math.abs(volts.gainDb - 10 * Math.log10(ratio))).toBeLessThanOrEqual(0.0051);
      }),
    );
  });

  it('changes nothing where it is no ratio, and stops at the end beyond the ruler', () => {
    for (const ratio of [0, -2, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reduceRatio(start(), { type: 'ratio', of: 'power', ratio })).toEqual(start());
    expect(reduceRatio(start(), { type: 'ratio', of: 'power', ratio: 1e9 }).gainDb).toBe(30);
    expect(reduceRatio(start(), { type: 'pull', gainDb: Number.NaN })).toEqual(start());
    expect(allowed(Number.NaN, 0.1)).toBe(0);
  });
});

describe('a ratio taken apart', () => {
  it('is made of whole tens and threes for every whole number of decibels', () => {
    fc.assert(
      fc.property(whole, (db) => {
        const { tens, twos, restDb } = stepsOf(gainDb(db));
        expect(10 * tens + 3 * twos).toBe(db);
        expect(restDb).toBe(0);
      }),
    );
  });

  it('takes no more steps than any other way of tens and threes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -6, max: 6 }), fc.integer({ min: -20, max: 20 }), (tens, twos) => {
        const db = 10 * tens + 3 * twos;
        fc.pre(Math.abs(db) <= GAIN.max);
        const found = stepsOf(gainDb(db));
        expect(Math.abs(found.tens) + Math.abs(found.twos)).toBeLessThanOrEqual(
          Math.abs(tens) + Math.abs(twos),
        );
      }),
    );
  });

  it('is off by a hundredth of a decibel for each step of three, the other way round for a loss', () => {
    fc.assert(
      fc.property(whole, (db) => {
        const { twos, offDb } = stepsOf(gainDb(db));
        expect(offDb).toBeCloseTo(twos * (10 * Math.log10(2) - 3), 9);
        expect(stepsOf(gainDb(-db)).offDb).toBeCloseTo(-offDb, 9);
      }),
    );
  });

  it('is never off by as much as a tenth of a decibel anywhere on the ruler', () => {
    fc.assert(
      fc.property(fc.double({ min: GAIN.min, max: GAIN.max, noNaN: true }), (db) => {
        expect(Math.abs(stepsOf(gainDb(db)).offDb)).toBeLessThan(0.1);
      }),
    );
  });

  /** Powers of a usual table of decibels (CEPT T/R 61-02, annex 6, 1.9 names 3, 6, 10 and 20 dB), as the head has them. */
  it.each([
    [3, '×2'],
    [6, '×2 ×2'],
    [10, '×10'],
    [20, '×10 ×10'],
    [-3, '÷2'],
    [-6, '÷2 ÷2'],
    [26, '×10 ×10 ×2 ×2'],
    [7, '×10 ÷2'],
    [1, '×10 ÷2 ÷2 ÷2'],
    [0, 'No step at all'],
  ])('of %s dB reads %s', (db, text) => {
    expect(stepsText('shown', stepsOf(gainDb(db)))).toBe(text);
  });
});

describe('the answers', () => {
  /** Decibels as ratios of voltage and of power, as tables print them to three figures: 2.512 where 8 dB is often misprinted. */
  it.each([
    [0.5, '×1.06', '×1.12'],
    [1, '×1.12', '×1.26'],
    [2, '×1.26', '×1.58'],
    [3, '×1.41', '×2.00'],
    [5, '×1.78', '×3.16'],
    [6, '×2.00', '×3.98'],
    [7, '×2.24', '×5.01'],
    [8, '×2.51', '×6.31'],
    [10, '×3.16', '×10.0'],
    [20, '×10.0', '×100'],
  ])('give %s dB as the printed ratios of volts, %s, and of powers, %s', (db, volts, power) => {
    const answers = answersOf({ gainDb: db });
    expect(answers.find(({ id }) => id === 'volts')?.figure).toBe(`${volts} in volts`);
    expect(answers.find(({ id }) => id === 'power')?.figure).toBe(`${power} in power`);
  });

  it('say what the head is off by', () => {
    const steps = answersOf({ gainDb: -26 }).at(-1);
    expect(steps?.figure).toBe(`≈${nb}÷400 by steps`);
    expect(steps?.words).toBe(`÷10 ÷10 ÷2 ÷2; 0.5${nb}% less than it is, or −0.02${nb}dB`);
    expect(answersOf({ gainDb: 20 }).at(-1)?.words).toBe('×10 ×10; which is what it is');
    expect(answersOf({ gainDb: 13.1 }).at(-1)?.words).toMatch(
      /^×10 ×2, then \+0\.1\u00a0dB; 0\.2\u00a0% more/,
    );
  });

  it('are spoken without signs', () => {
    expect(summarise(start())).toBe(
      'minus 26.0 decibels: divided by 398 in power, divided by 20.0 in volts. By steps divided by 400: divided by 10, divided by 10, divided by 2, divided by 2.',
    );
  });
});

describe('a wrong factor before the logarithm', () => {
  it('halves the decibels for volts and doubles them for watts', () => {
    fc.assert(
      fc.property(whole, (gain) => {
        expect(slippedDb({ gainDb: gain, slip: 'tenForVolts' })).toBe(gain / 2);
        expect(slippedDb({ gainDb: gain, slip: 'twentyForWatts' })).toBe(gain * 2);
        expect(slippedDb({ gainDb: gain, slip: 'none' })).toBeUndefined();
      }),
    );
  });

  it('is told with what it would make of the power', () => {
    expect(slipWords('shown', { gainDb: 6.02, slip: 'tenForVolts' })).toBe(
      `10 lg of the voltage ratio gives +3.01${nb}dB (dashed). Whoever reads that takes the power for ×2.00, where it is ×4.00.`,
    );
    expect(slipWords('shown', { gainDb: -26, slip: 'twentyForWatts' })).toMatch(
      /stops where the ruler ends\.$/,
    );
    expect(slipWords('shown', { gainDb: -26, slip: 'none' })).toBeUndefined();
  });
});

describe('the fields of the ratios', () => {
  it.each([GAIN.min, GAIN.max])('take what they show at the end of the ruler, %d dB', (db) => {
    const shown = {
      power: ratioText('ascii', { ratio: dbToPowerRatio(gainDb(db)), digits: 4 }),
      volts: ratioText('ascii', { ratio: dbToAmplitudeRatio(gainDb(db)), digits: 4 }),
    };
    for (const of of ['power', 'volts'] as const) {
      const read = readQuantity(shown[of], TYPED[of]);
      expect(read).toMatchObject({ ok: true });
      if (!read.ok) continue;
      const state = reduceRatio(initialState(0), { type: 'ratio', of, ratio: read.value });
      expect(state.gainDb).toBe(db);
    }
  });
});
