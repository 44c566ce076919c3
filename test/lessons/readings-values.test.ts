import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const readings = (name: string): string => textOfValue(`readings.${name}`);
const even = (value: number): string => `±${value.toFixed(2)}${nb}dB`;
const size = (value: number): string => `${value.toFixed(2)}${nb}dB`;
const evening = [26.84, 27.02, 26.71, 26.95, 26.88, 27.1, 26.79, 26.9, 26.98, 26.83];
const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b) / values.length;
function scatterOf(count: number): number {
  const used = evening.slice(0, count);
  const mean = meanOf(used);
  return Math.sqrt(used.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
}
/** Student's t at 95.45 %, by degrees of freedom (GUM, Table G.2), a digit more from the quantile itself. */
const T = { 1: 13.9677, 2: 4.52654, 4: 2.86931, 9: 2.31981, 20: 2.13303 } as const;

describe('the numbers of the lesson on few readings, each by hand', () => {
  it('are mean and scatter of three', () => {
    expect(readings('mean')).toBe(`${meanOf(evening.slice(0, 3)).toFixed(2)}${nb}dBm`);
    expect(readings('scatter')).toBe(size(scatterOf(3)));
    expect(readings('ofMean')).toBe(size(scatterOf(3) / Math.sqrt(3)));
  });

  it('are the factors of t in print, 13.97, 4.53, 2.87, 2.32 and 2.13', () => {
    expect(readings('factorTwo')).toBe('13.97');
    expect(readings('factorThree')).toBe('4.53');
    expect(readings('factorFive')).toBe('2.87');
    expect(readings('factorTen')).toBe('2.32');
    expect(readings('pooledFactor')).toBe('2.13');
  });

  it('are what twice ten readings take off: about a third, with 2.140 in the table for 19', () => {
    const left = 2.14 / Math.sqrt(20) / (T[9] / Math.sqrt(10));
    expect(readings('twiceTheWork')).toBe(`${Math.round(100 * (1 - left))}${nb}%`);
  });

  it('are the careless band and the one that t wants', () => {
    const u = scatterOf(3) / Math.sqrt(3);
    expect(readings('careless')).toBe(even(2 * u));
    expect(readings('whole')).toBe(even(T[2] * u));
    // Student's t of two degrees of freedom within 2: 2/sqrt(2 + 4).
    expect(readings('covered')).toBe(`${Math.round(100 * (2 / Math.sqrt(6)))}${nb}%`);
    expect(readings('wholeTwo')).toBe(even((T[1] * scatterOf(2)) / Math.sqrt(2)));
    expect(readings('wholeTen')).toBe(even((T[9] * scatterOf(10)) / Math.sqrt(10)));
  });

  it('are how far a scatter of three is in doubt: 52 % (GUM, Table E.1)', () => {
    expect(readings('doubt')).toBe(`52${nb}%`);
  });

  it('are experience, for three readings and for one', () => {
    const s = 0.107434;
    expect(readings('pooled')).toBe(size(s));
    expect(readings('pooledDegrees')).toBe('20');
    expect(readings('wholePooled')).toBe(even((T[20] * s) / Math.sqrt(3)));
    expect(readings('wholeOnePooled')).toBe(even(T[20] * s));
  });

  it('are what stays: 95.45 hundredths of the limits, and never less', () => {
    expect(readings('floor')).toBe(even(0.5 * 0.9545));
    const number = (name: string): number => Number(/[\d.]+/.exec(readings(name))?.[0]);
    expect(number('sharedTen')).toBeGreaterThan(number('floor'));
    expect(number('sharedThree')).toBeGreaterThan(number('sharedTen'));
  });

  it('are what the mistakes cost', () => {
    expect(readings('twoAsMany')).toBe(
      // Student's t of one degree of freedom within 2: twice the arc tangent of 2 over pi.
      `${even((2 * scatterOf(2)) / Math.sqrt(2))} is claimed and holds ${Math.round((200 / Math.PI) * Math.atan(2))}${nb}%; ${readings('wholeTwo')} would be right`,
    );
    const divided = (2 * Math.sqrt(scatterOf(10) ** 2 + 0.25 / 3)) / Math.sqrt(10);
    expect(readings('dividedAll')).toContain(`${even(divided)} is claimed`);
    expect(readings('oneOnly')).toContain(`26.84${nb}dBm`);
  });
});
