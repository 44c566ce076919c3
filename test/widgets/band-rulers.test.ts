import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import {
  amountForUpper,
  claimedEnds,
  endsOf,
  fromRuler,
  onRuler,
  type RulerName,
} from '../../src/widgets/band-rulers/band.ts';
import { bandFigure } from '../../src/widgets/band-rulers/rulers.ts';
import { type BandRulersState, bandRulersSpec } from '../../src/widgets/band-rulers/spec.ts';
import { answersOf, dbEnds, powerEnds, summarise, voltsEnds } from '../../src/widgets/band-rulers/words.ts';
import { fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const nb = '\u00a0';
const { fields } = bandRulersSpec;
const prepared: BandRulersState = defaultState(fields);
const state = anyState(fields) as fc.Arbitrary<BandRulersState>;
const name = fc.constantFrom<RulerName>('level', 'power', 'volts');

describe('one band on three rulers', () => {
  it('has its lower end nearer in watts and in volts wherever it is even in decibels', () => {
    fc.assert(
      fc.property(state, (now) => {
        fc.pre(now.even === 'decibels' && now.halfDb > 0.01);
        const { lower, upper } = endsOf(now);
        expect(upper).toBe(-lower);
        for (const ruler of ['power', 'volts'] as const) {
          const at = (db: number): number => onRuler(ruler, now.level + db);
          expect(at(upper) - at(0)).toBeGreaterThan(at(0) - at(lower));
        }
      }),
    );
  });

  it('has its lower end farther in decibels wherever it is even in watts or in volts', () => {
    fc.assert(
      fc.property(state, (now) => {
        fc.pre(now.even !== 'decibels' && now.halfPercent > 0.1);
        const { lower, upper } = endsOf(now);
        expect(-lower).toBeGreaterThan(upper);
        const at = (db: number): number => onRuler(now.even === 'watts' ? 'power' : 'volts', now.level + db);
        expect((at(upper) - at(0)) / (at(0) - at(lower))).toBeCloseTo(1, 6);
      }),
    );
  });

  it('is found again from where a pointer holds its upper end, on any ruler', () => {
    fc.assert(
      fc.property(state, name, (now, ruler) => {
        const { upper } = endsOf(now);
        const dbm = fromRuler(ruler, onRuler(ruler, now.level + upper));
        const { name: field, value } = amountForUpper(now.even, (dbm ?? Number.NaN) - now.level);
        expect(field).toBe(now.even === 'decibels' ? 'halfDb' : 'halfPercent');
        expect(value).toBeCloseTo(now.even === 'decibels' ? now.halfDb : now.halfPercent, 6);
      }),
    );
  });

  it('comes to nothing where the upper end is pulled below the middle, or to where no power is', () => {
    expect(amountForUpper('decibels', -1)).toEqual({ name: 'halfDb', value: 0 });
    expect(amountForUpper('watts', -1)).toEqual({ name: 'halfPercent', value: 0 });
    for (const value of [0, -1, Number.NaN]) expect(fromRuler('power', value)).toBeUndefined();
  });

  it('stands inside every ruler with its middle in the middle, and can be said', () => {
    fc.assert(
      fc.property(state, (now) => {
        for (const { domain, strip, middle, ticks } of bandFigure(fieldsState(now)).rulers) {
          const { lower, upper } = domain;
          expect(((middle ?? Number.NaN) - lower) / (upper - lower)).toBeCloseTo(0.5, 9);
          expect(strip?.lower).toBeGreaterThanOrEqual(domain.lower);
          expect(strip?.upper).toBeLessThanOrEqual(domain.upper);
          expect(ticks.length).toBeGreaterThan(1);
          for (const { text } of ticks) expect(text).not.toMatch(/0\.0000|NaN/);
        }
        expect(summarise(now)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  it('keeps its rulers still while its end is held', () => {
    const held = reduceFields(fields)(fieldsState(prepared), { type: 'grasp' });
    const pulled = reduceFields(fields)(held, { type: 'set', name: 'halfDb', value: 3 });
    const domains = (now: typeof held) => bandFigure(now).rulers.map(({ domain }) => domain);
    expect(domains(pulled)).toEqual(domains(held));
    expect(domains(reduceFields(fields)(pulled, { type: 'release' }))).not.toEqual(domains(held));
  });
});

describe('the band in words', () => {
  const decibels = (halfDb: number) => endsOf({ ...prepared, halfDb });

  /** What a change in decibels is in percent of power and of volts: 10^(g/10) and 10^(g/20), from the definition (ITU-R V.574). */
  it.each([
    [0.1, `±2.3${nb}%`, `+1.2/−1.1${nb}%`],
    [0.3, `+7.2/−6.7${nb}%`, `+3.5/−3.4${nb}%`],
    [0.5, `+12.2/−10.9${nb}%`, `+5.9/−5.6${nb}%`],
    [0.75, `+18.9/−15.9${nb}%`, `+9.0/−8.3${nb}%`],
    [1, `+25.9/−20.6${nb}%`, `+12.2/−10.9${nb}%`],
    [2, `+58.5/−36.9${nb}%`, `+25.9/−20.6${nb}%`],
    [3, `+99.5/−49.9${nb}%`, `+41.3/−29.2${nb}%`],
  ])('of %s dB is %s of power and %s of volts', (halfDb, power, volts) => {
    expect(powerEnds('shown', decibels(halfDb))).toBe(power);
    expect(voltsEnds('shown', decibels(halfDb))).toBe(volts);
  });

  it.each([
    ['volts', 5, `+0.42/−0.45${nb}dB`],
    ['volts', 10, `+0.83/−0.92${nb}dB`],
    ['watts', 5, `+0.21/−0.22${nb}dB`],
    ['watts', 100 / 3, `+1.25/−1.76${nb}dB`],
  ] as const)('of ±%s %s is %s', (even, halfPercent, text) => {
    expect(dbEnds('shown', endsOf({ ...prepared, even, halfPercent }))).toBe(text);
  });

  it('says the watts and the volts of both ends', () => {
    const said = answersOf(prepared).map(({ figure, words }) => `${figure} ${words}`);
    expect(said[1]).toBe(`+25.9/−20.6${nb}% of power: 501${nb}mW, 398 to 631`);
    expect(said[2]).toBe(`+12.2/−10.9${nb}% of volts across 50${nb}Ω: 5.01${nb}V RMS, 4.46 to 5.62`);
    expect(said[3]).toContain(`±23.0${nb}% by the rule`);
    expect(said[3]).toContain(`off by 2.9${nb}% of power`);
    expect(answersOf({ ...prepared, halfDb: 0.1 })[3]?.words).toContain('right to the digits shown');
  });
});

describe('a mistake beside the band', () => {
  const claim = (now: Partial<BandRulersState>): string =>
    answersOf({ ...prepared, ...now }).find(({ id }) => id === 'claim')?.figure ?? '';

  it('is shown only where it is asked for, and is what somebody would claim', () => {
    expect(claim({})).toBe('');
    expect(claim({ claim: 'samePercent' })).toBe(`±1.0${nb}% claimed`);
    expect(claim({ claim: 'tenPercent' })).toBe(`±10.0${nb}% claimed`);
    expect(claim({ claim: 'mirrored' })).toBe(`±25.9${nb}% claimed`);
    expect(claim({ claim: 'squared', even: 'volts', halfPercent: 5 })).toBe(`±25.0${nb}% claimed`);
  });

  it('is even in watts, whatever the band is', () => {
    fc.assert(
      fc.property(state, (now) => {
        const ends = claimedEnds(now);
        expect(ends === undefined).toBe(now.claim === 'none');
        const { lower, upper } = ends ?? { lower: 0, upper: 0 };
        const [down, up] = [1 - 10 ** (lower / 10), 10 ** (upper / 10) - 1];
        // a claim of a hundred percent and more has no lower end
        expect(down).toBeCloseTo(Math.min(up, 0.999), 6);
      }),
    );
  });

  it('is none where the band is even in watts already', () => {
    const words = answersOf({ ...prepared, even: 'watts', claim: 'mirrored' }).at(-1)?.words;
    expect(words).toContain('right here');
  });
});
