import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const tries = (name: string): string => textOfValue(`tries.${name}`);
const numbers = (text: string): readonly number[] =>
  [...text.replaceAll('\u2212', '-').matchAll(/-?\d+(?:\.\d+)?/g)].map(([number]) => Number(number));
const nominal = (1000 * 4.9 ** 2) / 50;
const near = (text: string, ...wished: readonly (readonly [number, number])[]): void => {
  const found = numbers(text);
  wished.forEach(([value, within], index) => {
    expect(Math.abs((found[index] ?? Number.NaN) - value), text).toBeLessThanOrEqual(within);
  });
};

describe('the numbers of the lesson on trials, by hand or against print', () => {
  it('are volts, a load, watts, and propagation along the slopes', () => {
    expect(tries('read')).toBe(`4.9${nb}V RMS`);
    expect(tries('load')).toBe(`50${nb}Ω`);
    expect(tries('nominal')).toBe(`${nominal.toFixed(1)}${nb}mW`);
    const u = nominal * Math.sqrt((0.06 ** 2 + 0.05 ** 2) / 3);
    near(tries('uncertainty'), [u, 0.2]);
    near(tries('propagated'), [nominal - 1.959964 * u, 0.06], [nominal + 1.959964 * u, 0.06]);
  });

  it('are trials within what the limits allow, steadier the more there are', () => {
    for (const name of ['interval', 'fewOne', 'fewTwo']) {
      const [lower = 0, upper = 0] = numbers(tries(name));
      expect(lower).toBeGreaterThan((nominal * 0.97 ** 2) / 1.05);
      expect(upper).toBeLessThan((nominal * 1.03 ** 2) / 0.95);
    }
    expect(tries('fewOne')).not.toBe(tries('fewTwo'));
    expect(Number(tries('settledAfter').replaceAll(nb, ''))).toBeGreaterThan(10_000);
    expect(tries('settledTo')).toBe(`0.5${nb}mW`);
  });

  it('are a poor voltmeter: the mean of the squares, and a bell that leans the wrong way', () => {
    const mean = nominal * (1 + 0.04 / 3) * (Math.log(1.05 / 0.95) / 0.1);
    near(tries('wideMean'), [mean, 2]);
    const u = nominal * Math.sqrt((0.4 ** 2 + 0.05 ** 2) / 3);
    near(tries('widePropagated'), [nominal - 1.959964 * u, 1], [nominal + 1.959964 * u, 1]);
    expect(numbers(tries('wideInterval'))[0]).toBeGreaterThan((nominal * 0.8 ** 2) / 1.05);
  });

  it('are reflections: the worst case as an estimate without doubt, and nearly all between the limits', () => {
    const upper = -20 * Math.log10(0.9);
    expect(tries('phaseClaimed')).toBe(`${upper.toFixed(2)}${nb}dB`);
    expect(tries('phaseU')).toBe(`0.00${nb}dB`);
    near(tries('phaseInterval'), [-20 * Math.log10(1.1), 0.01], [upper, 0.01]);
  });

  it('are the comparison loss of JCGM 101, Tables 7 and 8', () => {
    near(tries('lossMean'), [50, 1]);
    near(tries('lossInterval'), [0, 0.2], [150, 2]);
    expect(tries('lossFirst')).toBe(`0${nb}ppm`);
    near(tries('lossSecond'), [-98, 0.5], [98, 0.5]);
  });

  it('are the weight of JCGM 101, Table 6, and the gauge block of Table 11', () => {
    near(tries('weightFirst'), [0.0539, 5e-5]);
    near(tries('weightTried'), [0.0754, 4e-4]);
    near(tries('weightMissed'), [100 * (1 - 0.0539 / 0.0754), 1]);
    near(tries('gaugePropagated'), [32, 0.5]);
    near(tries('gaugeTried'), [36, 0.5]);
  });

  it('are what the mistakes cost', () => {
    expect(tries('slopeOnly')).toContain(tries('phaseInterval'));
    expect(tries('belowNothing')).toContain(tries('lossSecond'));
    expect(tries('fewTries')).toBe(
      `${tries('fewOne')} by one hundred, ${tries('fewTwo')} by the next; a hundred thousand say ${tries('interval')}`,
    );
  });
});
