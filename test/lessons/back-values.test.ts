import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const minus = '\u2212';
const back = (name: string): string => textOfValue(`back.${name}`);
const lg = (ratio: number): number => 10 * Math.log10(ratio);
const percent = (share: number): string => `${(100 * share).toFixed(1)}${nb}%`;
const lost = (share: number): string => `${minus}${(-lg(share)).toFixed(2)}${nb}dB`;
const swrOf = (rho: number): number => (1 + rho) / (1 - rho);
const nominal = 10 ** -0.3;
const upper = 10 ** -0.15;
/** Loss of a mismatched line behind a tuner, the handbook's formula, as what is left. */
const left = (rho: number, lossDb: number): number => {
  const b = 10 ** (lossDb / 10);
  return (b * (1 - rho ** 2)) / (b ** 2 - rho ** 2);
};

describe('the numbers of the lesson on what comes back, each by hand', () => {
  it('are two standing waves as reflection, power and return loss', () => {
    expect([back('gentle'), back('there')]).toEqual(['1.5', '3.0']);
    expect([back('gentleReflection'), back('thereReflection')]).toEqual(['0.20', '0.50']);
    expect([back('gentleShare'), back('thereShare')]).toEqual([percent(0.04), percent(0.25)]);
    expect(back('gentleReturn')).toBe(`${(-lg(0.04)).toFixed(1)}${nb}dB`);
    expect(back('thereReturn')).toBe(`${(-lg(0.25)).toFixed(1)}${nb}dB`);
    expect(back('voltsCost')).toBe(`${percent(0.2)} for ${percent(0.04)}`);
  });

  it('are forward less reflected, and what a gentle mismatch costs', () => {
    const watts = (power: number): string => `${(1000 * power).toPrecision(3)}${nb}mW`;
    expect(back('forward')).toBe(watts(nominal));
    expect(back('reflected')).toBe(watts(0.04 * nominal));
    expect(back('net')).toBe(watts(0.96 * nominal));
    expect(back('gentleBelow')).toBe(`${(-lg(0.96)).toFixed(2)}${nb}dB`);
  });

  it('are what a tuner sends out again', () => {
    const rhoHere = 0.5 * 10 ** -0.01;
    const forward = nominal / (1 - rhoHere ** 2);
    expect(back('tunedBack')).toBe(`${(1000 * forward * rhoHere ** 2).toFixed(0)}${nb}mW`);
    expect(back('tunedReaches')).toBe(
      `${(1000 * nominal * left(0.5, 0.1)).toFixed(0)}${nb}mW in the antenna`,
    );
    expect(back('lostCost')).toBe(`${lost(0.75)} for ${lost(left(0.5, 0.1))}`);
  });

  it('are a bad antenna behind three decibels of line', () => {
    const a = 10 ** -0.3;
    expect(back('hidden')).toBe(swrOf(0.5 * a).toFixed(2));
    const taken = nominal * a * 0.75;
    expect(back('hiddenTaken')).toBe(
      `${(1000 * taken).toFixed(0)}${nb}mW of ${(1000 * nominal).toFixed(0)}${nb}mW`,
    );
    expect(back('hiddenCost')).toBe(
      `an SWR of ${back('hidden')} shown, 3.0 there, and ${lost(a * 0.75)} of power in the antenna`,
    );
  });

  it('are a match here or there', () => {
    expect(back('tunedLossy')).toBe(lost(left(0.5, 3)));
    expect(back('matchedLossy')).toBe(`${minus}3.00${nb}dB`);
    expect(back('lossyDiffers')).toBe(`${(-lg(left(0.5, 3)) - 3).toFixed(2)}${nb}dB`);
    expect(back('shortDiffers')).toBe(`${(-lg(left(0.5, 0.1)) - 0.1).toFixed(2)}${nb}dB`);
  });

  it('are a coupler that leaks: the reflection, more or less the leak', () => {
    const leak = 10 ** (-25 / 20);
    expect(back('directivity')).toBe(`25${nb}dB`);
    expect(back('gentleShown')).toBe(`${swrOf(0.2 - leak).toFixed(2)} to ${swrOf(0.2 + leak).toFixed(2)}`);
    expect(back('metersCost')).toBe(`${back('gentleShown')} of one antenna of 1.5`);
    const rho = (0.1 / 2.1) * 10 ** -0.01;
    expect(rho).toBeLessThan(leak);
    expect(back('bestShown')).toBe(`1.0 to ${swrOf(rho + leak).toFixed(2)}`);
    expect([back('leak'), back('bestBack')]).toEqual([percent(leak), percent(rho)]);
  });

  it('are the caution, at the upper limit of the specification', () => {
    const volts = (power: number, rho: number): string =>
      `${(Math.sqrt(power * 50) * (1 + rho)).toFixed(2)}${nb}V RMS`;
    const rhoHere = 0.5 * 10 ** -0.01;
    expect(back('upper')).toBe(`28.5${nb}dBm or ${(1000 * upper).toFixed(0)}${nb}mW`);
    expect(back('heat')).toBe(`${(1000 * upper).toFixed(0)}${nb}mW`);
    expect(back('matchedVolts')).toBe(volts(upper, 0));
    expect(back('upperVolts')).toBe(volts(upper, rhoHere));
    expect(back('tunedVolts')).toBe(volts(upper / (1 - rhoHere ** 2), rhoHere));
    expect(back('lineHeat')).toBe(`${(1000 * upper * (1 - left(0.5, 3))).toFixed(0)}${nb}mW`);
  });
});
