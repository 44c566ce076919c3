import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CurvePoint, drawnCurve } from '../../src/bench/results/drawn-curve.ts';
import { drawnSpecification, reachOfChain, reachOfInputs } from '../../src/bench/results/reach.ts';
import { sharesSentence, stripSentence, wholeOf } from '../../src/bench/words/distribution-words.ts';
import { anyComputed, numberedOf } from './any-measurement.ts';
import type { Typing } from './typed-sheet.ts';
import { firstNumber } from './typed-sheet.ts';

const resultOf = (typing: Typing) => firstNumber(typing).result;
const wholeFor = (typing: Typing) => {
  const whole = wholeOf(resultOf(typing));
  if (whole === undefined) throw new Error('wholeFor: wish a whole distribution, got none');
  return whole;
};
const curveOf = (typing: Typing): readonly CurvePoint[] => drawnCurve(wholeFor(typing));
const areaOf = (curve: readonly CurvePoint[]): number => {
  const step = (curve[1]?.x ?? 0) - (curve[0]?.x ?? 0);
  return curve.reduce((sum, { density }) => sum + density * step, 0);
};

describe('the drawn curve', () => {
  it('is never negative, and goes on from left to right in even steps', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const whole = wholeOf(result);
          const curve = whole === undefined ? [] : drawnCurve(whole);
          const steps = curve.slice(1).map(({ x }, index) => x - (curve[index]?.x ?? 0));
          const [first = 0] = steps;
          for (const step of steps) expect(step / first).toBeCloseTo(1, 6);
          for (const { density } of curve) expect(density).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('of plain limits is a box: as high as one over its width, with nothing outside', () => {
    const curve = curveOf({ links: [{ amount: '0.5' }] });
    const top = Math.max(...curve.map(({ density }) => density));
    expect(top).toBeCloseTo(1 / (2 * 0.5), 6);
    const inner = curve.filter(({ x }) => Math.abs(x - 27) < 0.48);
    expect(inner.length).toBeGreaterThan(60);
    for (const { density } of inner) expect(density).toBeCloseTo(1, 6);
    for (const { x } of curve) expect(Math.abs(x - 27)).toBeLessThan(0.52);
    expect(areaOf(curve)).toBeCloseTo(1, 6);
  });

  it('of one U and k is the bell, 1/(u sqrt(2 pi)) at its top', () => {
    const curve = curveOf({ links: [{ form: 'expanded', amount: '0.5', factor: '2' }] });
    const top = Math.max(...curve.map(({ density }) => density));
    expect(top).toBeCloseTo(1 / (0.25 * Math.sqrt(2 * Math.PI)), 2);
    expect(areaOf(curve)).toBeCloseTo(1, 3);
  });

  it('of U-shaped limits is lowest in the middle and stays finite at its horns', () => {
    const curve = curveOf({ links: [{ form: 'arcsine', amount: '0.5' }] });
    const middle = curve.toSorted((a, b) => Math.abs(a.x - 27) - Math.abs(b.x - 27))[0]?.density ?? 0;
    // 1/(pi a) is what the arcsine has in its middle (JCGM 101, 6.4.6)
    expect(middle).toBeCloseTo(1 / (Math.PI * 0.5), 3);
    const top = Math.max(...curve.map(({ density }) => density));
    expect(top).toBeGreaterThan(3 * middle);
    expect(Number.isFinite(top)).toBe(true);
  });

  it('is empty where nothing is in doubt', () => {
    const point = { lower: 27, upper: 27 };
    const whole = wholeFor({ links: [{}] });
    expect(drawnCurve({ ...whole, symmetric: point })).toEqual([]);
    // so near that a double holds nothing between the ends
    expect(drawnCurve({ ...whole, symmetric: { lower: 27, upper: 27 + 3.6e-15 } })).toEqual([]);
  });
});

describe('how much lies where, in words', () => {
  const sentence = (typing: Typing): string =>
    sharesSentence('ascii', wholeFor(typing), resultOf(typing)).replace(/\.$/, '');

  it('names only the sides on which there is a limit', () => {
    const links = [{ amount: '1' }];
    // a box from 26 to 28 dBm: a quarter of it above 27.5, a tenth below 26.2
    expect(sentence({ links, points: [{ readings: '27', specification: 'atMost', highest: '27.5' }] })).toBe(
      'Of the distribution 75 % lies inside the specification, 25 % above it',
    );
    expect(sentence({ links, points: [{ readings: '27', specification: 'atLeast', lowest: '26.2' }] })).toBe(
      'Of the distribution 90 % lies inside the specification, 10 % below it',
    );
    const between = {
      readings: '27',
      specification: 'between',
      nominal: '',
      lowest: '26.2',
      highest: '27.5',
    };
    expect(sentence({ links, points: [{ ...between, specification: 'between' as const }] })).toBe(
      'Of the distribution 65 % lies inside the specification, 10 % below it, 25 % above it',
    );
  });

  it('never says all or nothing of a distribution that a specification lies wholly around or beside', () => {
    expect(sentence({ links: [{}] })).toContain('more than 99.9 % lies inside');
    const far = [{ readings: '27', specification: 'atMost' as const, highest: '20' }];
    expect(sentence({ links: [{}], points: far })).toContain('more than 99.9 % above it');
  });

  it('says which interval the strip is, and that under simple acceptance it did not decide', () => {
    const links = [{ amount: '0.5' }];
    expect(stripSentence('ascii', resultOf({ links }))).toMatch(/^The strip is the interval that decided: /);
    expect(stripSentence('ascii', resultOf({ links }))).toContain('95.45 %');
    expect(stripSentence('ascii', resultOf({ links, sheet: { rule: 'simple' } }))).toContain(
      'the estimate alone decided',
    );
  });
});

describe('how far the figure reaches', () => {
  it('is at least to the ends of the worst case and of the interval, for any measurement', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const { estimate, worstCase, propagation } = result.chain.result;
          const reach = reachOfChain(result.chain);
          expect(reach).toBeGreaterThanOrEqual(2 * propagation.standardUncertainty);
          for (const end of [worstCase.interval.lower, worstCase.interval.upper].filter(Number.isFinite))
            expect(reach).toBeGreaterThanOrEqual(Math.abs(end - estimate));
        }
      }),
    );
  });

  it('never shrinks to nothing: half of the axis has a tenth of a decibel', () => {
    const bare = resultOf({ points: [{ readings: '27', specification: 'atMost', highest: '90' }] });
    expect(reachOfChain(bare.chain)).toBe(0.1);
    expect(drawnSpecification(bare.chain)).toEqual({
      lower: Number.NEGATIVE_INFINITY,
      upper: Number.POSITIVE_INFINITY,
    });
  });

  it('draws a limit up to 40 dB off and none beyond', () => {
    const upperOf = (highest: string): number =>
      drawnSpecification(resultOf({ points: [{ readings: '27', specification: 'atMost', highest }] }).chain)
        .upper;
    expect(upperOf('67')).toBe(67);
    expect(upperOf('67.01')).toBe(Number.POSITIVE_INFINITY);
  });

  it('of inputs adds their limits, and of a bell two of its standard deviations', () => {
    const reach = (links: NonNullable<Typing['links']>): number =>
      reachOfInputs(resultOf({ links }).chain.model.inputs);
    expect(reach([])).toBe(0);
    expect(reach([{ amount: '0.5' }, { form: 'arcsine', amount: '0.2' }])).toBeCloseTo(0.7, 12);
    // the quantile of the normal at 97.725 % is 2.0000
    expect(reach([{ form: 'expanded', amount: '0.5', factor: '2' }])).toBeCloseTo(0.5, 4);
    expect(reach([{ form: 'asymmetric', lower: '-0.1', upper: '0.4' }])).toBeCloseTo(0.4, 12);
  });
});
