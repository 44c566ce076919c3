import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { singlePoleLossDb } from '../../../src/compute/bandwidth.ts';
import { type OscilloscopeReading, oscilloscope } from '../../../src/compute/method/oscilloscope.ts';
import { ohms, voltsPeakToPeak } from '../../../src/compute/quantity.ts';
import { expectPrinted, expectWithin } from '../near.ts';
import { idsOf, modelOf, reasonOf, resultOf, within } from './outcome.ts';

/** An invented kit transmitter on 7.03 MHz: 20.4 V peak-to-peak across 49.6 ohm, on a 100 MHz oscilloscope. */
const kit: OscilloscopeReading = {
  peakToPeak: voltsPeakToPeak(20.4),
  resistance: ohms(49.6),
  frequencyHz: 7.03e6,
  bandwidthsHz: [100e6],
  terminated: true,
  influences: [
    { id: 'gain', statement: within(3), unit: 'percentOfVolts' },
    { id: 'graticule', statement: within(0.2), unit: 'voltsPeakToPeak' },
    { id: 'load', statement: within(1), unit: 'percentOfResistance' },
  ],
};
const constantOf = (reading: OscilloscopeReading) => {
  const model = modelOf(oscilloscope(reading));
  return model.kind === 'sum' ? model.constant : Number.NaN;
};

describe('an oscilloscope across a load', () => {
  it('reads 1.049 W, 30.21 dBm, of 20.4 V peak-to-peak across 49.6 ohm', () => {
    expectPrinted(constantOf(kit), 30.21, 2);
    expectPrinted(10 ** (constantOf(kit) / 10 - 3), 1.049, 3);
    const assumed = constantOf({ ...kit, resistance: ohms(50) });
    expectPrinted(10 ** (assumed / 10 - 3), 1.04, 2);
  });

  it('is uncertain by 3.69 % of power (0.16 dB) without its roll-off, worst +9.3 and -8.7 %', () => {
    // At a frequency of nought there is no roll-off: what is left are the three stated limits.
    const { propagation, worstCase, estimate } = resultOf(oscilloscope({ ...kit, frequencyHz: 0 }));
    expectWithin(propagation.standardUncertainty, 4.3429448 * 0.0369, 0.0005);
    const percent = (level: number) => 100 * (10 ** ((level - constantOf(kit)) / 10) - 1);
    expectPrinted(percent(worstCase.interval.upper), 9.3, 1);
    expectPrinted(percent(worstCase.interval.lower), -8.7, 1);
    expectWithin(estimate, constantOf(kit), 0.002);
  });

  it('counts its roll-off as limits from nothing to single-pole, and shifts by their middle', () => {
    const loss = singlePoleLossDb(0.0703);
    expectPrinted(100 * (1 - 10 ** (-loss / 10)), 0.5, 1);
    expect(idsOf(oscilloscope(kit))).toEqual(['gain', 'graticule', 'load', 'rollOff']);
    const rollOff = modelOf(oscilloscope(kit)).inputs[3];
    expect(rollOff?.distribution.limits).toEqual({ lower: 0, upper: loss });
    const bare = resultOf(oscilloscope({ ...kit, influences: [] }));
    expectWithin(bare.estimate, constantOf(kit) + loss / 2, 1e-12);
  });

  it('reads four times the power of twice the volts, half of twice the resistance', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (volts) => {
        const bare = { ...kit, influences: [] };
        const once = constantOf({ ...bare, peakToPeak: voltsPeakToPeak(volts) });
        const twice = constantOf({ ...bare, peakToPeak: voltsPeakToPeak(2 * volts) });
        expectWithin(twice - once, 6.020599913279624, 1e-9);
        const higher = constantOf({ ...bare, peakToPeak: voltsPeakToPeak(volts), resistance: ohms(99.2) });
        expectWithin(higher - once, -3.010299956639812, 1e-9);
      }),
    );
  });

  it('takes limits in volts as the same share of the reading', () => {
    const inVolts = { id: 'a', statement: within(0.612), unit: 'voltsPeakToPeak' } as const;
    const inPercent = { id: 'a', statement: within(3), unit: 'percentOfVolts' } as const;
    const limits = (influence: (typeof kit.influences)[number]) =>
      modelOf(oscilloscope({ ...kit, influences: [influence] })).inputs[0]?.distribution.limits;
    expectWithin(limits(inVolts)?.upper ?? 0, limits(inPercent)?.upper ?? 1, 1e-12);
    expectPrinted(limits(inVolts)?.upper ?? 0, 0.257, 3);
    expectPrinted(limits(inVolts)?.lower ?? 0, -0.265, 3);
  });

  it('turns the sign of a load that has more resistance than marked', () => {
    const limits = modelOf(oscilloscope(kit)).inputs[2]?.distribution.limits;
    expectWithin(limits?.lower ?? 0, -10 * Math.log10(1.01), 1e-12);
    expectWithin(limits?.upper ?? 0, -10 * Math.log10(0.99), 1e-12);
  });

  it('lets an influence act the other way round', () => {
    const gain = { id: 'gain', statement: within(3), unit: 'dB', sensitivity: -1 } as const;
    const model = modelOf(oscilloscope({ ...kit, influences: [gain] }));
    expect(model.kind === 'sum' && model.sensitivities).toEqual([-1, 1]);
  });
});

