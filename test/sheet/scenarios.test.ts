import { describe, expect, it } from 'vitest';
import { evaluate, levelDbm, levelToPower, ohms, powerW } from '#compute';
import { sheetAt } from '../../src/sheet/at-point.ts';
import type { Measurement } from '../../src/sheet/measurement.ts';
import { outcomeOf } from '../../src/sheet/to-model.ts';
import { expectPrinted, expectWithin } from '../compute/near.ts';
import { measurementBy, stated, within } from './any-measurement.ts';

/** Whole measurements with invented data, worked by hand from the formulas of the GUM before they were computed here. */
function resultOf(measurement: Measurement) {
  const outcome = outcomeOf(sheetAt(measurement, 'point1'));
  if (!outcome.inRange) throw new Error(`out of range: ${outcome.reason.code}`);
  return evaluate({ model: outcome.model, coverageFactor: 2 });
}
const watts = (level: number): number => levelToPower(levelDbm(level));
/** Standard uncertainty in dB of one in percent of power, for small ones: 10 lg e = 4.343 dB. */
const DB_PER_PERCENT = 10 / Math.LN10 / 100;

describe('an oscilloscope across a load, 20.4 V from peak to peak on 49.6 ohm at 7.03 MHz', () => {
  const measurement = measurementBy('oscilloscope', {
    setup: { resistance: ohms(49.6), bandwidthsHz: [100e6] },
    columns: { readings: [20.4] },
    point: { frequencyHz: 7.03e6 },
    links: [
      stated({ id: 'gain', stated: within(3), unit: 'percentOfVolts' }),
      stated({ id: 'trace', stated: within(0.2), unit: 'voltsPeakToPeak' }),
      stated({ id: 'load', stated: within(1), unit: 'percentOfResistance' }),
    ],
  });
  const result = resultOf(measurement);
  const rollOff = 10 * Math.log10(1 + 0.0703 ** 2);

  it('gives 1.049 W, 30.21 dBm, before the middle of what the bandwidth may hide', () => {
    const outcome = outcomeOf(sheetAt(measurement, 'point1'));
    if (!outcome.inRange) throw new Error('wish a number');
    expectPrinted(outcome.model.constant, 30.21, 2);
    expectPrinted(watts(outcome.model.constant), 1.049, 3);
    // shapes in percent have a mean in dB that lies a hair below zero: some 0.005 dB for all three
    expectWithin(result.estimate, outcome.model.constant + rollOff / 2, 0.006);
  });

  it('has u = 3.69 % of power, U = 0.32 dB, the three parts and the roll-off added as squares', () => {
    const parts = [(2 * 3) / Math.sqrt(3), (2 * 100 * 0.2) / 20.4 / Math.sqrt(3), 1 / Math.sqrt(3)];
    const percent = Math.hypot(...parts);
    expectPrinted(percent, 3.69, 2);
    const all = Math.hypot(percent * DB_PER_PERCENT, rollOff / Math.sqrt(12));
    expectWithin(result.propagation.standardUncertainty, all, 1e-4);
    expectPrinted(result.propagation.expanded, 0.32, 2);
  });

  it('has a worst case of +9.3 and -8.7 % of power, and up to 0.5 % more for the roll-off', () => {
    const power = (20.4 ** 2 / (8 * 49.6)) as number;
    expectPrinted(100 * (watts(result.worstCase.interval.lower) / power - 1), -8.7, 1);
    expectPrinted(100 * (watts(result.worstCase.interval.upper - rollOff) / power - 1), 9.3, 1);
    expectPrinted(100 * (10 ** (rollOff / 10) - 1), 0.5, 1);
  });

  it('gives no number at 145 MHz, nor without a load', () => {
    const at145 = {
      ...measurement,
      points: measurement.points.map((point) => ({ ...point, frequencyHz: 145e6 })),
    };
    expect(outcomeOf(sheetAt(at145, 'point1'))).toMatchObject({
      inRange: false,
      reason: { code: 'aboveBandwidth', ratio: 1.45 },
    });
    const open = measurementBy('oscilloscope', { setup: { terminated: false } });
    expect(outcomeOf(sheetAt(open, 'point1'))).toMatchObject({ reason: { code: 'noTermination' } });
  });
});

