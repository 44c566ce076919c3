import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/compute/evaluate.ts';
import { targetForSpecification, targetForVerdict } from '../../src/compute/target-uncertainty.ts';
import { judge } from '../../src/compute/verdict.ts';
import { quantity } from './combine/published-models.ts';

describe('the uncertainty that is asked for', () => {
  const specification = { lower: 23, upper: 25 };

  test('for one estimate it is the distance to the nearer limit, over the multiplier', () => {
    expect(targetForVerdict({ specification, estimate: 24.25 })).toEqual({
      expanded: 0.75,
      verdict: 'inside',
    });
    expect(targetForVerdict({ specification, estimate: 23.5, multiplier: 2 })).toEqual({
      expanded: 0.25,
      verdict: 'inside',
    });
    expect(targetForVerdict({ specification, estimate: 22.5 })).toEqual({
      expanded: 0.5,
      verdict: 'outside',
    });
    expect(targetForVerdict({ specification, estimate: 26 })).toEqual({ expanded: 1, verdict: 'outside' });
    expect(targetForVerdict({ specification, estimate: 25 })).toEqual({ expanded: 0, verdict: 'inside' });
    expect(targetForVerdict({ specification: { upper: 25 }, estimate: 20 })).toEqual({
      expanded: 5,
      verdict: 'inside',
    });
  });

  test('a measurement that good decides, one a little worse does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 21, max: 27, noNaN: true }), (estimate) => {
        const { expanded, verdict } = targetForVerdict({ specification, estimate });
        fc.pre(expanded > 1e-3);
        const at = (u: number) =>
          judge({
            result: evaluate({
              model: {
                kind: 'sum',
                constant: estimate,
                inputs: [quantity('all', 0, u / 2)],
                sensitivities: [1],
              },
              coverageFactor: 2,
            }),
            specification,
            rule: { kind: 'guardBand', multiplier: 1 },
            decidingInterval: 'propagation',
          }).verdict;
        expect(at(expanded * 0.999)).toBe(verdict);
        expect(at(expanded * 1.001)).toBe('cant-tell');
      }),
      { numRuns: 40 },
    );
  });

  test('for a specification it is its width over twice the capability index (JCGM 106, 7.6.3)', () => {
    expect(targetForSpecification({ specification, capability: 1 })).toBe(1);
    expect(targetForSpecification({ specification })).toBeCloseTo(1 / 3, 14);
    expect(() => targetForSpecification({ specification: { upper: 1 } })).toThrow(
      'targetForSpecification: specification must have two limits',
    );
    expect(() => targetForSpecification({ specification, capability: 0 })).toThrow('capability must be > 0');
  });

  test('what cannot be is refused', () => {
    expect(() => targetForVerdict({ specification, estimate: Number.NaN })).toThrow(
      'targetForVerdict: estimate',
    );
    expect(() => targetForVerdict({ specification, estimate: 24, multiplier: 0 })).toThrow(
      'multiplier must be > 0',
    );
    expect(() => targetForVerdict({ specification: {}, estimate: 24 })).toThrow(
      'specification must have a limit',
    );
  });
});

test('what cannot be asked for is refused by name', () => {
  const specification = { lower: 23, upper: 25 };
  expect(() => targetForVerdict({ specification, estimate: Number.NaN })).toThrow(
    'targetForVerdict: estimate must be a finite number, got NaN',
  );
  expect(() => targetForVerdict({ specification, estimate: 24, multiplier: 0 })).toThrow(
    'targetForVerdict: multiplier must be > 0, got 0',
  );
  expect(() => targetForVerdict({ specification: {}, estimate: 24 })).toThrow(
    'targetForVerdict: specification must have a limit',
  );
  expect(() => targetForSpecification({ specification: {} })).toThrow(
    'targetForSpecification: specification must have a limit',
  );
  expect(() => targetForSpecification({ specification, capability: 0 })).toThrow(
    'targetForSpecification: capability must be > 0, got 0',
  );
  expect(() => targetForSpecification({ specification: { upper: 25 } })).toThrow(
    /^targetForSpecification: specification must have two limits, got \[.*25\]$/,
  );
  expect(targetForSpecification({ specification: { lower: -1, upper: 5 } })).toBe(1);
});
