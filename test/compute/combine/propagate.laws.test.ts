import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { propagate } from '../../../src/compute/combine/propagate.ts';
import { worstCaseOf } from '../../../src/compute/combine/worst-case.ts';
import { scaled } from '../../../src/compute/distribution/scaled.ts';
import type { FunctionModel, Input, SumModel } from '../../../src/compute/model.ts';
import { limited, quantity } from './published-models.ts';

const part = fc.record({
  kind: fc.constantFrom('rectangular' as const, 'triangular' as const, 'arcsine' as const, 'normal' as const),
  size: fc.double({ min: 0.01, max: 3, noNaN: true }),
  sensitivity: fc.integer({ min: -300, max: 300 }).map((c) => c / 100),
  degrees: fc.constantFrom(2, 5, 9.5, Number.POSITIVE_INFINITY),
  cause: fc.constantFrom('meter', 'room', undefined),
});
type Part = typeof part extends fc.Arbitrary<infer T> ? T : never;
const parts = fc.array(part, { minLength: 1, maxLength: 7 });

const inputOf = ({ kind, size, degrees, cause }: Part, i: number): Input => ({
  ...(kind === 'normal' ? quantity(`x${i}`, 0, size) : limited(`x${i}`, size, { shape: kind })),
  degreesOfFreedom: degrees,
  ...(cause === undefined ? {} : { cause }),
});
const modelOf = (data: readonly Part[], constant = 0): SumModel => ({
  kind: 'sum',
  constant,
  inputs: data.map(inputOf),
  sensitivities: data.map(({ sensitivity }) => sensitivity),
});
const free = (data: readonly Part[]): Part[] => data.map((p) => ({ ...p, cause: undefined }));
const close = (a: number, b: number, digits = 9) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(10 ** -digits * Math.max(1, Math.abs(a), Math.abs(b)));

