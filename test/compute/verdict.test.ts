import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { componentOf } from '../../src/compute/component.ts';
import type { DecidingInterval } from '../../src/compute/deciding.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import type { Rule, Specification } from '../../src/compute/specification.ts';
import { judge } from '../../src/compute/verdict.ts';
import { limited, quantity } from './combine/published-models.ts';

const sum = (constant: number, inputs: Input[]): SumModel => ({
  kind: 'sum',
  constant,
  inputs,
  sensitivities: inputs.map(() => 1),
});
/** A result with a normal deviation of standard uncertainty u about y. */
const bell = (y: number, u: number, coverageFactor = 2) =>
  evaluate({ model: sum(y, [quantity('all', 0, u)]), coverageFactor });
const guard: Rule = { kind: 'guardBand', multiplier: 1 };
const simple: Rule = { kind: 'simple' };
const required = (share: number): Rule => ({ kind: 'probability', required: share });
const verdictAt = (y: number, u: number, specification: Specification, rule: Rule, by?: DecidingInterval) =>
  judge({ result: bell(y, u), specification, rule, decidingInterval: by }).verdict;
const spec = { lower: 23, upper: 25 };

describe('laws of the verdict', () => {
  const estimate = fc.double({ min: 20, max: 28, noNaN: true });
  const u = fc.double({ min: 0.01, max: 2, noNaN: true });
  const rule = fc.oneof(
    fc.constant(simple),
    fc
      .double({ min: 0.2, max: 3, noNaN: true })
      .map((multiplier): Rule => ({ kind: 'guardBand', multiplier })),
    fc.double({ min: 0.55, max: 0.999, noNaN: true }).map(required),
  );
  const specification = fc.constantFrom<Specification>(spec, { lower: 23 }, { upper: 25 });

  test('the verdict is what the acceptance and rejection limits say', () => {
    fc.assert(
      fc.property(estimate, u, rule, specification, (y, uncertainty, r, s) => {
        const result = bell(y, uncertainty);
        const { verdict, acceptance, rejection } = judge({ result, specification: s, rule: r });
        const inside = acceptance !== undefined && y >= acceptance.lower && y <= acceptance.upper;
        const outside = y < rejection.lower || y > rejection.upper;
        expect(verdict).toBe(inside ? 'inside' : outside ? 'outside' : 'cant-tell');
        expect(inside && outside).toBe(false);
      }),
    );
  });

  test('a transmitter moved with its limits keeps its verdict and probability', () => {
    fc.assert(
      fc.property(
        estimate,
        u,
        rule,
        fc.double({ min: -5, max: 5, noNaN: true }),
        (y, uncertainty, r, shift) => {
          const here = judge({ result: bell(y, uncertainty), specification: spec, rule: r });
          const there = judge({
            result: bell(y + shift, uncertainty),
            specification: { lower: 23 + shift, upper: 25 + shift },
            rule: r,
          });
          expect(there.probabilityOfConformity).toBeCloseTo(here.probabilityOfConformity ?? Number.NaN, 6);
          const edges = [...Object.values(here.acceptance ?? {}), ...Object.values(here.rejection)];
          if (edges.every((edge) => Math.abs(edge - y) > 1e-6)) expect(there.verdict).toBe(here.verdict);
        },
      ),
    );
  });

  test('a required probability is reached exactly on the acceptance limits', () => {
    fc.assert(
      fc.property(
        u,
        fc.double({ min: 0.55, max: 0.999, noNaN: true }),
        specification,
        (uncertainty, share, s) => {
          const { acceptance } = judge({
            result: bell(24, uncertainty),
            specification: s,
            rule: required(share),
          });
          if (acceptance === undefined) return;
          for (const end of Object.values(acceptance).filter((e) => Number.isFinite(e))) {
            const at = judge({ result: bell(end, uncertainty), specification: s, rule: simple });
            expect(at.probabilityOfConformity).toBeCloseTo(share, 5);
          }
        },
      ),
    );
  });

  test('a wider guard band never turns inside into outside or the other way round', () => {
    fc.assert(
      fc.property(estimate, u, fc.double({ min: 0.1, max: 1, noNaN: true }), (y, uncertainty, r) => {
        const narrow = verdictAt(y, uncertainty, spec, { kind: 'guardBand', multiplier: r });
        const wide = verdictAt(y, uncertainty, spec, { kind: 'guardBand', multiplier: 2 * r });
        if (wide !== 'cant-tell') expect(wide).toBe(narrow);
      }),
    );
  });
});

