import { describe, expect, it } from 'vitest';
import type { Check, Figure } from '../../src/checks/check.ts';
import { summaryOf } from '../../src/checks/summary.ts';

const figure = (printed: string, computed: number, more: Partial<Figure> = {}): Figure => ({
  what: printed,
  printed,
  unit: '',
  compute: () => computed,
  ...more,
});

const check = (id: string, figures: readonly Figure[]): Check => ({
  id,
  clause: 'invented',
  title: 'invented',
  status: 'published',
  figures,
});

const differs = { exact: '3.000', because: 'invented' };

describe('the sum over all checks', () => {
  it('counts what agrees, what is explained and what is open, and leaves none out', () => {
    const sum = summaryOf([
      check('a', [figure('1.00', 1.004), figure('2.00', 3, { differs })]),
      check('b', [figure('5', 6)]),
    ]);
    expect(sum).toMatchObject({ checks: 2, figures: 3, agreeing: 1, explained: 1, open: 1 });
  });

  it('finds the largest relative difference among those that agree only', () => {
    const sum = summaryOf([
      check('a', [figure('1.0', 1.04), figure('5.0', 5.04)]),
      check('b', [figure('5', 9)]),
    ]);
    expect(sum.largestAgreeing?.where.figure.what).toBe('1.0');
    expect(sum.largestAgreeing?.relative).toBeCloseTo(0.04, 12);
  });

  it('finds it apart for values printed with twelve digits or more; leading zeros are no digits', () => {
    const sum = summaryOf([
      check('a', [
        figure('1.00000000000', 1.000000000001),
        figure('0.0000000012345', 0.00000000123454),
        figure('123456789012', 123456789012.04),
        figure('12345678901', 12345678901.4),
      ]),
    ]);
    expect(sum.largestOfLongPrints?.where.figure.what).toBe('1.00000000000');
    expect(sum.largestAgreeing?.where.figure.what).toBe('0.0000000012345');
  });

  it('has no largest difference of nothing', () => {
    expect(summaryOf([])).toEqual({ checks: 0, figures: 0, agreeing: 0, explained: 0, open: 0 });
  });
});