describe('an oscilloscope out of range', () => {
  it('without termination gives no number, whatever it shows', () => {
    const open = { ...kit, peakToPeak: voltsPeakToPeak(17.89), terminated: false };
    expect(reasonOf(oscilloscope(open))).toEqual({ code: 'noTermination' });
  });

  it('shows four times the power of a terminated line, were one to believe it', () => {
    const terminated = constantOf({ ...kit, peakToPeak: voltsPeakToPeak(8.94), resistance: ohms(50) });
    const open = constantOf({ ...kit, peakToPeak: voltsPeakToPeak(17.89), resistance: ohms(50) });
    expectPrinted(10 ** (terminated / 10 - 3), 0.2, 3);
    expectPrinted(open - terminated, 6.02, 1);
  });

  it('at 145 MHz on 100 MHz gives no number: f/B is 1.45, where a single pole is 4.92 dB low', () => {
    const high = { ...kit, frequencyHz: 145e6 };
    expect(reasonOf(oscilloscope(high))).toEqual({ code: 'aboveBandwidth', ratio: 1.45, largest: 0.3 });
    expectPrinted(singlePoleLossDb(1.45), 4.92, 2);
    expectPrinted(10 ** (-singlePoleLossDb(1.45) / 10), 0.32, 2);
  });

  it('holds at 0.3 of the bandwidth itself and not above', () => {
    expect(reasonOf(oscilloscope({ ...kit, frequencyHz: 30e6 }))).toBeUndefined();
    expect(reasonOf(oscilloscope({ ...kit, frequencyHz: 30.001e6 }))?.code).toBe('aboveBandwidth');
    expect(reasonOf(oscilloscope({ ...kit, frequencyHz: 29.9e6 }))).toBeUndefined();
  });

  it('counts oscilloscope and probe together', () => {
    const both = { ...kit, frequencyHz: 25e6, bandwidthsHz: [100e6, 100e6] };
    expect(reasonOf(oscilloscope(both))?.code).toBe('aboveBandwidth');
    expect(reasonOf(oscilloscope({ ...both, bandwidthsHz: [100e6] }))).toBeUndefined();
  });
});

it('readings of nothing and negative frequencies are refused', () => {
  expect(() => oscilloscope({ ...kit, peakToPeak: voltsPeakToPeak(0) })).toThrow(
    new RangeError('oscilloscope: peakToPeak must be > 0, got 0'),
  );
  expect(() => oscilloscope({ ...kit, frequencyHz: -1 })).toThrow(
    new RangeError('oscilloscope: frequencyHz must be >= 0, got -1'),
  );
});
