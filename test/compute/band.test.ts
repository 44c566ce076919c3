import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateBand, propagatePrefixes } from '../../src/compute/band.ts';
import { evaluatePrefixes } from '../../src/compute/evaluate-prefixes.ts';
import { normal, rectangular, type SumModel, student } from '../../src/compute/index.ts';

const width = fc.double({ min: 0.01, max: 3, noNaN: true });
const input = fc
  .record({ kind: fc.constantFrom('rectangular', 'normal', 'student'), width })
  .map(({ kind, width: w }) => {
    if (kind === 'normal')
      return {
        distribution: normal({ mean: 0, standardDeviation: w }),
        degreesOfFreedom: Number.POSITIVE_INFINITY,
      };
    if (kind === 'student')
      return {
        distribution: student({ location: 0, scale: w, degreesOfFreedom: 5 }),
        standardUncertainty: w,
        degreesOfFreedom: 5,
      };
    return {
      distribution: rectangular({ lower: -w, upper: w / 2 }),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    };
  });
const model: fc.Arbitrary<SumModel> = fc.array(input, { maxLength: 6 }).map((inputs) => ({
  kind: 'sum',
  constant: 27,
  inputs: inputs.map((each, index) => ({ id: `part${index}`, ...each })),
  sensitivities: inputs.map((_, index) => (index % 2 === 0 ? 1 : -1)),
}));

describe('how a band grows input by input', () => {
  it('is what full evaluation says of it, the whole distribution aside', () => {
    fc.assert(
      fc.property(model, (sum) => {
        const full = evaluatePrefixes({ model: sum, coverageProbability: 0.95 }).map(
          ({ whole: _whole, ...rest }) => rest,
        );
        expect(propagatePrefixes({ model: sum, coverageProbability: 0.95 })).toEqual(full);
        expect(evaluateBand({ model: sum, coverageProbability: 0.95 })).toEqual(full.at(-1));
      }),
      { numRuns: 30 },
    );
  });

  it('begins with the bare constant and has a result more than there are inputs', () => {
    fc.assert(
      fc.property(model, (sum) => {
        const results = propagatePrefixes({ model: sum, coverageFactor: 2 });
        expect(results).toHaveLength(sum.inputs.length + 1);
        expect(results[0]?.estimate).toBe(27);
        expect(results[0]?.propagation.expanded).toBe(0);
        expect(results[0]?.worstCase).toEqual({ interval: { lower: 27, upper: 27 }, unlimited: [] });
      }),
    );
  });

  it('keeps the correlations that lie within the inputs so far', () => {
    const sum: SumModel = {
      kind: 'sum',
      constant: 0,
      inputs: ['a', 'b', 'c'].map((id) => ({
        id,
        distribution: normal({ mean: 0, standardDeviation: 1 }),
        degreesOfFreedom: Number.POSITIVE_INFINITY,
      })),
      sensitivities: [1, 1, 1],
      correlations: [{ a: 'b', b: 'c', r: -1 }],
    };
    const spreads = propagatePrefixes({ model: sum, coverageFactor: 1 }).map(
      ({ propagation }) => propagation.standardUncertainty,
    );
    expect(spreads[1]).toBeCloseTo(1, 12);
    expect(spreads[2]).toBeCloseTo(Math.SQRT2, 12);
    expect(spreads[3]).toBeCloseTo(1, 12);
  });

  it('is refused where evaluation is', () => {
    const twice: SumModel = {
      kind: 'sum',
      constant: 0,
      inputs: ['a', 'a'].map((id) => ({
        id,
        distribution: normal({ mean: 0, standardDeviation: 1 }),
        degreesOfFreedom: 1,
      })),
      sensitivities: [1, 1],
    };
    expect(() => propagatePrefixes({ model: twice, coverageFactor: 2 })).toThrow(/^propagatePrefixes: /);
    expect(() => evaluateBand({ model: twice, coverageFactor: 2 })).toThrow(/^evaluateBand: /);
  });
});
