import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbToPowerRatio, gainDb, mismatchLimits } from '#compute';

const Exact = Decimal.clone({ precision: 60 });
const db = (ratio: Decimal): Decimal => ratio.log(10).times(20);

/** From a reflection that no instrument resolves to that of SWR 4. */
const magnitude = fc.double({ min: -9, max: Math.log10(0.6), noNaN: true }).map((power) => 10 ** power);

test('limits of mismatch agree with 60-digit decimals to 1e-14 of the value, however small the reflections', () => {
  fc.assert(
    fc.property(
      fc.record({ source: magnitude, load: magnitude, input: magnitude, output: magnitude }),
      fc.double({ min: -60, max: -6, noNaN: true }),
      ({ source, load, input, output }, padDb) => {
        const gain = gainDb(padDb);
        const { lower, upper } = mismatchLimits({ source, load, between: { input, output, gain } });
        const atInput = new Exact(source).times(input);
        const atOutput = new Exact(load).times(output);
        const through = new Exact(source).times(load).times(dbToPowerRatio(gain));
        const one = new Exact(1);
        const least = one.minus(atInput).times(one.minus(atOutput)).minus(through);
        const most = one.plus(atInput).times(one.plus(atOutput)).plus(through);
        expect(Math.abs(new Exact(upper).div(db(most)).minus(1).toNumber())).toBeLessThan(1e-14);
        expect(Math.abs(new Exact(lower).div(db(least)).minus(1).toNumber())).toBeLessThan(1e-14);
      },
    ),
  );
});