describe('published probabilities of conformity (JCGM 106)', () => {
  const within = (y: number, u: number, specification: Specification) =>
    judge({ result: bell(y, u), specification, rule: simple, decidingInterval: 'propagation' })
      .probabilityOfConformity;

  test('a breakdown voltage of -5.47 V with u = 0.05 V is below -5.40 V with 92 % (7.3, example)', () => {
    expect(within(-5.47, 0.05, { upper: -5.4 })).toBeCloseTo(0.919243, 6);
  });

  test('a container of 509.7 with u = 8.6 is above 490 with 99 % (7.3, example)', () => {
    expect(within(509.7, 8.6, { lower: 490 })).toBeCloseTo(0.98901, 5);
  });

  test('a capability index of 1 leaves 95.45 % in the middle, and 95 % only from 0.45 to 0.55 (7.6)', () => {
    const at = (share: number) => within(share * 4, 1, { lower: 0, upper: 4 });
    expect(at(0.5)).toBeCloseTo(0.9545, 4);
    expect(at(0.44905)).toBeCloseTo(0.95, 4);
    expect(at(0.44)).toBeLessThan(0.95);
    expect(at(0.56)).toBeLessThan(0.95);
  });

  test('both ways of computing agree where the shape is normal', () => {
    const by = (decidingInterval: DecidingInterval) =>
      judge({ result: bell(22.85, 0.25), specification: spec, rule: guard, decidingInterval })
        .probabilityOfConformity;
    expect(by('whole')).toBeCloseTo(by('propagation') ?? Number.NaN, 6);
    expect(by('wholeShortest')).toBe(by('whole'));
  });

  test('accepting at a guard band of w leaves the published risk at the limit (ILAC-G8:09/2019, table 1)', () => {
    const rows = [
      [3, 9.8659e-10],
      [1.5, 0.0013499],
      [1, 0.0227501],
      [0.83, 0.0484572],
    ] as const;
    for (const [multiplier, risk] of rows) {
      const { acceptance } = judge({
        result: bell(24, 0.25),
        specification: { upper: 25 },
        rule: { kind: 'guardBand', multiplier },
        decidingInterval: 'propagation',
      });
      const atLimit = within(acceptance?.upper ?? Number.NaN, 0.25, { upper: 25 }) ?? Number.NaN;
      expect(Math.abs(1 - atLimit - risk)).toBeLessThan(1e-6);
    }
  });
});

