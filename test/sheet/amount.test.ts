import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Statement } from '#compute';
import { amountOf, linkUncertaintyPerAmount, withAmount, withLinkAmount } from '../../src/sheet/amount.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { limits, linkOf, uShaped } from '../../src/sheet/link.ts';

const forms: readonly Statement[] = [
  { form: 'limits', shape: 'rectangular', halfWidth: 0.5 },
  { form: 'trapezoid', halfWidth: 0.5, topRatio: 0.3 },
  { form: 'uncertainLimits', halfWidth: 0.5, limitHalfWidth: 0.1 },
  { form: 'asymmetric', lower: -0.1, upper: 0.4 },
  { form: 'expanded', expanded: 0.3, coverageFactor: 2 },
  { form: 'coverage', expanded: 0.3, probability: 0.95 },
  { form: 'standard', standardUncertainty: 0.2 },
  { form: 'readings', standardDeviation: 0.1, count: 5 },
  { form: 'displayStep', step: 0.1 },
  { form: 'halfWithin', halfWidth: 0.2 },
];

describe('the one number of a statement that a reader drags', () => {
  it('comes back as it was put in, whatever the form', () => {
    for (const statement of forms)
      fc.assert(
        fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (amount) => {
          expect(amountOf(withAmount(statement, amount))).toBeCloseTo(amount, 9);
        }),
      );
  });

  it('leaves the form and everything else of the statement alone', () => {
    for (const statement of forms) {
      const same = withAmount(statement, amountOf(statement));
      expect(same).toEqual(statement);
    }
  });

  it('keeps the proportions of lopsided limits', () => {
    const twice = withAmount({ form: 'asymmetric', lower: -0.1, upper: 0.4 }, 0.5);
    expect(twice).toEqual({ form: 'asymmetric', lower: -0.2, upper: 0.8 });
  });

  it('opens lopsided limits of no width evenly', () => {
    expect(withAmount({ form: 'asymmetric', lower: 0.2, upper: 0.2 }, 0.1)).toEqual({
      form: 'asymmetric',
      lower: 0.1,
      upper: 0.30000000000000004,
    });
  });

  it('never lets the doubt of limits exceed the limits', () => {
    expect(withAmount({ form: 'uncertainLimits', halfWidth: 0.5, limitHalfWidth: 0.1 }, 0.05)).toEqual({
      form: 'uncertainLimits',
      halfWidth: 0.05,
      limitHalfWidth: 0.05,
    });
  });

  it('refuses a negative amount and what is no number', () => {
    for (const amount of [-0.1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => withAmount(limits(1), amount)).toThrow(/withAmount: amount must be >= 0, got/);
  });
});

describe('a sheet with one amount changed', () => {
  it('differs in that link only', () => {
    const before = clubSheet();
    const after = withLinkAmount(before, 'pad', 0.1);
    expect(after.links.map(({ id, statement }) => [id, amountOf(statement)])).toEqual(
      before.links.map(({ id, statement }) => [id, id === 'pad' ? 0.1 : amountOf(statement)]),
    );
    expect({ ...after, links: [] }).toEqual({ ...before, links: [] });
  });

  it('is the same sheet where no link has the id', () => {
    expect(withLinkAmount(clubSheet(), 'nobody', 1)).toEqual(clubSheet());
  });
});

describe('standard uncertainty per amount', () => {
  const link = (statement: Statement) =>
    linkOf({ id: 'x', label: 'x', kind: 'other', statement, source: 'judged' });
  it('is the reciprocal of the divisor of the form (GUM 4.3)', () => {
    expect(linkUncertaintyPerAmount(link(limits(1)))).toBeCloseTo(1 / Math.sqrt(3), 9);
    expect(linkUncertaintyPerAmount(link(uShaped(1)))).toBeCloseTo(1 / Math.SQRT2, 9);
    expect(linkUncertaintyPerAmount(link({ form: 'expanded', expanded: 1, coverageFactor: 2 }))).toBeCloseTo(
      0.5,
      9,
    );
    expect(linkUncertaintyPerAmount(link({ form: 'readings', standardDeviation: 1, count: 4 }))).toBeCloseTo(
      0.5,
      9,
    );
  });
});
