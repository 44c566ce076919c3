import { describe, expect, it } from 'vitest';
import { propagateMany } from '#compute';
import { known } from '../../src/checks/worked.ts';
import {
  correlationBetween,
  impedanceOf,
  meanOf,
  OUTPUTS,
  SETS,
  uncertaintyOf,
} from '../../src/sheet/simultaneous.ts';

const NAMES = ['V', 'I', 'phi'] as const;
const FUNCTIONS = {
  R: ([v = 0, i = 0, phi = 0]: readonly number[]) => (1000 * v * Math.cos(phi)) / i,
  X: ([v = 0, i = 0, phi = 0]: readonly number[]) => (1000 * v * Math.sin(phi)) / i,
  Z: ([v = 0, i = 0]: readonly number[]) => (1000 * v) / i,
};

/** By numerical sensitivities of the functions themselves. */
const byFunctions = (counted: number) =>
  propagateMany({
    inputs: NAMES.map((name) => known(name, meanOf(name), uncertaintyOf(name), 4)),
    correlations: [
      { a: 'V', b: 'I', r: counted * correlationBetween('V', 'I') },
      { a: 'V', b: 'phi', r: counted * correlationBetween('V', 'phi') },
      { a: 'I', b: 'phi', r: counted * correlationBetween('I', 'phi') },
    ],
    outputs: OUTPUTS.map((id) => ({ id, f: FUNCTIONS[id] })),
  }).outputs;

describe('readings taken at once', () => {
  it('have coefficients as the textbook formula gives them, the same both ways round', () => {
    for (const a of NAMES)
      for (const b of NAMES) {
        const [first, second]: readonly [readonly number[], readonly number[]] = [SETS[a], SETS[b]];
        const dx = first.map((x) => x - meanOf(a));
        const dy = second.map((y) => y - meanOf(b));
        const dot = (p: readonly number[], q: readonly number[]): number =>
          p.reduce((sum, x, i) => sum + x * (q[i] ?? Number.NaN), 0);
        expect(correlationBetween(a, b)).toBeCloseTo(dot(dx, dy) / Math.sqrt(dot(dx, dx) * dot(dy, dy)), 9);
        expect(correlationBetween(a, b)).toBeCloseTo(correlationBetween(b, a), 9);
      }
  });

  it.each([0, 0.25, 0.5, 1])(
    'give what the functions themselves give, %f of the correlations counted',
    (counted) => {
      const wished = byFunctions(counted);
      for (const [i, output] of OUTPUTS.entries()) {
        const { estimate, standardUncertainty } = impedanceOf({ output, counted });
        expect(estimate).toBeCloseTo(wished[i]?.estimate ?? Number.NaN, 9);
        expect(standardUncertainty).toBeCloseTo(wished[i]?.standardUncertainty ?? Number.NaN, 7);
      }
    },
  );

  it('make the resistance surer and the reactance less sure, step by step', () => {
    const steps = Array.from({ length: 11 }, (_, i) => i / 10);
    const widths = (output: 'R' | 'X') =>
      steps.map((counted) => impedanceOf({ output, counted }).standardUncertainty);
    expect(widths('R')).toEqual(widths('R').toSorted((a, b) => b - a));
    expect(widths('X')).toEqual(widths('X').toSorted((a, b) => a - b));
  });
});