describe('a transmitter specified 24 dBm +-1 dB, U = 0.5 dB at k = 2', () => {
  const cases = [
    [24.1, 'inside', 0.9998],
    [22.85, 'cant-tell', 0.274],
    [22.2, 'outside', 0.0007],
    [23.1, 'cant-tell', 0.655],
  ] as const;

  test('each of the four readings has its verdict and probability', () => {
    for (const [y, verdict, probability] of cases) {
      const judgement = judge({ result: bell(y, 0.25), specification: spec, rule: guard });
      expect(judgement.verdict).toBe(verdict);
      expect(judgement.probabilityOfConformity).toBeCloseTo(probability, 3);
      expect(judgement.hasUndecidedZone).toBe(true);
      expect(judgement.decidedBy).toBe('whole');
      expect(judgement.neededExpanded).toBe(undefined);
    }
  });

  test('simple acceptance passes 23.10, never hesitates and says so', () => {
    const judgement = judge({ result: bell(23.1, 0.25), specification: spec, rule: simple });
    expect(judgement.verdict).toBe('inside');
    expect(judgement.hasUndecidedZone).toBe(false);
    expect(judgement.acceptance).toEqual(spec);
    expect(judgement.rejection).toEqual(spec);
    expect(verdictAt(22.999, 0.25, spec, simple)).toBe('outside');
    expect(verdictAt(25.001, 0.25, spec, simple)).toBe('outside');
  });

  test('a value on a limit counts as within', () => {
    expect(verdictAt(23, 0.25, spec, simple)).toBe('inside');
    expect(verdictAt(25, 0.25, spec, simple)).toBe('inside');
    expect(verdictAt(23.5, 0.25, spec, guard, 'propagation')).toBe('inside');
    expect(verdictAt(24.5, 0.25, spec, guard, 'propagation')).toBe('inside');
    expect(verdictAt(22.5, 0.25, spec, guard, 'propagation')).toBe('cant-tell');
    expect(verdictAt(25.5, 0.25, spec, guard, 'propagation')).toBe('cant-tell');
    expect(verdictAt(22.499, 0.25, spec, guard, 'propagation')).toBe('outside');
    expect(verdictAt(25.501, 0.25, spec, guard, 'propagation')).toBe('outside');
  });

  test('a value on a limit that nothing leaves in doubt conforms for certain, under any rule', () => {
    const probabilityAt = (y: number, rule: Rule, by: DecidingInterval) =>
      judge({ result: evaluate({ model: sum(y, []) }), specification: spec, rule, decidingInterval: by })
        .probabilityOfConformity;
    for (const rule of [simple, guard, required(0.95)])
      for (const by of ['whole', 'propagation'] as const)
        expect([22.999, 23, 24, 25, 25.001].map((y) => probabilityAt(y, rule, by))).toEqual([0, 1, 1, 1, 0]);
  });

  test('the guard band is the expanded uncertainty times its multiplier', () => {
    const of = (multiplier: number) =>
      judge({
        result: bell(24, 0.25),
        specification: spec,
        rule: { kind: 'guardBand', multiplier },
        decidingInterval: 'propagation',
      });
    expect(of(1).acceptance).toEqual({ lower: 23.5, upper: 24.5 });
    expect(of(1).rejection).toEqual({ lower: 22.5, upper: 25.5 });
    expect(of(0.5).acceptance).toEqual({ lower: 23.25, upper: 24.75 });
    expect(of(1).interval).toEqual(of(0.5).interval);
  });
});

describe('one limit', () => {
  test('a maximum only has an upper side', () => {
    const judgement = judge({
      result: bell(24, 0.25),
      specification: { upper: 25 },
      rule: guard,
      decidingInterval: 'propagation',
    });
    expect(judgement.verdict).toBe('inside');
    expect(judgement.acceptance).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: 24.5 });
    expect(judgement.rejection).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: 25.5 });
    expect(verdictAt(-1000, 0.25, { upper: 25 }, guard)).toBe('inside');
    expect(verdictAt(26, 0.25, { upper: 25 }, guard)).toBe('outside');
  });

  test('a minimum only has a lower side, and by probability 95 % asks for 1.645 u', () => {
    const judgement = judge({ result: bell(24, 0.25), specification: { lower: 23 }, rule: required(0.95) });
    expect(judgement.acceptance?.lower).toBeCloseTo(23 + 1.644854 * 0.25, 5);
    expect(judgement.acceptance?.upper).toBe(Number.POSITIVE_INFINITY);
    expect(judgement.rejection.lower).toBeCloseTo(23 - 1.644854 * 0.25, 5);
    expect(judgement.neededExpanded).toBe(undefined);
    expect(verdictAt(23.41, 0.25, { lower: 23 }, required(0.95))).toBe('cant-tell');
    expect(verdictAt(23.42, 0.25, { lower: 23 }, required(0.95))).toBe('inside');
    expect(verdictAt(22.58, 0.25, { lower: 23 }, required(0.95))).toBe('outside');
  });
});