describe('laws of propagation', () => {
  test('a constant moves the interval and nothing else', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: -100, max: 100, noNaN: true }), (data, shift) => {
        const [here, there] = [
          propagate({ model: modelOf(data) }),
          propagate({ model: modelOf(data, shift) }),
        ];
        expect(there.standardUncertainty).toBe(here.standardUncertainty);
        expect(there.budget).toEqual(here.budget);
        close(there.interval.lower, here.interval.lower + shift);
        close(there.interval.upper, here.interval.upper + shift);
      }),
    );
  });

  test('another unit of the output scales every contribution and no share', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 0.01, max: 100, noNaN: true }), (data, unit) => {
        const here = propagate({ model: modelOf(data) });
        const there = propagate({
          model: modelOf(data.map((p) => ({ ...p, sensitivity: p.sensitivity * unit }))),
        });
        close(there.standardUncertainty, here.standardUncertainty * unit);
        fc.pre(here.standardUncertainty > 1e-6);
        if (Number.isFinite(here.degreesOfFreedom)) close(there.degreesOfFreedom, here.degreesOfFreedom, 6);
        here.budget.forEach(({ contribution, share }, i) => {
          close(there.budget[i]?.contribution ?? Number.NaN, contribution * unit);
          close(there.budget[i]?.share ?? Number.NaN, share, 6);
        });
      }),
    );
  });

  test('another unit of an input changes its row and nothing of the result', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 0.01, max: 100, noNaN: true }), (data, unit) => {
        const model = modelOf(data);
        const [first] = model.inputs;
        if (first === undefined) return;
        const other: SumModel = {
          ...model,
          inputs: [
            { ...first, distribution: scaled(first.distribution, { factor: unit, shift: 0 }) },
            ...model.inputs.slice(1),
          ],
          sensitivities: model.sensitivities.map((c, i) => (i === 0 ? c / unit : c)),
        };
        const [here, there] = [propagate({ model }), propagate({ model: other })];
        close(there.standardUncertainty, here.standardUncertainty, 7);
        close(there.budget[0]?.contribution ?? Number.NaN, here.budget[0]?.contribution ?? Number.NaN);
      }),
    );
  });

  test('the order of the inputs does not matter', () => {
    fc.assert(
      fc.property(parts, (data) => {
        const model = modelOf(data);
        const turned: SumModel = {
          ...model,
          inputs: [...model.inputs].reverse(),
          sensitivities: [...model.sensitivities].reverse(),
        };
        const [here, there] = [propagate({ model }), propagate({ model: turned })];
        close(there.standardUncertainty, here.standardUncertainty, 6);
        expect(there.budget.map(({ id }) => id)).toEqual(here.budget.map(({ id }) => id).reverse());
        const [a, b] = [worstCaseOf({ model }), worstCaseOf({ model: turned })];
        close(a.interval.upper, b.interval.upper, 4);
      }),
    );
  });

  test('independent contributions add as squares, and shares are theirs', () => {
    fc.assert(
      fc.property(parts, (data) => {
        const { standardUncertainty: u, budget } = propagate({ model: modelOf(free(data)) });
        close(u, Math.hypot(...budget.map(({ contribution }) => contribution)));
        fc.pre(u > 1e-9);
        for (const { contribution, share } of budget) close(share, (contribution / u) ** 2);
      }),
    );
  });

  test('shares sum to one, causes or not', () => {
    fc.assert(
      fc.property(parts, (data) => {
        const { standardUncertainty, budget } = propagate({ model: modelOf(data) });
        fc.pre(standardUncertainty > 1e-3);
        close(
          budget.reduce((sum, { share }) => sum + share, 0),
          1,
          6,
        );
      }),
    );
  });

  test('however inputs are tied, the whole is never more than their plain sum', () => {
    fc.assert(
      fc.property(parts, (data) => {
        const { standardUncertainty, budget } = propagate({ model: modelOf(data) });
        const plain = budget.reduce((sum, { contribution }) => sum + contribution, 0);
        expect(standardUncertainty).toBeLessThanOrEqual(plain * (1 + 1e-9));
      }),
    );
  });

  test('one cause for all of one sign is the worst that correlation can do', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 3, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (sizes) => {
          const inputs = sizes.map((size, i) => limited(`x${i}`, size, { cause: 'all' }));
          const { standardUncertainty } = propagate({
            model: { kind: 'sum', constant: 0, inputs, sensitivities: sizes.map(() => 1) },
          });
          close(standardUncertainty, sizes.reduce((a, b) => a + b, 0) / Math.sqrt(3));
        },
      ),
    );
  });

  test('splitting an input into two halves under one cause changes nothing', () => {
    fc.assert(
      fc.property(part, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (p, share) => {
        const whole: Part = { ...p, cause: undefined };
        const halves = [share, 1 - share].map(
          (s): Part => ({ ...p, cause: 'meter', sensitivity: p.sensitivity * s }),
        );
        const [one, two] = [propagate({ model: modelOf([whole]) }), propagate({ model: modelOf(halves) })];
        close(two.standardUncertainty, one.standardUncertainty, 12);
        close(two.coverageFactor, one.coverageFactor);
        const [a, b] = [worstCaseOf({ model: modelOf([whole]) }), worstCaseOf({ model: modelOf(halves) })];
        close(a.interval.upper, b.interval.upper, 12);
      }),
    );
  });

  test('a sum written as a function gives the same', () => {
    fc.assert(
      fc.property(parts, (data) => {
        const model = modelOf(data, 27);
        const written: FunctionModel = {
          kind: 'function',
          inputs: model.inputs,
          f: (x) => x.reduce((sum, value, i) => sum + value * (model.sensitivities[i] ?? 0), 27),
        };
        const [one, other] = [propagate({ model }), propagate({ model: written })];
        close(other.standardUncertainty, one.standardUncertainty, 6);
        close(other.interval.upper, one.interval.upper, 6);
        other.budget.forEach(({ sensitivity }, i) => {
          close(sensitivity, model.sensitivities[i] ?? Number.NaN, 8);
        });
      }),
      { numRuns: 50 },
    );
  });

  test('fewer degrees of freedom never make the interval narrower', () => {
    fc.assert(
      fc.property(parts, (data) => {
        const known = data.map((p) => ({ ...p, degrees: Number.POSITIVE_INFINITY }));
        const [doubtful, certain] = [
          propagate({ model: modelOf(data) }),
          propagate({ model: modelOf(known) }),
        ];
        expect(doubtful.expanded).toBeGreaterThanOrEqual(certain.expanded * (1 - 1e-12));
      }),
    );
  });
});

describe('laws of the worst case', () => {
  const bounded = fc.array(
    part.filter(({ kind }) => kind !== 'normal'),
    { minLength: 1, maxLength: 6 },
  );

  test('a function that is a sum reaches the same ends', () => {
    fc.assert(
      fc.property(bounded, (data) => {
        const model = modelOf(free(data), 27);
        const written: FunctionModel = {
          kind: 'function',
          inputs: model.inputs,
          f: (x) => x.reduce((sum, value, i) => sum + value * (model.sensitivities[i] ?? 0), 27),
        };
        const [one, other] = [worstCaseOf({ model }), worstCaseOf({ model: written })];
        close(one.interval.lower, other.interval.lower);
        close(one.interval.upper, other.interval.upper);
      }),
      { numRuns: 50 },
    );
  });

  test('causes never widen it beyond the sum of limits', () => {
    fc.assert(
      fc.property(bounded, (data) => {
        const [tied, apart] = [
          worstCaseOf({ model: modelOf(data) }),
          worstCaseOf({ model: modelOf(free(data)) }),
        ];
        expect(tied.interval.lower).toBeGreaterThanOrEqual(apart.interval.lower - 1e-9);
        expect(tied.interval.upper).toBeLessThanOrEqual(apart.interval.upper + 1e-9);
      }),
      { numRuns: 50 },
    );
  });
});
