import { describe, expect, test } from 'vitest';
import { beliefOf, decidingIntervalOf, usualInterval } from '../../src/compute/deciding.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import { endGauge, limited, quantity } from './combine/published-models.ts';

const result = evaluate({
  model: {
    kind: 'sum',
    constant: 27,
    inputs: [limited('pad', 0.5), limited('meter', 0.3)],
    sensitivities: [1, 1],
  },
});
const gauge = evaluate({ model: endGauge() });

describe('the interval that decides', () => {
  test("is the whole distribution's where there is one", () => {
    expect(usualInterval(result)).toBe('whole');
    expect(usualInterval(gauge)).toBe('propagation');
  });

  test('is the one of its name', () => {
    if ('unavailable' in result.whole) throw new Error(result.whole.unavailable);
    expect(decidingIntervalOf(result, 'whole')).toEqual(result.whole.symmetric);
    expect(decidingIntervalOf(result, 'wholeShortest')).toEqual(result.whole.shortest);
    expect(decidingIntervalOf(result, 'propagation')).toEqual(result.propagation.interval);
    expect(decidingIntervalOf(result, 'worstCase')).toEqual(result.worstCase.interval);
  });

  test('of a worst case with an unlimited part has no ends', () => {
    const open = evaluate({
      model: { kind: 'sum', constant: 0, inputs: [quantity('bell', 0, 1)], sensitivities: [1] },
    });
    expect(decidingIntervalOf(open, 'worstCase')).toEqual({
      lower: Number.NEGATIVE_INFINITY,
      upper: Number.POSITIVE_INFINITY,
    });
  });

  test('is refused where the result has none of that name', () => {
    for (const by of ['whole', 'wholeShortest'] as const)
      expect(() => decidingIntervalOf(gauge, by)).toThrow(
        'judge: the whole distribution must be available to decide, got "not-a-sum"',
      );
    expect(() => beliefOf(gauge, 'whole')).toThrow(RangeError);
  });
});

describe('the distribution behind it', () => {
  test('is a t about the estimate for propagation, with its own coverage between its own ends', () => {
    const bell = beliefOf(gauge, 'propagation');
    const { interval, coverageProbability } = gauge.propagation;
    expect((bell?.shareBelow(interval.upper) ?? 0) - (bell?.shareBelow(interval.lower) ?? 0)).toBeCloseTo(
      coverageProbability,
      9,
    );
    expect(bell?.quantile(0.5)).toBeCloseTo(gauge.estimate, 6);
    expect(bell?.quantile(0.975)).toBeCloseTo(interval.upper, 6);
  });

  test('is none for a worst case, and the same for both intervals of the whole', () => {
    expect(beliefOf(result, 'worstCase')).toBe(undefined);
    expect(beliefOf(result, 'whole')).toBe(beliefOf(result, 'wholeShortest'));
  });

  test('is a step for an exact result', () => {
    const exact = evaluate({ model: { kind: 'sum', constant: 5, inputs: [], sensitivities: [] } });
    const step = beliefOf(exact, 'propagation');
    expect([4.999, 5, 5.001].map((x) => step?.shareBelow(x))).toEqual([0, 1, 1]);
    expect(step?.quantile(0.01)).toBe(5);
  });
});
