import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateBand, type Input } from '#compute';
import {
  COMPARISONS,
  DIFFERENCE_NM,
  differenceInputs,
  gaugeInputs,
  gaugeModel,
  STANDARD_NM,
  temperatureInputs,
} from '../../src/sheet/end-gauge.ts';

const uOf = ({ standardUncertainty, distribution }: Input): number =>
  standardUncertainty ?? distribution.standardDeviation ?? Number.NaN;
const input = (id: string): Input => {
  const found = gaugeInputs().find((one) => one.id === id);
  if (found === undefined) throw new Error(`wish an input ${id}`);
  return found;
};

describe('the inputs of the end gauge (GUM H.1.3)', () => {
  it.each([
    ['standard', 25, 0.05, 18],
    ['repeatability', 5.8, 0.05, 24],
    ['comparator, random', 3.9, 0.05, 5],
    ['comparator, systematic', 6.7, 0.05, 8],
    ['expansion difference', 0.58e-6, 0.005e-6, 50],
    ['temperature difference', 0.029, 0.0005, 2],
    ['expansion', 1.2e-6, 0.05e-6, Number.POSITIVE_INFINITY],
    ['mean', 0.2, 0.0005, Number.POSITIVE_INFINITY],
    ['cycle', 0.35, 0.005, Number.POSITIVE_INFINITY],
  ])('have the printed u and degrees of freedom: %s', (id, u, within, degrees) => {
    expect(Math.abs(uOf(input(id)) - u)).toBeLessThanOrEqual(within);
    const { degreesOfFreedom } = input(id);
    if (degrees === Number.POSITIVE_INFINITY) expect(degreesOfFreedom).toBe(degrees);
    else expect(degreesOfFreedom).toBeCloseTo(degrees, 6);
  });

  it('stand in the order of their table, the comparison and the temperature among them', () => {
    const ids = (inputs: readonly Input[]): readonly string[] => inputs.map(({ id }) => id);
    expect(ids(gaugeInputs()).slice(1, 4)).toEqual(ids(differenceInputs()));
    expect(ids(gaugeInputs()).slice(-2)).toEqual(ids(temperatureInputs()));
  });

  it('know the temperature of the bench to 0.41 K as printed, mean and cycle together', () => {
    expect(Math.hypot(...temperatureInputs().map(uOf))).toBeCloseTo(0.41, 2);
  });

  it('know a mean the better the more comparisons it is made of, and nothing else', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), (comparisons) => {
        const [repeated, ...others] = differenceInputs(comparisons);
        const [, ...printed] = differenceInputs();
        expect(repeated && uOf(repeated)).toBeCloseTo(13 / Math.sqrt(comparisons), 9);
        expect(others.map(uOf)).toEqual(printed.map(uOf));
      }),
    );
  });
});

describe('the model of the end gauge', () => {
  it('has a sensitivity for every input, those of the bench’s own state 0 (GUM H.1.4)', () => {
    const { inputs, sensitivities, constant } = gaugeModel();
    expect(sensitivities).toHaveLength(inputs.length);
    expect(constant).toBe(STANDARD_NM + DIFFERENCE_NM);
    expect(sensitivities.slice(0, 4)).toEqual([1, 1, 1, 1]);
    expect(sensitivities.slice(-3)).toEqual([0, 0, 0]);
  });

  it('is 50.000 838 mm long, known to 32 nm, whatever the order in which it is added up', () => {
    const model = gaugeModel(COMPARISONS);
    const last = evaluateBand({ model, coverageFactor: 1 });
    expect(last.estimate).toBe(50_000_838);
    expect(last.propagation.standardUncertainty).toBeCloseTo(31.66, 2);
    const turned = {
      ...model,
      inputs: model.inputs.toReversed(),
      sensitivities: model.sensitivities.toReversed(),
    };
    const other = evaluateBand({ model: turned, coverageFactor: 1 });
    expect(other.propagation.standardUncertainty).toBeCloseTo(31.66, 2);
    expect(other.propagation.degreesOfFreedom).toBeCloseTo(last.propagation.degreesOfFreedom, 6);
  });
});
