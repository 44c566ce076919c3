import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/checks/check.ts';
import { outcomeOf, outcomeOfExact } from '../../src/checks/outcome.ts';

const figure = (printed: string, computed: number, more: Partial<Figure> = {}): Figure => ({
  what: 'invented',
  printed,
  unit: '',
  compute: () => computed,
  ...more,
});

describe('a printed value beside a computed one', () => {
  it('agrees up to half a unit of the last printed digit, a tie included, and not beyond', () => {
    expect(outcomeOf(figure('6.31', 6.3149)).agrees).toBe(true);
    expect(outcomeOf(figure('6.31', 6.315)).agrees).toBe(true);
    expect(outcomeOf(figure('6.31', 6.3151)).agrees).toBe(false);
    expect(outcomeOf(figure('6.31', 6.3049)).agrees).toBe(false);
    expect(outcomeOf(figure('100.14', 100.145)).agrees).toBe(true);
  });

  it('keeps to the tolerance that a figure gives a reason for', () => {
    const tolerance = { within: 0.02, because: 'invented' };
    expect(outcomeOf(figure('6.31', 6.3299, { tolerance })).agrees).toBe(true);
    expect(outcomeOf(figure('6.31', 6.3301, { tolerance })).agrees).toBe(false);
  });

  it('must lie below a bound', () => {
    expect(outcomeOf(figure('< 2.5', 2.4999)).agrees).toBe(true);
    expect(outcomeOf(figure('< 2.5', 2.5)).agrees).toBe(false);
    expect(outcomeOf(figure('< 2.5', 2)).relative).toBeUndefined();
  });

  it('has a signed difference and a relative one without sign', () => {
    const { difference, relative } = outcomeOf(figure('-2', -2.5));
    expect(difference).toBe(-0.5);
    expect(relative).toBe(0.25);
  });

  it('has no relative difference from a printed zero', () => {
    expect(outcomeOf(figure('0.00', 0.001)).relative).toBeUndefined();
  });

  it('is never in agreement where the computation gives no number', () => {
    expect(outcomeOf(figure('1', Number.NaN)).agrees).toBe(false);
    expect(outcomeOf(figure('1', Number.POSITIVE_INFINITY)).agrees).toBe(false);
  });

  it('is held against the exact value where print is known to differ', () => {
    const differs = { exact: '1.6896', because: 'invented' };
    expect(outcomeOfExact(figure('1.70', 1.68957, { differs }))?.agrees).toBe(true);
    expect(outcomeOfExact(figure('1.70', 1.6894, { differs }))?.agrees).toBe(false);
    expect(outcomeOfExact(figure('1.70', 1.7))).toBeUndefined();
  });
});

describe('a figure that is asked for again', () => {
  it('is computed once', () => {
    let calls = 0;
    const counted: Figure = {
      what: 'invented',
      printed: '1',
      unit: '',
      compute: () => {
        calls += 1;
        return 1;
      },
    };
    expect(outcomeOf(counted)).toEqual(outcomeOf(counted));
    expect(calls).toBe(1);
  });
});
