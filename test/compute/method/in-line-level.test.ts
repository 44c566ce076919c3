import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelToPower, powerToLevel } from '../../../src/compute/level.ts';
import { type InLineReading, inLinePower, type ScaleReading } from '../../../src/compute/method/in-line.ts';
import { inLineLevel } from '../../../src/compute/method/in-line-level.ts';
import { levelDbm, powerW } from '../../../src/compute/quantity.ts';
import { expectNear, expectPrinted, expectWithin } from '../near.ts';
import { idsOf, modelOf, reasonOf, resultOf, wholeOf, within } from './outcome.ts';

const scale = (power: number, fullScale: number, percentOfFullScale: number): ScaleReading => ({
  power: powerW(power),
  fullScale: powerW(fullScale),
  percentOfFullScale,
});
const meter = (more: Partial<InLineReading>): InLineReading => ({
  forward: scale(10, 20, 5),
  reflected: scale(1, 20, 2),
  delivery: 'net',
  influences: [],
  ...more,
});
const watts = (level: number): number => levelToPower(levelDbm(level));
const level = (power: number): number => powerToLevel(powerW(power));

/** Readings in range: up to 20 W forward, less than half of it back, scales good enough for both together. */
const inRange: fc.Arbitrary<InLineReading> = fc
  .record({
    forward: fc.double({ min: 5, max: 20, noNaN: true }),
    back: fc.double({ min: 0, max: 0.5, noNaN: true }),
    ahead: fc.double({ min: 0, max: 3, noNaN: true }),
    behind: fc.double({ min: 0, max: 1, noNaN: true }),
    delivery: fc.constantFrom('net' as const, 'incident' as const),
  })
  .map(({ forward, back, ahead, behind, delivery }) =>
    meter({ forward: scale(forward, 20, ahead), reflected: scale(back * forward, 20, behind), delivery }),
  );

describe('an in-line meter as a level', () => {
  it('starts from the level of its power in watts and has the same worst case, end by end', () => {
    fc.assert(
      fc.property(inRange, (reading) => {
        const inDbm = resultOf(inLineLevel(reading));
        const inWatts = resultOf(inLinePower(reading));
        const model = modelOf(inLineLevel(reading));
        expectNear(model.kind === 'sum' ? watts(model.constant) : Number.NaN, inWatts.estimate, 1e-9);
        expectNear(watts(inDbm.worstCase.interval.lower), inWatts.worstCase.interval.lower, 1e-9);
        expectNear(watts(inDbm.worstCase.interval.upper), inWatts.worstCase.interval.upper, 1e-9);
      }),
    );
  });

  it.each([
    ['one scale', meter({ delivery: 'incident' })],
    ['two scales', meter({})],
    ['two scales alike', meter({ reflected: scale(1, 20, 5) })],
    [
      'two scales at the edge of what is allowed',
      meter({ forward: scale(4, 20, 4), reflected: scale(1, 4, 5) }),
    ],
  ])(
    'with %s has the whole distribution of its power in watts, each end as a level, to 1e-4 dB',
    (_what, reading) => {
      const inDbm = wholeOf(inLineLevel(reading)).symmetric;
      const inWatts = wholeOf(inLinePower(reading)).symmetric;
      expectWithin(inDbm.lower, level(inWatts.lower), 1e-4);
      expectWithin(inDbm.upper, level(inWatts.upper), 1e-4);
    },
  );

  const three = resultOf(inLineLevel(meter({ forward: scale(3, 20, 5), delivery: 'incident' })));

  it('that reads 3 W on a 20 W scale of 5 % means 2 to 4 W: -1.76 to +1.25 dB (invented, computed by hand)', () => {
    expectPrinted(three.worstCase.interval.lower - level(3), -1.76, 2); // 10 lg(2/3)
    expectPrinted(three.worstCase.interval.upper - level(3), 1.25, 2); // 10 lg(4/3)
    expectNear(watts(three.worstCase.interval.lower), 2, 1e-9);
    expectNear(watts(three.worstCase.interval.upper), 4, 1e-9);
  });

  it('has the mean of its levels for an estimate, which lies below the level of the mean by 0.08 dB at the most', () => {
    // mean of 10 lg(1 + e) over e from -1/3 to 1/3: (10/ln 10) (((4/3) ln(4/3) - (2/3) ln(2/3)) / (2/3) - 1)
    const mean = (10 / Math.LN10) * (((4 / 3) * Math.log(4 / 3) - (2 / 3) * Math.log(2 / 3)) / (2 / 3) - 1);
    expectWithin(three.estimate - level(3), mean, 1e-9);
    expectPrinted(mean, -0.08, 2);
  });

  it('of 5.0 W forward and 0.20 W reflected is -0.18 dB from the forward power (invented, computed by hand)', () => {
    const whip = meter({ forward: scale(5, 5, 1), reflected: scale(0.2, 5, 0) });
    expectPrinted(resultOf(inLineLevel(whip)).estimate - level(5), -0.18, 2); // 10 lg(4.8/5)
  });

  it('adds relative influences in decibels, after what the scales may be wrong by', () => {
    const influences = [
      { id: 'response', statement: within(0.5), unit: 'dB' },
      { id: 'twin', statement: within(0.2), unit: 'dB', sensitivity: -1 },
    ] as const;
    const outcome = inLineLevel(meter({ influences }));
    const model = modelOf(outcome);
    expect(idsOf(outcome)).toEqual(['scale', 'response', 'twin']);
    expect(model.kind === 'sum' && model.sensitivities).toEqual([1, 1, -1]);
    const alone = resultOf(inLineLevel(meter({})));
    const { upper } = resultOf(outcome).worstCase.interval;
    expectWithin(upper, alone.worstCase.interval.upper + 0.7, 1e-9);
  });

  it('leaves the reflected reading aside for the wave towards the load', () => {
    const incident = { delivery: 'incident' } as const;
    const much = resultOf(inLineLevel(meter({ ...incident, reflected: scale(9, 10, 50) })));
    expect(much.worstCase).toEqual(resultOf(inLineLevel(meter(incident))).worstCase);
  });

  it('without limits of its scales is exact', () => {
    const exact = meter({ forward: scale(10, 20, 0), reflected: scale(1, 20, 0) });
    expect(resultOf(inLineLevel(exact)).propagation.expanded).toBe(0);
  });
});

describe('an in-line meter out of range', () => {
  it('is so as a level wherever it is in watts', () => {
    expect(reasonOf(inLineLevel(meter({ forward: scale(2.9, 20, 5) })))).toEqual(
      reasonOf(inLinePower(meter({ forward: scale(2.9, 20, 5) }))),
    );
  });

  it('is so too where both errors together exceed a third of the net power, and not on the edge itself', () => {
    const at = (reflected: number) =>
      reasonOf(inLineLevel(meter({ forward: scale(10, 20, 10), reflected: scale(reflected, 10, 6) })));
    // 2 W + 0.6 W is a third of 7.8 W: 2.2 W reflected is the edge
    expect(at(2.2)).toBeUndefined();
    expect(at(2.21)).toMatchObject({ code: 'fullScaleError', error: 2.6, reading: expect.closeTo(7.79, 9) });
  });

  it('forbids what the power in watts forbids', () => {
    expect(() => inLineLevel(meter({ forward: scale(0, 20, 5) }))).toThrow(
      new RangeError('inLinePower: forward.power must be > 0, got 0'),
    );
    expect(() => inLineLevel(meter({ reflected: scale(11, 20, 0) }))).toThrow(/netPower/);
  });
});
