import { describe, expect, it } from 'vitest';
import { componentOf } from '../../src/compute/component.ts';
import { amplitudeRatioToDb } from '../../src/compute/decibel.ts';
import { meanOfPeakEnvelope } from '../../src/compute/envelope.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import { rootSumSquareOfLimits } from '../../src/compute/limits-rss.ts';
import { mismatchLimits } from '../../src/compute/mismatch-limits.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import { gainDb, ohms, powerW, voltsPeakToPeak } from '../../src/compute/quantity.ts';
import { reflectionOfSwr } from '../../src/compute/reflection.ts';
import { powerOfPeakToPeak } from '../../src/compute/sine.ts';
import type { Statement } from '../../src/compute/statement.ts';
import { harmonicsLimitsDb } from '../../src/compute/validity.ts';
import { judge } from '../../src/compute/verdict.ts';
import { expectPrinted, expectWithin } from './near.ts';

/** Whole measurements with invented data, worked by hand from the formulas of the GUM before they were computed here. */
const within = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });
const uShaped = (halfWidth: number): Statement => ({ form: 'limits', shape: 'arcsine', halfWidth });
const inDb = (id: string, statement: Statement): Input => componentOf({ id, statement, unit: 'dB' });
const sum = (constant: number, inputs: readonly Input[]): SumModel => ({
  kind: 'sum',
  constant,
  inputs,
  sensitivities: inputs.map(() => 1),
});
const expandedOf = (model: SumModel) => evaluate({ model, coverageFactor: 2 }).propagation.expanded;

describe('a diode probe on a dirty signal', () => {
  it('may be 0.9 dB wrong with a harmonic at -20 dBc, 0.09 dB after a filter, while the truth rises by 0.04 dB', () => {
    const peak = (level: number) => harmonicsLimitsDb({ harmonicsDbc: [level], responds: 'peak' });
    expectPrinted(peak(-20).lower, -0.9, 1);
    expectPrinted(peak(-40).lower, -0.09, 2);
    expectPrinted(peak(-40).upper, 0.09, 2);
    expectPrinted(harmonicsLimitsDb({ harmonicsDbc: [-20], responds: 'mean' }).upper, 0.04, 2);
  });
});

describe('a 10 dB pad measured at DC', () => {
  const attenuation = amplitudeRatioToDb(3 / 0.948);
  const meter = (id: string) => componentOf({ id, statement: within(0.5), unit: 'percentOfVolts' });

  it('has 10.006 dB, to 0.07 dB where both readings are independent', () => {
    expectPrinted(attenuation, 10.006, 3);
    expectPrinted(expandedOf(sum(attenuation, [meter('V1'), meter('V2')])), 0.07, 2);
  });

  it('loses the error of the meter altogether where one meter on one range read both', () => {
    const same = (id: string) =>
      componentOf({ id, statement: within(0.5), unit: 'percentOfVolts', cause: 'meter' });
    const ratio: SumModel = { ...sum(attenuation, [same('V1'), same('V2')]), sensitivities: [1, -1] };
    expectWithin(expandedOf(ratio), 0, 1e-12);
  });

  it('beats three pads by their data sheet: worst 1.5, root of squares 0.87, U = 1.0 dB', () => {
    const three = sum(
      30,
      ['a', 'b', 'c'].map((id) => inDb(id, within(0.5))),
    );
    const { worstCase, estimate } = evaluate({ model: three, coverageFactor: 2 });
    expectWithin(worstCase.interval.upper - estimate, 1.5, 1e-12);
    expectPrinted(rootSumSquareOfLimits({ model: three }).halfWidth, 0.87, 2);
    expectPrinted(expandedOf(three), 1, 1);
  });
});

