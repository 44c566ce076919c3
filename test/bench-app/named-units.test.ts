import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { chooseMethod } from '../../src/bench/state/choose-method.ts';
import { withNamedUnits } from '../../src/bench/state/named-units.ts';
import { METHODS } from '../../src/sheet/method.ts';
import { blankPoint } from '../../src/sheet/point-entries.ts';

const reading = (readings: string) => ({ ...blankPoint('point1'), readings });

describe('a reading without a unit, when another method is chosen', () => {
  it.each([
    ['padsIntoMeter', '7', '7 dBm'],
    ['oscilloscope', '14.2', '14.2 Vpp'],
    ['peakDetector', '6,5', '6,5 V'],
    ['inLine', '0.5', '0.5 W'],
    ['dcSubstitution', '-1e-3', '-1e-3 K'],
  ] as const)('gets that of the method before (%s: %s)', (method, typed, named) => {
    expect(withNamedUnits(reading(typed), method).readings).toBe(named);
  });

  it('stands in a column line by line; what has a unit, is empty or is no number stays as typed', () => {
    const { readings } = withNamedUnits(reading('7\n7.1 dBm\n\nabc\n 7.2 '), 'padsIntoMeter');
    expect(readings).toBe('7 dBm\n7.1 dBm\n\nabc\n 7.2 dBm');
  });

  it('is not marked twice, and a point without bare numbers stays the same', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }).map(String), fc.string())),
        (lines) => {
          const once = withNamedUnits(reading(lines.join('\n')), 'inLine');
          expect(withNamedUnits(once, 'peakDetector')).toBe(once);
        },
      ),
    );
  });

  it('is refused beside the field in place of being read in another unit', () => {
    const [point] = demonstrationEntries().points;
    if (point === undefined) throw new Error('the demonstration must have a point');
    const entries = { ...demonstrationEntries(), points: [{ ...point, readings: '7' }] };
    for (const method of METHODS.filter((each) => each !== entries.method)) {
      const { problems } = readMeasurement(chooseMethod(entries, method));
      const told = problems.map(({ path }) => path);
      // A level is a power too: what a meter in the line shows may be given in dBm.
      if (method === 'inLine') expect(told).not.toContain('point1.readings');
      else expect(told).toContain('point1.readings');
    }
  });
});
