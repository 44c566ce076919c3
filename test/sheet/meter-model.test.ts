import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelDbm } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { bandChainOf } from '../../src/sheet/chain.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { meterModel } from '../../src/sheet/meter-model.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { toModel } from '../../src/sheet/to-model.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';

const prepared: fc.Arbitrary<Sheet> = fc
  .record({
    base: fc.constantFrom(clubSheet, twoPadsSheet),
    readings: fc.array(fc.double({ min: -20, max: 10, noNaN: true }).map(levelDbm), {
      minLength: 1,
      maxLength: 5,
    }),
    known: fc.boolean(),
  })
  .map(({ base, readings, known }) => ({
    ...base(),
    readings,
    ...(known && { repeatability: { standardDeviationDb: 0.05, degreesOfFreedom: 9 } }),
  }));

describe('the model of a prepared sheet', () => {
  it('is that of any sheet: the same estimate, the same parts, the same uncertainty of each', () => {
    fc.assert(
      fc.property(prepared, (sheet) => {
        const [short, full] = [meterModel(sheet), toModel(sheet)];
        expect(short.constant).toBe(full.constant);
        expect(short.sensitivities).toEqual(full.sensitivities);
        expect(short.inputs.map(({ id }) => id)).toEqual(full.inputs.map(({ id }) => id));
        expect(bandChainOf(sheet).result.propagation).toEqual(chainOf(sheet).result.propagation);
      }),
    );
  });

  it('is none of a sheet that needs more: another method, keying, the exact shape of a mismatch', () => {
    const sheet = clubSheet();
    const wish = /meterModel: sheet must be a prepared one/;
    expect(() => meterModel(sheetAt(clubMeasurement('oscilloscope'), 'point1'))).toThrow(wish);
    const keyed: Sheet = { ...sheet, measurand: { ...sheet.measurand, power: 'mean', keying: 'parisWord' } };
    expect(() => meterModel(keyed)).toThrow(wish);
    const links = sheet.links.map((link) => ({ ...link, reflections: { source: 0.2, load: 0.1 } }));
    expect(() => meterModel({ ...sheet, links })).toThrow(wish);
    expect(() => meterModel({ ...sheet, readings: [] })).toThrow(RangeError);
  });
});
