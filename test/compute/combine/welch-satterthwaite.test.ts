import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { welchSatterthwaite } from '../../../src/compute/combine/welch-satterthwaite.ts';

const part = fc.record({
  contribution: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
  degreesOfFreedom: fc.double({ min: 0.5, max: 1e3, noNaN: true }),
});

describe('effective degrees of freedom', () => {
  test('they lie between the fewest of the parts and the sum of all', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), (parts) => {
        const effective = welchSatterthwaite(parts);
        const all = parts.map(({ degreesOfFreedom }) => degreesOfFreedom);
        expect(effective).toBeGreaterThanOrEqual(Math.min(...all) * (1 - 1e-12));
        expect(effective).toBeLessThanOrEqual(all.reduce((a, b) => a + b, 0) * (1 + 1e-12));
      }),
    );
  });

  test('the unit and the order of the parts do not matter', () => {
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 8 }),
        fc.double({ min: 1e-120, max: 1e120, noNaN: true }),
        (parts, unit) => {
          const inOtherUnit = parts.map((p) => ({ ...p, contribution: p.contribution * unit })).reverse();
          expect(welchSatterthwaite(inOtherUnit) / welchSatterthwaite(parts)).toBeCloseTo(1, 10);
        },
      ),
    );
  });

  test('the published 19.0 comes from unrounded values (GUM G.4.1)', () => {
    const parts = [
      { contribution: 0.25, degreesOfFreedom: 9 },
      { contribution: 0.57, degreesOfFreedom: 4 },
      { contribution: 0.82, degreesOfFreedom: 14 },
    ];
    expect(welchSatterthwaite(parts)).toBeCloseTo(18.9987, 4);
  });

  test('the published 16.7 is that of 31.65 nm, not of the printed 32 nm (GUM H.1.6)', () => {
    const parts = [
      { contribution: 25, degreesOfFreedom: 18 },
      { contribution: Math.hypot(5.8, 3.9, 6.7), degreesOfFreedom: 25.6 },
      { contribution: (50.000623 * 0.1) / Math.sqrt(3), degreesOfFreedom: 50 },
      { contribution: (50_000.623 * 11.5 * 0.05) / 1000 / Math.sqrt(3), degreesOfFreedom: 2 },
    ];
    expect(welchSatterthwaite(parts)).toBeCloseTo(16.75, 2);
    const doubt = parts.reduce((sum, p) => sum + p.contribution ** 4 / p.degreesOfFreedom, 0);
    expect(32 ** 4 / doubt).toBeCloseTo(17.5, 1);
  });

  test('parts known without doubt leave infinitely many, and so does no part at all', () => {
    expect(welchSatterthwaite([{ contribution: 1, degreesOfFreedom: Number.POSITIVE_INFINITY }])).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(welchSatterthwaite([])).toBe(Number.POSITIVE_INFINITY);
    expect(welchSatterthwaite([{ contribution: 0, degreesOfFreedom: 3 }])).toBe(Number.POSITIVE_INFINITY);
  });

  test('a known part beside a doubtful one raises the degrees', () => {
    const doubtful = { contribution: 1, degreesOfFreedom: 4 };
    const known = { contribution: 1, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(welchSatterthwaite([doubtful, known])).toBeCloseTo(16, 12);
  });

  test('from 1e12 on they count as infinitely many: t is then the normal', () => {
    expect(welchSatterthwaite([{ contribution: 1, degreesOfFreedom: 0.999e12 }])).toBeCloseTo(0.999e12, -1);
    expect(welchSatterthwaite([{ contribution: 1, degreesOfFreedom: 1e12 }])).toBe(Number.POSITIVE_INFINITY);
    const faint = { contribution: 1e-80, degreesOfFreedom: 1 };
    const known = { contribution: 1, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(welchSatterthwaite([faint, known])).toBe(Number.POSITIVE_INFINITY);
  });

  test('what cannot be a part is refused', () => {
    expect(() => welchSatterthwaite([{ contribution: -1, degreesOfFreedom: 3 }])).toThrow(
      'welchSatterthwaite: contribution must be >= 0, got -1',
    );
    for (const degreesOfFreedom of [0, -1, Number.NaN])
      expect(() => welchSatterthwaite([{ contribution: 1, degreesOfFreedom }])).toThrow(
        `welchSatterthwaite: degreesOfFreedom must be > 0, got ${degreesOfFreedom}`,
      );
  });
});
