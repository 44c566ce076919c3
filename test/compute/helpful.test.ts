import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centreOf, standardUncertaintyOf } from '../../src/compute/combine/input.ts';
import { componentOf } from '../../src/compute/component.ts';
import { evaluate } from '../../src/compute/evaluate.ts';
import { cheapestSteps, helpSteps, type JudgedModel } from '../../src/compute/helpful.ts';
import { exchanged, improved, linksOf, narrowed } from '../../src/compute/improve.ts';
import type { Input, SumModel } from '../../src/compute/model.ts';
import { readingsThatPay } from '../../src/compute/readings-that-pay.ts';
import { judge } from '../../src/compute/verdict.ts';
import { cheapestChange, whatWouldHelp } from './at-once.ts';
import { limited, quantity } from './combine/published-models.ts';

const sum = (constant: number, inputs: Input[]): SumModel => ({
  kind: 'sum',
  constant,
  inputs,
  sensitivities: inputs.map(() => 1),
});
/** Two pads into a receiver, about 26.8 dBm, specified 27 dBm +-1.5 dB. */
const chain = () =>
  sum(26.8, [
    limited('pad 1', 0.5),
    limited('pad 2', 0.5),
    limited('receiver', 2),
    limited('cable', 0.1),
    limited('mismatch', 0.2, { shape: 'arcsine' }),
  ]);
const question = (model = chain()): JudgedModel => ({
  model,
  specification: { lower: 25.5, upper: 28.5 },
  rule: { kind: 'guardBand', multiplier: 1 },
});

describe('an input made better', () => {
  test('keeps its centre and its shape, and is so many times as uncertain', () => {
    const inputs = [
      limited('box', 0.6),
      quantity('bell', 3, 0.2),
      componentOf({
        id: 'readings',
        statement: { form: 'readings', standardDeviation: 1, count: 5 },
        unit: 'dB',
      }),
      componentOf({ id: 'lopsided', statement: { form: 'asymmetric', lower: 0, upper: 1 }, unit: 'dB' }),
      limited('percent', 20, { unit: 'percentOfVolts' }),
    ];
    for (const input of inputs)
      fc.assert(
        fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), (factor) => {
          const better = narrowed(input, factor);
          expect(centreOf(better)).toBeCloseTo(centreOf(input), 9);
          expect(standardUncertaintyOf(better)).toBeCloseTo(factor * standardUncertaintyOf(input), 9);
          expect(better.distribution.shape).toBe(input.distribution.shape);
          expect(better.degreesOfFreedom).toBe(input.degreesOfFreedom);
        }),
        { numRuns: 20 },
      );
  });

  test('a perfect one is a constant at its centre', () => {
    const better = narrowed(quantity('bell', 3, 0.2), 0);
    expect(better.distribution.shape).toBe('constant');
    expect(centreOf(better)).toBe(3);
    expect(
      standardUncertaintyOf(narrowed({ ...quantity('bell', 3, 0.2), standardUncertainty: 0.2 }, 0)),
    ).toBe(0);
  });

  test('inputs under one cause are one link, in the order of the model', () => {
    const model = sum(0, [limited('a', 1, { cause: 'x' }), limited('b', 1), limited('c', 1, { cause: 'x' })]);
    expect(linksOf(model)).toEqual([['a', 'c'], ['b']]);
    const better = improved(model, ['a', 'c'], 0.5);
    expect(better.inputs.map(({ distribution }) => distribution.limits.upper)).toEqual([0.5, 1, 0.5]);
    const two = sum(0, [limited('a', 1, { cause: 'x' }), limited('b', 1, { cause: 'y' })]);
    expect(linksOf(two)).toEqual([['a'], ['b']]);
    // A cause and an input of the same name are two things.
    expect(linksOf(sum(0, [limited('x', 1), limited('a', 1, { cause: 'x' })]))).toEqual([['x'], ['a']]);
  });

  test('an unknown link or a negative factor is refused', () => {
    expect(() => improved(chain(), ['roof'], 0.5)).toThrow(
      'improved: link must name inputs of the model, got "roof"',
    );
    expect(() => improved(chain(), ['cable'], -1)).toThrow('improved: factor must be >= 0, got -1');
    expect(() => exchanged(chain(), [limited('roof', 1)])).toThrow(
      'exchanged: input must stand for one of the model, got "roof"',
    );
  });
});