describe('where nothing can be inside', () => {
  test('a guard band wider than half the room says what it would take', () => {
    const judgement = judge({
      result: bell(24, 0.6),
      specification: spec,
      rule: guard,
      decidingInterval: 'propagation',
    });
    expect(judgement.verdict).toBe('cant-tell');
    expect(judgement.acceptance).toBe(undefined);
    expect(judgement.neededExpanded).toBe(1);
    const with2 = judge({
      result: bell(24, 0.6),
      specification: spec,
      rule: { kind: 'guardBand', multiplier: 2 },
    });
    expect(with2.neededExpanded).toBe(0.5);
  });

  test('exactly half the room still lets the middle in', () => {
    const judgement = judge({
      result: bell(24, 0.5),
      specification: spec,
      rule: guard,
      decidingInterval: 'propagation',
    });
    expect(judgement.verdict).toBe('inside');
    expect(judgement.acceptance).toEqual({ lower: 24, upper: 24 });
  });

  test('a required probability that no estimate reaches says what it would take', () => {
    const judgement = judge({ result: bell(24, 0.6), specification: spec, rule: required(0.95) });
    expect(judgement.acceptance).toBe(undefined);
    // Two limits 2 apart hold 95 % of a normal with u = 1/1.96, U = 2u.
    expect(judgement.neededExpanded).toBeCloseTo(2 / 1.959964, 4);
    expect(judgement.verdict).toBe('cant-tell');
  });

  test('if even the middle is improbable every estimate is outside', () => {
    const judgement = judge({ result: bell(24, 50), specification: spec, rule: required(0.95) });
    expect(judgement.probabilityOfConformity).toBeLessThan(0.05);
    expect(judgement.verdict).toBe('outside');
  });

  test('a narrow window still has an acceptance of its own, by probability', () => {
    const judgement = judge({ result: bell(24, 0.5), specification: spec, rule: required(0.95) });
    expect(judgement.verdict).toBe('inside');
    // JCGM 106, 7.6: with a capability index of 1, from 0.44905 to 0.55095 of the room.
    expect(judgement.acceptance?.lower).toBeCloseTo(23 + 2 * 0.44905, 3);
    expect(judgement.acceptance?.upper).toBeCloseTo(23 + 2 * 0.55095, 3);
  });
});