describe('a thermal meter on keyed and on two-tone signals', () => {
  it('shows 0.88 W of 2.0 W PEP keyed with PARIS, -3.57 dB', () => {
    const mean = meanOfPeakEnvelope({ peakEnvelope: powerW(2), envelope: 'parisWord' });
    expectPrinted(mean, 0.88, 2);
    expectPrinted(10 * Math.log10(mean / 2), -3.57, 2);
  });

  it('shows 2.0 W of two tones of 40 V peak-to-peak, which are 4.0 W PEP', () => {
    const peakEnvelope = powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(40), resistance: ohms(50) });
    expectWithin(peakEnvelope, 4, 1e-12);
    expectWithin(meanOfPeakEnvelope({ peakEnvelope, envelope: 'twoEqualTones' }), 2, 1e-12);
  });
});

describe('a borrowed calibration', () => {
  const own = [
    inDb('resolution', within(0.05)),
    inDb('temperature', within(0.1)),
    inDb('mismatch', uShaped(0.1)),
  ];
  const transfer = [
    inDb('lender', { form: 'expanded', expanded: 0.2, coverageFactor: 2 }),
    inDb('scatter', { form: 'readings', standardDeviation: 0.06, count: 5 }),
    inDb('drift', within(0.1)),
    ...own,
  ];

  it('gives a correction of -0.75 dB with u = 0.152 and U = 0.30 dB', () => {
    const { propagation, estimate } = evaluate({ model: sum(7.35 - 8.1, transfer), coverageFactor: 2 });
    expectWithin(estimate, -0.75, 1e-12);
    expectPrinted(propagation.standardUncertainty, 0.152, 3);
    expectPrinted(propagation.expanded, 0.3, 1);
  });

  it('makes 7.15 dBm of a later reading of 7.90 dBm, to 0.38 dB', () => {
    const again = own.map((input) => ({ ...input, id: `later ${input.id}` }));
    const reading = inDb('later scatter', {
      form: 'standard',
      standardUncertainty: 0.06,
      degreesOfFreedom: 4,
    });
    const later = sum(7.9 - 0.75, [...transfer, ...again, reading]);
    expectWithin(evaluate({ model: later }).estimate, 7.15, 1e-12);
    expectPrinted(expandedOf(later), 0.38, 2);
  });
});

describe('a specification of 24 dBm within 1 dB, read to 0.5 dB at k = 2', () => {
  const judged = (level: number) =>
    judge({
      result: evaluate({
        model: sum(level, [inDb('all', { form: 'expanded', expanded: 0.5, coverageFactor: 2 })]),
        coverageFactor: 2,
      }),
      specification: { lower: 23, upper: 25 },
      rule: { kind: 'guardBand', multiplier: 1 },
    });

  it.each([
    [24.1, 'inside', 1],
    [22.85, 'cant-tell', 0.27],
    [22.2, 'outside', 0],
    [23.1, 'cant-tell', 0.66],
  ])('%f dBm is %s, with a probability of %f of conforming', (level, verdict, probability) => {
    expect(judged(level).verdict).toBe(verdict);
    expectPrinted(judged(level).probabilityOfConformity ?? Number.NaN, probability, 2);
  });
});

describe('a source of SWR 2.0 into a meter of 1.25', () => {
  const source = reflectionOfSwr(2);
  const load = reflectionOfSwr(1.25);
  const uncertainty = (...products: number[]) =>
    evaluate({
      model: sum(
        0,
        products.map((product, i) => inDb(`${i}`, uShaped((20 / Math.LN10) * product))),
      ),
    }).propagation.standardUncertainty;

  it('is uncertain by 0.23 dB, by 0.16 dB behind a 6 dB pad of SWR 1.15, though the worst case is no better', () => {
    const pad = reflectionOfSwr(1.15);
    expectPrinted(uncertainty(source * load), 0.23, 2);
    expectPrinted(uncertainty(source * pad, load * pad, source * load * 10 ** -0.6), 0.16, 2);
    const between = { input: pad, output: pad, gain: gainDb(-6) };
    expect(mismatchLimits({ source, load, between }).upper).toBeGreaterThan(
      mismatchLimits({ source, load }).upper,
    );
  });
});