describe('a diode probe with a drop of 0.55 V known to 0.10 V', () => {
  const at = (volts: number) =>
    resultOf(
      measurementBy('peakDetector', {
        setup: { resistance: ohms(50) },
        columns: { readings: [volts] },
        links: [stated({ id: 'drop', stated: within(0.1), unit: 'volts' })],
      }),
    );

  it('at 1.85 V means 57.6 mW, 52.9 to 62.5', () => {
    const { worstCase } = at(1.85);
    expectPrinted(1e3 * (2.4 ** 2 / 100), 57.6, 1);
    expectPrinted(1e3 * watts(worstCase.interval.lower), 52.9, 1);
    expectPrinted(1e3 * watts(worstCase.interval.upper), 62.5, 1);
    expectPrinted(worstCase.interval.lower - 10 * Math.log10(57.6), -0.37, 2);
    expectPrinted(worstCase.interval.upper - 10 * Math.log10(57.6), 0.35, 2);
  });

  it('at 16.77 V means 3.00 W to 0.05 dB: the same diode, another trust', () => {
    const { estimate, worstCase } = at(16.77);
    expectPrinted(watts(estimate), 3, 2);
    expectPrinted(worstCase.interval.upper - estimate, 0.05, 2);
    expectPrinted(worstCase.interval.lower - estimate, -0.05, 2);
  });

  it('gives no number below 50 mW, unless the drop is from a curve taken at DC', () => {
    const low = { setup: { resistance: ohms(50) }, columns: { readings: [1.6] } }; // 2.15 V peak, 46 mW
    expect(outcomeOf(sheetAt(measurementBy('peakDetector', low), 'point1'))).toMatchObject({
      reason: { code: 'belowDetector' },
    });
    const known = { ...low, setup: { resistance: ohms(50), curveFromDc: true } };
    expect(outcomeOf(sheetAt(measurementBy('peakDetector', known), 'point1')).inRange).toBe(true);
  });
});

describe('an in-line meter', () => {
  const reading = (
    delivery: 'net' | 'incident',
    { forward, back, scale, percent }: { forward: number; back: number; scale: number; percent: number },
  ) => {
    const range = { fullScale: powerW(scale), percentOfFullScale: percent };
    const measurement = measurementBy('inLine', {
      setup: { forward: range, reflected: range },
      columns: { readings: [forward], reflected: [back] },
    });
    return { ...measurement, measurand: { ...measurement.measurand, delivery } };
  };

  it('that reads 3 W on a 20 W scale of 5 % means 2 to 4 W, -1.76 and +1.25 dB', () => {
    const { worstCase } = resultOf(reading('incident', { forward: 3, back: 0, scale: 20, percent: 5 }));
    expectWithin(watts(worstCase.interval.lower), 2, 1e-9);
    expectWithin(watts(worstCase.interval.upper), 4, 1e-9);
    expectPrinted(worstCase.interval.lower - 10 * Math.log10(3000), -1.76, 2);
    expectPrinted(worstCase.interval.upper - 10 * Math.log10(3000), 1.25, 2);
  });

  it('that reads 5.0 W forward and 0.20 W back has 4.8 W left, -0.18 dB', () => {
    const { estimate } = resultOf(reading('net', { forward: 5, back: 0.2, scale: 5, percent: 0 }));
    expectWithin(watts(estimate), 4.8, 1e-9);
    expectPrinted(estimate - 10 * Math.log10(5000), -0.18, 2);
  });

  it('gives no number where full scale says more than the needle: 2.9 W on that scale', () => {
    const low = reading('incident', { forward: 2.9, back: 0, scale: 20, percent: 5 });
    expect(outcomeOf(sheetAt(low, 'point1'))).toMatchObject({ reason: { code: 'fullScaleError' } });
  });
});

describe('an insulated load heated with RF and with DC', () => {
  const result = resultOf(
    measurementBy('dcSubstitution', {
      columns: { readings: [14.2], riseDc: [14], volts: [10], amperes: [0.1995] },
      links: [
        stated({ id: 'voltmeter', stated: within(0.5), unit: 'percentOfDcVolts' }),
        stated({ id: 'ammeter', stated: within(1), unit: 'percentOfDcAmperes' }),
        stated({ id: 'rf-rise', stated: within(0.1), unit: 'kelvinRf' }),
        stated({ id: 'dc-rise', stated: within(0.1), unit: 'kelvinDc' }),
        stated({ id: 'leak', stated: within(1), unit: 'percentOfPower' }),
      ],
    }),
  );

  it('takes 2.02 W, 33.06 dBm, with u = 1.04 % and U = 0.09 dB', () => {
    expectPrinted(result.estimate, 33.06, 2);
    expectPrinted(watts(result.estimate), 2.02, 2);
    const percent = Math.hypot(...[0.5, 1, 10 / 14.2, 10 / 14, 1].map((limit) => limit / Math.sqrt(3)));
    expectPrinted(percent, 1.04, 2);
    expectWithin(result.propagation.standardUncertainty, percent * DB_PER_PERCENT, 1e-4);
    expectPrinted(result.propagation.expanded, 0.09, 2);
  });
});
