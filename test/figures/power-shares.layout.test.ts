import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerSharesLayout, SHARES, type ShareRow } from '../../src/figures/power-shares.layout.ts';

const row: fc.Arbitrary<ShareRow> = fc
  .record({
    first: fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
    second: fc.double({ min: 0, max: 1e3, noNaN: true }),
  })
  .map(({ first, second }) => ({
    id: 'a',
    label: '',
    first: { powerW: first, label: '' },
    second: { powerW: second, label: '' },
  }));

describe('the bars of what goes in', () => {
  it('are divided as the powers are, and fill the whole together', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 3 }), (rows) => {
        const { rows: drawn, height } = powerSharesLayout(rows);
        const whole = SHARES.axis[1] - SHARES.axis[0];
        expect(height).toBe(rows.length * SHARES.rowPitch);
        for (const { row: given, first, second } of drawn) {
          const share = given.first.powerW / (given.first.powerW + given.second.powerW);
          expect(Math.abs(first.width / whole - share)).toBeLessThan(1e-4);
          expect(Math.abs(first.width + second.width - whole)).toBeLessThan(0.02);
          expect(second.x).toBeCloseTo(first.x + first.width, 2);
        }
      }),
    );
  });

  it('cannot be drawn of nothing', () => {
    const none = { powerW: 0, label: '' };
    expect(() => powerSharesLayout([{ id: 'a', label: '', first: none, second: none }])).toThrow(
      /linearScale: domain and range need a width/,
    );
  });
});