describe('what would help', () => {
  test('every link helps, the perfect one more than the halved one, the dominant one most', () => {
    const now = evaluate({ model: chain() }).propagation.expanded;
    const help = whatWouldHelp(question());
    expect(help.map(({ link }) => link[0])).toEqual(['pad 1', 'pad 2', 'receiver', 'cable', 'mismatch']);
    for (const { perfect, halved, replaced } of help) {
      expect(perfect.expanded).toBeLessThan(halved.expanded);
      expect(halved.expanded).toBeLessThan(now);
      expect(replaced).toBe(undefined);
    }
    const best = help.reduce((a, b) => (b.perfect.expanded < a.perfect.expanded ? b : a));
    expect(best.link).toEqual(['receiver']);
    expect(best.perfect.verdict).toBe('inside');
    expect(best.perfect.probabilityOfConformity).toBeGreaterThan(0.999);
  });

  test('a better receiver that somebody would lend is reckoned with', () => {
    const help = whatWouldHelp({ ...question(), better: [limited('receiver', 0.3)] });
    const lent = help[2]?.replaced;
    expect(lent?.expanded).toBeCloseTo(
      evaluate({ model: exchanged(chain(), [limited('receiver', 0.3)]) }).propagation.expanded,
      12,
    );
    expect(lent?.verdict).toBe('inside');
    expect(help[1]?.replaced).toBe(undefined);
    expect(() => whatWouldHelp({ ...question(), better: [limited('roof', 1)] })).toThrow('exchanged');
  });

  test('the coverage and the interval asked for are kept', () => {
    const asked = whatWouldHelp({ ...question(), coverageFactor: 2, decidingInterval: 'propagation' });
    const model = improved(chain(), ['receiver'], 0.5);
    const { propagation } = evaluate({ model, coverageFactor: 2 });
    expect(asked[2]?.halved.expanded).toBe(propagation.expanded);
    expect(asked[2]?.halved.interval).toEqual(propagation.interval);
  });
});

describe('the cheapest change', () => {
  test('is the receiver: no other link can settle it', () => {
    const change = cheapestChange(question());
    if (change.kind !== 'change') throw new Error(change.kind);
    expect(change.link).toEqual(['receiver']);
    expect(change.verdict).toBe('inside');
    const verdictAt = (factor: number) =>
      judge({ ...question(), result: evaluate({ model: improved(chain(), ['receiver'], factor) }) }).verdict;
    expect(verdictAt(change.factor)).toBe('inside');
    expect(verdictAt(change.factor + 0.002)).toBe('cant-tell');
  });

  test('a measurement that has decided needs none', () => {
    expect(cheapestChange(question(sum(27, [limited('pad', 0.1)])))).toEqual({
      kind: 'decided',
      verdict: 'inside',
    });
    expect(cheapestChange(question(sum(20, [limited('pad', 0.1)])))).toEqual({
      kind: 'decided',
      verdict: 'outside',
    });
  });

  test('on a limit no single change is enough', () => {
    expect(cheapestChange(question(sum(25.5, [limited('a', 0.5), limited('b', 0.5)])))).toEqual({
      kind: 'none',
    });
  });

  test('without prices it is the link that must be improved least, with them the lowest price', () => {
    // 0.2 dB inside the limit; either part alone must shrink, the larger one by less.
    const model = sum(25.72, [limited('small', 0.15), limited('large', 0.2)]);
    const free = cheapestChange(question(model));
    if (free.kind !== 'change') throw new Error(free.kind);
    expect(free.link).toEqual(['large']);
    const priced = cheapestChange({ ...question(model), price: ([id]) => (id === 'large' ? 10 : 1) });
    if (priced.kind !== 'change') throw new Error(priced.kind);
    expect(priced.link).toEqual(['small']);
    expect(priced.factor).toBeLessThan(free.factor);
    const turned = cheapestChange({ ...question(model), price: ([id]) => (id === 'large' ? 1 : 10) });
    expect(turned).toEqual(free);
  });

  test('an outside reading is settled as outside', () => {
    const change = cheapestChange(question(sum(25.3, [limited('a', 0.3)])));
    expect(change).toMatchObject({ kind: 'change', verdict: 'outside' });
  });
});

