import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateOf, propagate } from '#compute';
import { gaugeModel, lossModel, massModel, PART_U } from '../../src/sheet/published-models.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the comparison loss', () => {
  it('is never less than none, and none only where nothing is reflected', () => {
    fc.assert(
      fc.property(number(-0.1, 0.1), number(-0.1, 0.1), (one, two) => {
        expect(lossModel(0).f([one, two])).toBeCloseTo(one ** 2 + two ** 2, 15);
        expect(lossModel(0).f([one, two])).toBeGreaterThanOrEqual(0);
      }),
    );
    expect(lossModel(0).f([0, 0])).toBe(0);
  });

  it('has two parts of one uncertainty, and their correlation only where there is one', () => {
    const { inputs, correlations } = lossModel(0.01, 0.9);
    expect(inputs.map(({ distribution }) => distribution.mean)).toEqual([0.01, 0]);
    for (const { distribution } of inputs) expect(distribution.standardDeviation).toBe(PART_U);
    expect(correlations).toEqual([{ a: 'X1', b: 'X2', r: 0.9 }]);
    expect(lossModel(0.01).correlations).toEqual([]);
  });
});

describe('the weight in air', () => {
  it('is what the balance says at the reference air, whatever the metals', () => {
    fc.assert(
      fc.property(number(7000, 9000), number(7950, 8050), (weight, standard) => {
        expect(massModel().f([100_000, 1.234, 1.2, weight, standard])).toBeCloseTo(1.234, 9);
      }),
    );
  });

  it('seems heavier in dense air where it is of lighter metal than the reference', () => {
    const at = (weight: number): number => massModel().f([100_000, 1.234, 1.3, weight, 8000]);
    expect(at(7000)).toBeGreaterThan(1.234);
    expect(at(9000)).toBeLessThan(1.234);
    // By hand: 100 g times 0.1 kg/m3 times the difference of the inverse densities.
    expect(at(7000) - 1.234).toBeCloseTo(100_001.234 * 0.1 * (1 / 7000 - 1 / 8000), 9);
  });
});

describe('the gauge block', () => {
  it('is 838 nm longer than 50 mm, and a warmer room tells blocks of unlike steel apart', () => {
    expect(estimateOf(gaugeModel())).toBeCloseTo(838, 9);
    const warm = gaugeModel().f([50_000_623, 215, 0, 0, 11.5e-6, 1, 0, 1e-6, 0]);
    expect(warm).toBeCloseTo(838 - 50_000_623 * 1e-6, 6);
  });

  it('has the printed effective degrees of freedom, 16 once cut off (GUM H.1.6)', () => {
    const { degreesOfFreedom } = propagate({ model: gaugeModel(), coverageProbability: 0.99 });
    expect(Math.floor(degreesOfFreedom)).toBe(16);
  });

  it('counts a t by its scale in propagation, and lets it spread more in trials', () => {
    const [standard] = gaugeModel().inputs;
    expect(standard?.standardUncertainty).toBe(25);
    expect(standard?.distribution.standardDeviation).toBeCloseTo(25 * Math.sqrt(18 / 16), 9);
  });
});
