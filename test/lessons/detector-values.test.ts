import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const minus = '\u2212';
const detector = (name: string): string => textOfValue(`detector.${name}`);
const lg20 = (ratio: number): number => 20 * Math.log10(ratio);
const power = (detected: number): number => (detected + 0.55) ** 2 / (2 * 49.8);
const forgotten = (detected: number): string =>
  `${minus}${lg20((detected + 0.55) / detected).toFixed(2)}${nb}dB`;
/** What a change of volts by so many percent does, either way. */
const either = (share: number): string => {
  const [up, down] = [lg20(1 + share).toFixed(2), (-lg20(1 - share)).toFixed(2)];
  return up === down ? `±${up}${nb}dB` : `+${up}/${minus}${down}${nb}dB`;
};
/** Twice the root of squares of limits over root three: voltmeter, drop, harmonics, load. */
const band = (
  detected: number,
  harmonics: number,
  drop = { volts: 0.55, known: 0.1 },
  ofHarmonics: 2 | 3 = 3,
): string => {
  const peak = detected + drop.volts;
  const limits = [
    ((20 / Math.LN10) * (0.005 * detected + 0.02)) / peak,
    ((20 / Math.LN10) * drop.known) / peak,
    -lg20(1 - 10 ** (harmonics / 20)),
    (10 / Math.LN10) * 0.01,
  ];
  const squares = limits.map((limit, i) => limit ** 2 / (i === 2 ? ofHarmonics : 3));
  const u = 2 * Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
  return `±${u.toFixed(u < 1 ? 2 : 1)}${nb}dB`;
};

describe('the numbers of the lesson on the peak detector, each by hand', () => {
  it('are volts, drop, peak and the power that they make', () => {
    expect(detector('load')).toBe(`49.8${nb}Ω`);
    expect(detector('read')).toBe(`6.53${nb}V`);
    expect(detector('drop')).toBe(`0.55${nb}V`);
    expect(detector('peak')).toBe(`${(6.53 + 0.55).toFixed(2)}${nb}V`);
    expect(detector('watts')).toBe(`${(1000 * power(6.53)).toFixed(0)}${nb}mW`);
    expect(detector('level')).toBe(
      `${(10 * Math.log10(1000 * power(6.53))).toFixed(2)}${nb}dBm ${band(6.53, -30)}`,
    );
  });

  it('are what a forgotten drop costs at two levels', () => {
    expect(detector('strongWatts')).toBe(`${power(16.77).toFixed(2)}${nb}W`);
    expect(detector('strongError')).toBe(forgotten(16.77));
    expect(detector('weakWatts')).toBe(`${(1000 * power(1.85)).toFixed(1)}${nb}mW`);
    expect(detector('weakError')).toBe(forgotten(1.85));
    expect(detector('forgottenCost')).toBe(
      `${forgotten(1.85)} at ${detector('weakWatts')}, ${forgotten(6.53)} at ${detector('watts')}`,
    );
    expect(detector('textbookCost')).toBe(
      `+${lg20((1.85 + 0.7) / (1.85 + 0.55)).toFixed(2)}${nb}dB at ${detector('weakWatts')}`,
    );
  });

  it('are a drop not known to a tenth of a volt, at 50 ohm', () => {
    expect(detector('known')).toBe(`±0.1${nb}V`);
    expect(detector('knownAtWatt')).toBe(either(0.1 / 10));
    expect(detector('knownAtTenth')).toBe(either(0.1 / Math.sqrt(10)));
    expect(detector('knownAtHundredth')).toBe(either(0.1));
  });

  it('are what a harmonic does to a peak, to the power, and to the band', () => {
    expect(detector('dirtyPeak')).toBe(either(0.1));
    expect(detector('dirtyPower')).toBe(`+${(10 * Math.log10(1.01)).toFixed(2)}${nb}dB`);
    expect(detector('dirtyBand')).toBe(band(6.53, -20));
    expect(detector('cleanerBand')).toBe(band(6.53, -30));
    expect(detector('cleanBand')).toBe(band(6.53, -40));
    expect(detector('dirtyCost')).toBe(`${band(6.53, -40)} claimed where ${band(6.53, -20)} is due`);
  });

  it('are a wider band where the level of the harmonics is known and only the phase is not: over root two', () => {
    const drop = { volts: 0.55, known: 0.1 };
    expect(detector('cleanerExactly')).toBe(band(6.53, -30, drop, 2));
    expect(detector('dirtyExactly')).toBe(band(6.53, -20, drop, 2));
    expect([detector('cleanerExactly'), detector('dirtyExactly')]).toEqual([`±0.43${nb}dB`, `±1.3${nb}dB`]);
  });

  it('are where the method ends, and what a curve gives below', () => {
    const least = Math.sqrt(2 * 49.8 * 0.05) - 0.55;
    expect(detector('least')).toBe(`50${nb}mW`);
    expect(detector('leastVolts')).toBe(`${least.toFixed(2)}${nb}V`);
    expect(detector('lowCost')).toBe(`no number: 0.60${nb}V are less than ${least.toFixed(2)}${nb}V`);
    const curve = 10 * Math.log10((1000 * (0.6 + 0.4) ** 2) / (2 * 49.8));
    expect(detector('curveLevel')).toBe(
      `${curve.toFixed(2)}${nb}dBm ${band(0.6, -30, { volts: 0.4, known: 0.03 })}`,
    );
    expect(detector('behindPad')).toBe(`${(10 * power(6.53)).toFixed(2)}${nb}mW`);
  });

  it('are a resistor of 4.7 instead of 4.14 million ohms before ten', () => {
    const shown = (10 / 14.7) * Math.SQRT2;
    expect(detector('resistor')).toBe(`${minus}${(-lg20(shown)).toFixed(2)}${nb}dB`);
    expect(detector('exactResistor')).toMatch(/^4\D?142\u00a0kΩ$/);
    expect(detector('resistorVolts')).toBe(`${minus}${(100 * (1 - shown)).toFixed(1)}${nb}%`);
    expect(detector('resistorPower')).toBe(`${minus}${(100 * (1 - shown ** 2)).toFixed(1)}${nb}%`);
  });

  it('are the caution, at the upper limit of the specification', () => {
    const upper = 10 ** ((28.5 - 30) / 10);
    expect(detector('upper')).toBe(`28.5${nb}dBm or ${(1000 * upper).toFixed(0)}${nb}mW`);
    expect(detector('heat')).toBe(`${(1000 * upper).toFixed(0)}${nb}mW`);
    expect(detector('upperVolts')).toBe(`${Math.sqrt(upper * 49.8).toFixed(2)}${nb}V RMS`);
    expect(detector('reverse')).toBe(`${(2 * Math.sqrt(2 * upper * 49.8)).toFixed(1)}${nb}V`);
  });
});
