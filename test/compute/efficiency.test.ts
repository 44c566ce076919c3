import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dcPower, efficiency } from '../../src/compute/efficiency.ts';
import { powerW } from '../../src/compute/quantity.ts';
import { expectNear } from './near.ts';

const size = fc.double({ min: 1e-6, max: 1e4, noNaN: true });

describe('power from a supply', () => {
  it('grows with the volts and with the amperes alike', () => {
    fc.assert(
      fc.property(size, size, (volts, amperes) => {
        expectNear(dcPower({ volts: 2 * volts, amperes }), 2 * dcPower({ volts, amperes }));
        expect(dcPower({ volts, amperes })).toBe(dcPower({ volts: amperes, amperes: volts }));
      }),
    );
  });

  it('of 13.8 V and 2 A is 27.6 W (P = U I)', () => {
    expectNear(dcPower({ volts: 13.8, amperes: 2 }), 27.6);
  });

  it('is refused for a negative or infinite reading', () => {
    expect(() => dcPower({ volts: -1, amperes: 1 })).toThrow('dcPower: volts must be >= 0, got -1');
    expect(() => dcPower({ volts: 1, amperes: Number.POSITIVE_INFINITY })).toThrow(
      /^dcPower: amperes must be >= 0/,
    );
  });
});

describe('efficiency', () => {
  it('is a fraction, and what is left of it is the heat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (input, share) => {
          const eta = efficiency({ output: powerW(input * share), input: powerW(input) });
          expect(eta >= 0 && eta <= 1).toBe(true);
          expect(Math.abs(input * (1 - eta) - (input - input * share))).toBeLessThanOrEqual(1e-12 * input);
        },
      ),
    );
  });

  it('of 5 W out of 10 W is one half', () => {
    expect(efficiency({ output: powerW(5), input: powerW(10) })).toBe(0.5);
  });

  it('above one is refused, as it is without input', () => {
    expect(() => efficiency({ output: powerW(2), input: powerW(1) })).toThrow(
      'efficiency: output must not be above input, got "2 above 1"',
    );
    expect(() => efficiency({ output: powerW(0), input: powerW(0) })).toThrow(
      'efficiency: input must be > 0, got 0',
    );
  });
});
