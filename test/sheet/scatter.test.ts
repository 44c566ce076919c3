import { describe, expect, it } from 'vitest';
import { standardDeviation } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { keyingDb } from '../../src/sheet/keying.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { scatterOf } from '../../src/sheet/scatter.ts';
import type { Measurand } from '../../src/sheet/sheet.ts';
import { expectPrinted, expectWithin } from '../compute/near.ts';
import { measurementBy } from './any-measurement.ts';

const scatterIn = (measurement: Measurement) => scatterOf(sheetAt(measurement, 'point1'));
const uOf = (measurement: Measurement) =>
  chainOf(sheetAt(measurement, 'point1')).result.propagation.standardUncertainty;

describe('the scatter of readings', () => {
  const volts = [14.0, 14.2, 14.4];

  it('is that of the column in decibels, by the slope at its mean: 8.686 dB times the share of volts (GUM 4.2.3)', () => {
    const measurement = measurementBy('oscilloscope', {
      columns: { readings: volts },
      point: { frequencyHz: 1 },
    });
    const [influence, ...more] = scatterIn(measurement);
    expect(more).toEqual([]);
    expect(influence).toMatchObject({ id: 'readings', unit: 'dB' });
    expect(influence?.statement).toEqual({
      form: 'readings',
      standardDeviation: expect.closeTo((20 / Math.LN10) * (0.2 / 14.2), 12),
      count: 3,
    });
    expectWithin(uOf(measurement), (20 / Math.LN10) * (0.2 / Math.sqrt(3) / 14.2), 1e-9);
  });

  it('of a detector is that of its volts and the drop together, of a meter its own decibels', () => {
    const detector = measurementBy('peakDetector', { columns: { readings: [6.4, 6.6] } });
    expectWithin(uOf(detector), ((20 / Math.LN10) * 0.1) / 7.05, 1e-9); // s/sqrt 2 = 0.1 V of 6.5 + 0.55 V
    const meter = measurementBy('padsIntoMeter', { columns: { readings: [7, 7.2] } });
    expectWithin(uOf(meter), 0.1, 1e-12);
  });

  it('of an in-line meter is a share of the power that is meant', () => {
    const reading = (delivery: 'net' | 'incident', reflected: readonly number[]) => {
      const measurement = measurementBy('inLine', { columns: { readings: [0.5, 0.52], reflected } });
      return scatterIn({ ...measurement, measurand: { ...measurement.measurand, delivery } });
    };
    const s = (10 / Math.LN10) * standardDeviation([0.5, 0.52]);
    const [net, back] = reading('net', [0.01, 0.02]);
    expect(net?.statement).toMatchObject({ standardDeviation: expect.closeTo(s / 0.495, 9) });
    expect(back).toMatchObject({ id: 'readings.reflected', unit: 'dB' });
    const incident = reading('incident', [0.01, 0.02]);
    expect(incident).toHaveLength(1);
    expect(incident[0]?.statement).toMatchObject({ standardDeviation: expect.closeTo(s / 0.51, 9) });
  });

  it('of every column of a substitution counts, each as its share of the power', () => {
    const columns = { readings: [14, 14.4], riseDc: [14, 14.2], volts: [10, 10.02], amperes: [0.2, 0.201] };
    const measurement = measurementBy('dcSubstitution', { columns });
    expect(scatterIn(measurement).map(({ id }) => id)).toEqual([
      'readings',
      'readings.riseDc',
      'readings.volts',
      'readings.amperes',
    ]);
    const parts = Object.values(columns).map(
      (values) => standardDeviation(values) / Math.SQRT2 / ((values[0] ?? 0) / 2 + (values[1] ?? 0) / 2),
    );
    expectWithin(uOf(measurement), (10 / Math.LN10) * Math.hypot(...parts), 1e-9);
  });

  it('is nothing for equal readings and for one alone, unless it is known from earlier', () => {
    expect(scatterIn(measurementBy('oscilloscope', { columns: { readings: [14, 14] } }))).toEqual([]);
    const one = { columns: { readings: [14] } };
    expect(scatterIn(measurementBy('oscilloscope', one))).toEqual([]);
    const known = measurementBy('oscilloscope', {
      ...one,
      repeatability: { standardDeviationDb: 0.05, degreesOfFreedom: 9 },
    });
    expect(scatterIn(known)).toEqual([
      {
        id: 'readings',
        unit: 'dB',
        statement: { form: 'standard', standardUncertainty: 0.05, degreesOfFreedom: 9 },
      },
    ]);
  });
});

describe('keying', () => {
  const measurand = (power: Measurand['power'], keying: Measurand['keying']): Measurand => ({
    power,
    ...(keying !== undefined && { keying }),
    plane: '',
    conditions: '',
  });

  it('adds nothing with the key down, whatever is shown and meant', () => {
    for (const power of ['mean', 'peakEnvelope', 'carrier'] as const)
      for (const shown of ['mean', 'peakEnvelope'] as const) {
        expect(keyingDb(measurand(power, 'keyDown'), shown)).toBe(0);
        expect(keyingDb(measurand(power, undefined), shown)).toBe(0);
      }
  });

  it('of PARIS is 3.57 dB from the mean up to the peak envelope, and as much down (22/50)', () => {
    expectPrinted(keyingDb(measurand('peakEnvelope', 'parisWord'), 'mean'), 3.57, 2);
    expectPrinted(keyingDb(measurand('mean', 'parisWord'), 'peakEnvelope'), -3.57, 2);
    expectPrinted(keyingDb(measurand('peakEnvelope', 'twoEqualTones'), 'mean'), 3.01, 2);
  });

  it('adds nothing where what is shown is what is meant', () => {
    expect(keyingDb(measurand('mean', 'stringOfDits'), 'mean')).toBe(0);
    expect(keyingDb(measurand('peakEnvelope', 'stringOfDits'), 'peakEnvelope')).toBe(0);
    expect(keyingDb(measurand('mean', 'steadyCarrier'), 'peakEnvelope')).toBe(0);
  });

  it('is counted by each method as its instrument shows it: heat the mean, a trace the crest', () => {
    const level = (method: 'dcSubstitution' | 'oscilloscope', keying: 'keyDown' | 'stringOfDits') => {
      const measurement = measurementBy(method);
      const change = { power: 'peakEnvelope', keying } as const;
      return chainOf(
        sheetAt({ ...measurement, measurand: { ...measurement.measurand, ...change } }, 'point1'),
      ).result.estimate;
    };
    expectPrinted(level('dcSubstitution', 'stringOfDits') - level('dcSubstitution', 'keyDown'), 3.01, 2);
    expect(level('oscilloscope', 'stringOfDits')).toBe(level('oscilloscope', 'keyDown'));
  });

  it('is refused for carrier power, which is read key down', () => {
    expect(() => keyingDb(measurand('carrier', 'parisWord'), 'mean')).toThrow(
      new RangeError('keyingDb: carrier power must be read key down, got "parisWord"'),
    );
  });
});
