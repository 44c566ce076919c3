import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { type SignalsState, signalsSpec } from '../../src/widgets/two-signals/spec.ts';
import { sumsOf } from '../../src/widgets/two-signals/sums.ts';
import { answersOf, summarise } from '../../src/widgets/two-signals/words.ts';
import { anyState } from '../address/any-state.ts';

const nb = '\u00a0';
const { fields } = signalsSpec;
const state = anyState(fields) as fc.Arbitrary<SignalsState>;
const prepared: SignalsState = defaultState(fields);
const milliwatts = (dbm: number): number => 10 ** (dbm / 10);

describe('two signals in one load', () => {
  it('add up as powers to more than either and at most twice the stronger', () => {
    fc.assert(
      fc.property(state, (now) => {
        const { unrelatedDbm } = sumsOf(now);
        expect(milliwatts(unrelatedDbm)).toBeCloseTo(milliwatts(now.first) + milliwatts(now.second), 6);
        expect(unrelatedDbm).toBeGreaterThan(Math.max(now.first, now.second));
        expect(unrelatedDbm).toBeLessThanOrEqual(Math.max(now.first, now.second) + 3.0103);
      }),
    );
  });

  it('add up as volts by the law of cosines', () => {
    fc.assert(
      fc.property(state, (now) => {
        const { coherentDbm } = sumsOf(now);
        const [a, b] = [Math.sqrt(milliwatts(now.first)), Math.sqrt(milliwatts(now.second))];
        const squared = a * a + b * b + 2 * a * b * Math.cos((now.phase * Math.PI) / 180);
        if (coherentDbm === undefined) expect(squared).toBeLessThan(1e-6 * a * b);
        else expect(milliwatts(coherentDbm)).toBeCloseTo(squared, 6);
      }),
    );
  });

  it('leave nothing as near to half a turn as an address can say it', () => {
    const equal = { ...prepared, first: 7, second: 7 };
    for (const phase of [180, 179.99999999999997, 179.9999999, 179.9999])
      expect(sumsOf({ ...equal, phase }).coherentDbm).toBeUndefined();
    expect(sumsOf({ ...equal, phase: 179.9 }).coherentDbm).toBeCloseTo(
      7 + 20 * Math.log10(2 * Math.sin(Math.PI / 3600)),
      9,
    );
  });

  it('lie between the best and the worst phase, and at a right angle volts give what powers give', () => {
    fc.assert(
      fc.property(state, (now) => {
        const { coherentDbm, inPhaseDbm, againstDbm } = sumsOf(now);
        if (coherentDbm !== undefined) {
          expect(coherentDbm).toBeLessThanOrEqual(inPhaseDbm + 1e-9);
          expect(coherentDbm).toBeGreaterThanOrEqual((againstDbm ?? -Infinity) - 1e-9);
        }
        const right = sumsOf({ ...now, phase: 90 });
        expect(right.coherentDbm).toBeCloseTo(right.unrelatedDbm, 9);
      }),
    );
  });

  it('do not depend on which of them is called the first', () => {
    fc.assert(
      fc.property(state, (now) => {
        const turned = sumsOf({ ...now, first: now.second, second: now.first });
        expect(turned.unrelatedDbm).toBeCloseTo(sumsOf(now).unrelatedDbm, 9);
        expect(turned.inPhaseDbm).toBeCloseTo(sumsOf(now).inPhaseDbm, 9);
      }),
    );
  });

  it('can be said in every state, and after every action', () => {
    const action = fc.oneof(
      fc.record({
        type: fc.constant('set' as const),
        name: fc.constantFrom('first', 'second', 'phase', 'claim', 'nobody'),
        value: fc.oneof(fc.double(), fc.constantFrom('sumOfDbm', 'none', 'zz')),
      }),
      fc.constant({ type: 'grasp' } as const),
      fc.constant({ type: 'release' } as const),
      fc.constant({ type: 'cancel' } as const),
    );
    fc.assert(
      fc.property(fc.array(action), (actions) => {
        const { values } = actions.reduce(reduceFields(fields), fieldsState(prepared));
        expect(summarise(values)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  /** Two of 17 dBm: 20 dBm as powers, 6 dB more than one at the most as volts (common practice; 10 lg 2 and 20 lg 2). */
  it('of 17 dBm each are 20 dBm as powers, 23 in phase, 17 a third of a turn apart, nothing against each other', () => {
    const figures = (phase: number) => answersOf({ ...prepared, phase }).map(({ figure }) => figure);
    expect(figures(0)).toEqual([`20.0${nb}dBm, unrelated`, `23.0${nb}dBm, one frequency`]);
    expect(figures(120)[1]).toBe(`17.0${nb}dBm, one frequency`);
    expect(figures(180)[1]).toBe('Nothing, one frequency');
  });

  it('show the sum of their dBm only where it is asked for', () => {
    expect(answersOf(prepared)).toHaveLength(2);
    expect(answersOf({ ...prepared, claim: 'sumOfDbm' })[2]).toEqual({
      id: 'claimed',
      figure: `34.0${nb}dBm, dBm added`,
      words: `would be 2.51${nb}W, where both together bring 100${nb}mW`,
    });
  });
});
