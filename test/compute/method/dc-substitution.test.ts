import { describe, expect, it } from 'vitest';
import { type DcSubstitutionReading, dcSubstitution } from '../../../src/compute/method/dc-substitution.ts';
import { expectNear, expectPrinted, expectWithin } from '../near.ts';
import { modelOf, resultOf, within } from './outcome.ts';

/** An invented insulated load heated by 2 W: rises of 14.2 K with RF and 14.0 K with DC, each to 0.1 K. */
const load: DcSubstitutionReading = {
  volts: 10,
  amperes: 0.1995,
  riseRfK: 14.2,
  riseDcK: 14,
  influences: [
    { id: 'volts', statement: within(0.5), unit: 'percentOfDcVolts' },
    { id: 'amperes', statement: within(1), unit: 'percentOfDcAmperes' },
    { id: 'rf', statement: within(0.1), unit: 'kelvinRf' },
    { id: 'dc', statement: within(0.1), unit: 'kelvinDc' },
    { id: 'leak', statement: within(1), unit: 'percentOfPower' },
  ],
};
const limitsOf = (influence: DcSubstitutionReading['influences'][number]) => {
  const limits = modelOf(dcSubstitution({ ...load, influences: [influence] })).inputs[0]?.distribution.limits;
  if (!limits) throw new Error('no input');
  return limits;
};
const up = (percent: number) => 10 * Math.log10(1 + percent / 100);

describe('DC substitution', () => {
  it('finds 2.02 W, 33.06 dBm, with U = 0.09 dB at k = 2', () => {
    const { estimate, propagation } = resultOf(dcSubstitution(load));
    expectPrinted(estimate, 33.06, 2);
    expectPrinted(10 ** (estimate / 10 - 3), 2.02, 2);
    expectPrinted(propagation.expanded, 0.09, 2);
    expectWithin(propagation.standardUncertainty, 4.3429448 * 0.0104, 0.0002);
  });

  it('is the DC power where both rises are equal', () => {
    const model = modelOf(dcSubstitution({ ...load, riseRfK: 14 }));
    if (model.kind !== 'sum') throw new Error('a sum was wanted');
    expectNear(10 ** (model.constant / 10 - 3), 1.995);
    const warmer = modelOf(dcSubstitution({ ...load, riseRfK: 28 }));
    if (warmer.kind !== 'sum') throw new Error('a sum was wanted');
    expectNear(warmer.constant - model.constant, 3.010299956639812, 1e-9);
  });

  it('counts DC volts and amperes once each, not as squares', () => {
    expectWithin(limitsOf({ id: 'v', statement: within(1), unit: 'percentOfDcVolts' }).upper, up(1), 1e-12);
    expectWithin(limitsOf({ id: 'i', statement: within(1), unit: 'percentOfDcAmperes' }).upper, up(1), 1e-12);
    expectWithin(limitsOf({ id: 'p', statement: within(1), unit: 'percentOfPower' }).upper, up(1), 1e-12);
    expect(limitsOf({ id: 'd', statement: within(1), unit: 'dB' }).upper).toBe(1);
  });

  it('takes volts, amperes and kelvins as shares of their own readings', () => {
    expectWithin(limitsOf({ id: 'v', statement: within(0.05), unit: 'dcVolts' }).upper, up(0.5), 1e-12);
    expectWithin(limitsOf({ id: 'i', statement: within(0.001995), unit: 'dcAmperes' }).upper, up(1), 1e-12);
    expectWithin(limitsOf({ id: 'k', statement: within(0.142), unit: 'kelvinRf' }).upper, up(1), 1e-12);
  });

  it('turns the sign of the rise with DC, which stands below the line', () => {
    const { lower, upper } = limitsOf({ id: 'k', statement: within(0.14), unit: 'kelvinDc' });
    expectWithin(upper, -up(-1), 1e-12);
    expectWithin(lower, -up(1), 1e-12);
  });
});

it.each(['volts', 'amperes', 'riseRfK', 'riseDcK'] as const)('%s of nothing are refused', (name) => {
  expect(() => dcSubstitution({ ...load, [name]: 0 })).toThrow(
    new RangeError(`dcSubstitution: ${name} must be > 0, got 0`),
  );
});
