import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type InLineReading,
  inLinePower,
  inLineReflection,
  type ScaleReading,
} from '../../../src/compute/method/in-line.ts';
import { gainDb, powerW } from '../../../src/compute/quantity.ts';
import { swrOfReflection } from '../../../src/compute/reflection.ts';
import { expectNear, expectPrinted, expectWithin } from '../near.ts';
import { idsOf, modelOf, reasonOf, resultOf, within } from './outcome.ts';

const scale = (power: number, fullScale: number, percentOfFullScale: number): ScaleReading => ({
  power: powerW(power),
  fullScale: powerW(fullScale),
  percentOfFullScale,
});
/** An invented in-line meter with a 20 W scale, good to 5 % of it. */
const meter = (forward: number, more: Partial<InLineReading> = {}): InLineReading => ({
  forward: scale(forward, 20, 5),
  reflected: scale(0, 20, 0),
  delivery: 'incident',
  influences: [],
  ...more,
});

describe('an in-line meter', () => {
  it('that reads 3 W on a 20 W scale of 5 % means 2 to 4 W: -1.76 to +1.25 dB', () => {
    const { estimate, worstCase } = resultOf(inLinePower(meter(3)));
    expect(estimate).toBe(3);
    expectNear(worstCase.interval.lower, 2);
    expectNear(worstCase.interval.upper, 4);
    expectPrinted(10 * Math.log10(worstCase.interval.lower / 3), -1.76, 2);
    expectPrinted(10 * Math.log10(worstCase.interval.upper / 3), 1.25, 2);
  });

  it('leaves the reflected power aside for the wave towards the load', () => {
    const incident = inLinePower(meter(10, { reflected: scale(2, 2, 5) }));
    expect(incident).toMatchObject({ inRange: true, space: 'W', model: { kind: 'sum', constant: 10 } });
    expect(idsOf(incident)).toEqual(['forward']);
  });

  it('takes the reflected power off for net power, and its limits count as well', () => {
    const net = meter(10, { delivery: 'net', reflected: scale(2, 2, 5) });
    const { estimate, worstCase, propagation } = resultOf(inLinePower(net));
    expectNear(estimate, 8);
    expectNear(worstCase.interval.upper, 9.1);
    expectNear(worstCase.interval.lower, 6.9);
    expectNear(propagation.standardUncertainty, Math.sqrt((1 + 0.01) / 3), 1e-12);
    expect(idsOf(inLinePower(net))).toEqual(['forward', 'reflected']);
    const model = modelOf(inLinePower(net));
    expect(model.kind === 'sum' && model.sensitivities).toEqual([1, -1]);
  });

  it('of 5.0 W forward and 0.20 W reflected gives 4.8 W', () => {
    const whip = meter(5, { forward: scale(5, 5, 1), reflected: scale(0.2, 5, 0), delivery: 'net' });
    expectNear(resultOf(inLinePower(whip)).estimate, 4.8);
  });

  it('multiplies by relative influences, as a function in watts', () => {
    const influences = [
      { id: 'response', statement: within(0.5), unit: 'dB' },
      { id: 'twin', statement: within(0.2), unit: 'dB', sensitivity: -1 },
    ] as const;
    const outcome = inLinePower(meter(10, { influences, delivery: 'net', reflected: scale(1, 20, 1) }));
    const model = modelOf(outcome);
    if (model.kind !== 'function') throw new Error('a sum where a product was wanted');
    expect(idsOf(outcome)).toEqual(['forward', 'reflected', 'response', 'twin']);
    expectNear(model.f([0, 0, 0, 0]), 9);
    expectNear(model.f([1, 0.5, 0, 0]), 9.5);
    expectNear(model.f([0, 0, 10, 0]), 90);
    expectNear(model.f([0, 0, 0, 10]), 0.9);
    expect(outcome).toMatchObject({ space: 'W' });
  });

  it('holds where the error of full scale is a third of the reading, and not beyond', () => {
    expect(reasonOf(inLinePower(meter(3)))).toBeUndefined();
    expect(reasonOf(inLinePower(meter(2.99)))).toEqual({ code: 'fullScaleError', error: 1, reading: 2.99 });
    expect(reasonOf(inLinePower(meter(3.01)))).toBeUndefined();
  });

  it('holds on that edge on any scale, whatever rounding does', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 1, max: 30 }),
        (fullScale, percent) => {
          const edge = (3 * percent * fullScale) / 100;
          const at = (watts: number) =>
            reasonOf(inLinePower(meter(watts, { forward: scale(watts, fullScale, percent) })))?.code;
          expect(at(edge)).toBeUndefined();
          expect(at(edge * (1 - 1e-6))).toBe('fullScaleError');
        },
      ),
    );
  });
});

describe('the reflection at an in-line meter', () => {
  it('at 25 dB directivity is SWR 1.34 to 1.69 where 5.0 and 0.20 W are read', () => {
    const range = inLineReflection({
      forward: scale(5, 5, 0),
      reflected: scale(0.2, 5, 0),
      directivityDb: gainDb(25),
    });
    if (!range.inRange) throw new Error(range.reason.code);
    expectPrinted(swrOfReflection(range.lower), 1.34, 2);
    expectPrinted(swrOfReflection(range.upper), 1.69, 2);
  });

  it('widens with the limits of both readings', () => {
    const range = inLineReflection({
      forward: scale(10, 10, 10),
      reflected: scale(1, 1, 10),
      directivityDb: gainDb(3000),
    });
    if (!range.inRange) throw new Error(range.reason.code);
    expectWithin(range.lower, Math.sqrt(0.9 / 11), 1e-12);
    expectWithin(range.upper, Math.sqrt(1.1 / 9), 1e-12);
  });

  it('gives none where either reading is too low on its scale, the forward one told first', () => {
    const at = (forward: ScaleReading, reflected: ScaleReading) =>
      reasonOf(inLineReflection({ forward, reflected, directivityDb: gainDb(25) }));
    expect(at(scale(10, 20, 5), scale(0.2, 20, 5))).toEqual({
      code: 'fullScaleError',
      error: 1,
      reading: 0.2,
    });
    expect(at(scale(1, 20, 5), scale(0.2, 20, 5))).toEqual({ code: 'fullScaleError', error: 1, reading: 1 });
    expect(at(scale(10, 20, 5), scale(3, 20, 5))).toBeUndefined();
  });
});

it('forbidden readings are refused', () => {
  expect(() => inLinePower(meter(0))).toThrow(
    new RangeError('inLinePower: forward.power must be > 0, got 0'),
  );
  expect(() => inLinePower(meter(3, { forward: scale(3, 20, -5) }))).toThrow(
    new RangeError('inLine: percentOfFullScale must be >= 0, got -5'),
  );
  expect(() => inLinePower(meter(3, { delivery: 'net', reflected: scale(4, 20, 0) }))).toThrow(
    new RangeError('netPower: reflected must not be above forward, got "4 above 3"'),
  );
  const none = { forward: scale(0, 5, 0), reflected: scale(0, 5, 0), directivityDb: gainDb(25) };
  expect(() => inLineReflection(none)).toThrow(
    new RangeError('inLineReflection: forward.power must be > 0, got 0'),
  );
  const all = { forward: scale(5, 5, 0), reflected: scale(5, 5, 0), directivityDb: gainDb(25) };
  expect(() => inLineReflection(all)).toThrow(
    new RangeError('inLineReflection: reflection must be from 0 to below 1, got 1'),
  );
});