describe('which interval decides', () => {
  const oneLarge = evaluate({ model: sum(24, [limited('receiver', 0.95), limited('pad', 0.05)]) });

  test('the worst case decides without any probability', () => {
    const judgement = judge({
      result: oneLarge,
      specification: spec,
      rule: guard,
      decidingInterval: 'worstCase',
    });
    expect(judgement.verdict).toBe('inside');
    expect(judgement.probabilityOfConformity).toBe(undefined);
    expect(judgement.acceptance?.lower).toBeCloseTo(24, 9);
    expect(() =>
      judge({ result: oneLarge, specification: spec, rule: required(0.9), decidingInterval: 'worstCase' }),
    ).toThrow('judge: a worst case must not be judged by probability, got "probability"');
  });

  test('a worst case with an unlimited part can never tell', () => {
    const result = evaluate({ model: sum(24, [limited('pad', 0.1), quantity('certificate', 0, 0.01)]) });
    const judgement = judge({ result, specification: spec, rule: guard, decidingInterval: 'worstCase' });
    expect(judgement.verdict).toBe('cant-tell');
    expect(judgement.acceptance).toBe(undefined);
    expect(judgement.rejection).toEqual({ lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY });
    expect(judgement.neededExpanded).toBe(1);
    expect(judgement.interval.lower).toBe(Number.NEGATIVE_INFINITY);
    const maximum = judge({
      result,
      specification: { upper: 25 },
      rule: guard,
      decidingInterval: 'worstCase',
    });
    expect(maximum.verdict).toBe('cant-tell');
    expect(maximum.neededExpanded).toBe(undefined);
  });

  test('the ends of the interval make the guard band, each on its own side', () => {
    const lopsided = componentOf({
      id: 'meter',
      statement: { form: 'limits', shape: 'rectangular', halfWidth: 20 },
      unit: 'percentOfPower',
    });
    const result = evaluate({ model: sum(24, [lopsided]) });
    const { interval, acceptance, rejection } = judge({
      result,
      specification: { lower: 22, upper: 27 },
      rule: guard,
    });
    const [below, above] = [result.estimate - interval.lower, interval.upper - result.estimate];
    expect(below).toBeGreaterThan(above + 0.1);
    expect(acceptance?.lower).toBeCloseTo(22 + below, 12);
    expect(acceptance?.upper).toBeCloseTo(27 - above, 12);
    expect(rejection.lower).toBeCloseTo(22 - above, 12);
    expect(rejection.upper).toBeCloseTo(27 + below, 12);
  });

  test('without a whole distribution propagation decides, and asking for it is refused', () => {
    const result = evaluate({
      model: {
        ...sum(24, [limited('a', 0.1), limited('b', 0.1)]),
        correlations: [{ a: 'a', b: 'b', r: 0.5 }],
      },
    });
    expect(judge({ result, specification: spec, rule: guard }).decidedBy).toBe('propagation');
    expect(() => judge({ result, specification: spec, rule: guard, decidingInterval: 'whole' })).toThrow(
      'judge: the whole distribution must be available to decide, got "correlated"',
    );
  });

  test('a shortest interval in two pieces is refused', () => {
    const result = evaluate({ model: sum(24, [limited('mismatch', 0.5, { shape: 'arcsine' })]) });
    expect(() =>
      judge({ result, specification: spec, rule: guard, decidingInterval: 'wholeShortest' }),
    ).toThrow('judge: the shortest interval must be one interval, got "wholeShortest"');
  });

  test('few readings make the probability a t, and an exact result makes it certain', () => {
    const few = evaluate({
      model: sum(24, [
        componentOf({
          id: 'n',
          statement: { form: 'readings', standardDeviation: 0.5, count: 4 },
          unit: 'dB',
        }),
      ]),
    });
    const { probabilityOfConformity } = judge({
      result: few,
      specification: { upper: 24.25 },
      rule: guard,
      decidingInterval: 'propagation',
    });
    // Share of t with 3 degrees below 1: 1/2 + (1/pi) (sqrt(3)/4 + atan(1/sqrt(3))).
    expect(probabilityOfConformity).toBeCloseTo(0.5 + (Math.sqrt(3) / 4 + Math.PI / 6) / Math.PI, 9);
    const exact = evaluate({ model: sum(24, []) });
    const certain = judge({
      result: exact,
      specification: spec,
      rule: required(0.95),
      decidingInterval: 'propagation',
    });
    expect(certain).toMatchObject({ verdict: 'inside', probabilityOfConformity: 1 });
    expect(
      judge({
        result: exact,
        specification: { lower: 25 },
        rule: required(0.95),
        decidingInterval: 'propagation',
      }).verdict,
    ).toBe('outside');
  });
});

describe('what cannot be judged', () => {
  const result = bell(24, 0.25);
  const judged =
    (specification: Specification, rule: Rule = guard) =>
    () =>
      judge({ result, specification, rule });

  test('a specification must have a limit, finite, and in order', () => {
    expect(judged({})).toThrow('judge: specification must have a limit, got {}');
    expect(judged({ lower: Number.NaN })).toThrow('judge: specification.lower must be a finite number');
    expect(judged({ upper: Number.POSITIVE_INFINITY })).toThrow(
      'judge: specification.upper must be a finite number',
    );
    expect(judged({ lower: 2, upper: 1 })).toThrow('judge: specification.lower must be < upper, got [2,1]');
    expect(judged({ lower: 1, upper: 1 })).toThrow(RangeError);
  });

  test('a rule must be within its range', () => {
    expect(judged(spec, { kind: 'guardBand', multiplier: 0 })).toThrow(
      'judge: multiplier must be > 0, got 0',
    );
    for (const share of [0.5, 1, Number.NaN])
      expect(judged(spec, required(share))).toThrow('judge: required must be above 0.5 and below 1');
  });
});
