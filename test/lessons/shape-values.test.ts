import { describe, expect, it } from 'vitest';
import { erf } from '#compute';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const shape = (name: string): string => textOfValue(`shape.${name}`);
const even = (value: number): string => `±${value.toFixed(2)}${nb}dB`;
const twoOf = (...squares: readonly number[]): number => 2 * Math.sqrt(squares.reduce((a, b) => a + b));
const two = erf(Math.SQRT2);
/** Share of the sum of n numbers even between -1/2 and 1/2 that lies within x of nothing: the law of Irwin and Hall. */
function withinOf(n: number, x: number): number {
  const s = x + n / 2;
  let below = 0;
  let choose = 1;
  let factorial = 1;
  for (let i = 1; i <= n; i++) factorial *= i;
  for (let k = 0; k <= Math.floor(s); k++) {
    below += ((k % 2 ? -1 : 1) * choose * (s - k) ** n) / factorial;
    choose = (choose * (n - k)) / (k + 1);
  }
  return 2 * below - 1;
}
const percent = (share: number, decimals = 1): string => `${(100 * share).toFixed(decimals)}${nb}%`;

describe('the numbers of the lesson on shapes, each by hand', () => {
  it('are a box and the bell that does not fit it', () => {
    expect(shape('asked')).toBe(percent(two, 2));
    expect(shape('oneU')).toBe(`${(0.5 / Math.sqrt(3)).toFixed(2)}${nb}dB`);
    expect(shape('oneBell')).toBe(even(1 / Math.sqrt(3)));
    expect(shape('oneWhole')).toBe(even(0.5 * two));
    expect(shape('oneFactor')).toBe((Math.sqrt(3) * two).toFixed(2));
  });

  it('are what two standard uncertainties hold of two, three and four boxes', () => {
    expect(shape('twoCovered')).toBe(percent(withinOf(2, twoOf(1 / 12, 1 / 12))));
    expect(shape('threeCovered')).toBe(percent(withinOf(3, twoOf(1 / 12, 1 / 12, 1 / 12))));
    expect(shape('fourCovered')).toBe(percent(withinOf(4, twoOf(1 / 12, 1 / 12, 1 / 12, 1 / 12))));
  });

  it('are four boxes: by worst case, by roots, and how often they are far out', () => {
    expect(shape('fourWorst')).toBe(even(2));
    expect(shape('fourBell')).toBe(even(twoOf(1 / 12, 1 / 12, 1 / 12, 1 / 12)));
    expect(shape('fourBeyondHalf')).toBe(percent(1 - withinOf(4, 1)));
    expect(shape('fourBeyondMost')).toBe(percent(1 - withinOf(4, 1.5)));
    // The end of the whole shape: 2 - s with s^4/12 = 1 - 0.9545, for s <= 1.
    expect(shape('fourWhole')).toBe(even(2 - (12 * (1 - two)) ** 0.25));
  });

  it('are the receiver’s chain, its share, and what comparing makes of it', () => {
    const parts = [4 / 3, 0.25 / 3, 0.25 / 3, 0.01 / 3, 0.04 / 2];
    expect(shape('receiverBell')).toBe(even(twoOf(...parts)));
    const variance = parts.reduce((a, b) => a + b);
    expect(shape('receiverShare')).toBe(percent(4 / 3 / variance, 0));
    expect(shape('comparedBell')).toBe(even(twoOf(0.03, 0.01 / 3, 0.01 / 3, 0.01 / 3, 0.02)));
    const wholeOf = (name: string): number => Number(/[\d.]+/.exec(shape(name))?.[0]);
    expect(wholeOf('receiverWhole')).toBeLessThan(wholeOf('receiverBell'));
    expect(wholeOf('receiverFactor') * Math.sqrt(variance)).toBeCloseTo(wholeOf('receiverWhole'), 1);
    expect(wholeOf('comparedWhole')).toBeGreaterThan(0.95 * wholeOf('comparedBell'));
  });

  it('are a U and a narrow box: beyond the worst case by the bell, and thin in the middle', () => {
    expect(shape('matchBell')).toBe(even(twoOf(0.81 / 2, 0.04 / 3)));
    expect(shape('matchWorst')).toBe(even(1.1));
    const u = twoOf(0.81 / 2, 0.04 / 3) / 2;
    expect(shape('bellNear')).toBe(percent(erf(0.2 / u / Math.SQRT2), 0));
    // The box moves the U by up to 0.2 to either side: the share of the U within 0.2 of each place, averaged over a thousand.
    const below = (x: number): number => 0.5 + Math.asin(Math.max(-1, Math.min(1, x / 0.9))) / Math.PI;
    const places = Array.from({ length: 1000 }, (_, k) => -0.2 + 0.4 * ((k + 0.5) / 1000));
    const near = places.reduce((sum, b) => sum + below(0.2 - b) - below(-0.2 - b), 0) / places.length;
    expect(shape('matchNear')).toBe(percent(near, 0));
  });

  it('are what the mistakes cost', () => {
    expect(shape('twiceAnyway')).toBe(
      `${shape('receiverBell')} is said where ${shape('receiverWhole')} is true: it holds ${shape('receiverCovered')}`,
    );
    expect(shape('manyLinks')).toContain(even(twoOf(4 / 3, 0.04 / 3)));
    expect(shape('calledNothing')).toBe(
      `within ${even(0.2)} of nothing lie ${shape('matchNear')}; the bell says ${shape('bellNear')}`,
    );
  });
});