describe('the same in steps', () => {
  test('gives every link as it would come at once, with a pause before each further evaluation', () => {
    const better = [limited('receiver', 0.3)];
    const steps = [...helpSteps({ ...question(), better })];
    expect(steps.filter((step) => step !== undefined)).toEqual(whatWouldHelp({ ...question(), better }));
    expect(steps).toHaveLength(3 * chain().inputs.length);
  });

  test('takes the links in the order that was asked for, and only those', () => {
    const links = [['receiver'], ['pad 1']];
    expect(whatWouldHelp({ ...question(), links }).map(({ link }) => link)).toEqual(links);
    expect(whatWouldHelp({ ...question(), links })[0]).toEqual(whatWouldHelp(question())[2]);
    expect(() => whatWouldHelp({ ...question(), links: [['roof']] })).toThrow('improved');
  });

  test('a caller that stops asking stops the work', () => {
    const steps = helpSteps({ ...question(), better: [limited('receiver', 0.3)] });
    expect(steps.next()).toEqual({ done: false, value: undefined });
    expect(steps.return().done).toBe(true);
    expect(steps.next().done).toBe(true);
  });

  test('the cheapest change comes at the end, after at most eleven steps a link', () => {
    const steps = cheapestSteps(question());
    let pauses = 0;
    let step = steps.next();
    for (; !step.done; step = steps.next()) pauses++;
    expect(step.value).toEqual(cheapestChange(question()));
    expect(pauses).toBeLessThanOrEqual(11 * chain().inputs.length);
    expect(pauses).toBeGreaterThanOrEqual(chain().inputs.length);
  });
});

describe('readings that still pay', () => {
  test('from that number on all further ones together are worth less than a twentieth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        (s, other) => {
          const n = readingsThatPay({ standardDeviation: s, otherUncertainty: other }) ?? Number.NaN;
          const u = (count: number) => Math.hypot(s / Math.sqrt(count), other);
          expect(u(n)).toBeLessThanOrEqual(1.05 * other * (1 + 1e-12));
          if (n > 1) expect(u(n - 1)).toBeGreaterThan(1.05 * other);
        },
      ),
    );
  });

  test('a scatter as large as everything else pays for ten, a small one for a single reading', () => {
    expect(readingsThatPay({ standardDeviation: 0.1, otherUncertainty: 0.1 })).toBe(10);
    expect(readingsThatPay({ standardDeviation: 0.02, otherUncertainty: 0.1 })).toBe(1);
    expect(readingsThatPay({ standardDeviation: 0.1, otherUncertainty: 0.1, worthwhile: 0.01 })).toBe(50);
  });

  test('with nothing else uncertain every one pays, without scatter one is enough', () => {
    expect(readingsThatPay({ standardDeviation: 0.1, otherUncertainty: 0 })).toBe(undefined);
    expect(readingsThatPay({ standardDeviation: 0, otherUncertainty: 0 })).toBe(1);
  });

  test('what cannot be is refused', () => {
    expect(() => readingsThatPay({ standardDeviation: -1, otherUncertainty: 1 })).toThrow(
      'readingsThatPay: standardDeviation must be >= 0, got -1',
    );
    expect(() => readingsThatPay({ standardDeviation: 1, otherUncertainty: -1 })).toThrow(
      'readingsThatPay: otherUncertainty',
    );
    expect(() => readingsThatPay({ standardDeviation: 1, otherUncertainty: 1, worthwhile: 0 })).toThrow(
      'readingsThatPay: worthwhile',
    );
  });
});
