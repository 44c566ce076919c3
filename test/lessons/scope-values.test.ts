import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const scope = (name: string): string => textOfValue(`scope.${name}`);
const lg = (ratio: number): number => 10 * Math.log10(ratio);
/** Half of what a percentage of volts spans in dB. */
const volts = (percent: number): number => 10 * Math.log10((1 + percent / 100) / (1 - percent / 100));
/** Twice the root of the sum of squares of limits, each over root three (GUM 4.3.7, 5.1). */
const twice = (...limits: readonly number[]): number =>
  2 * Math.sqrt(limits.reduce((sum, limit) => sum + limit ** 2 / 3, 0));
const together = 1 / Math.sqrt(1 / 100 ** 2 + 1 / 150 ** 2);
/** The parts that stay as they are, in dB: ripple, harmonics, a hundredth of the load, half of what the probe may take. */
const rest = [0.1, 0.09, lg(1.01), 0.025];
const eye = (screen: number): number => volts((100 * screen) / 80 / 14.2);
const band = (halfWidth: number): string => `±${halfWidth.toFixed(2)}${nb}dB`;

describe('the numbers of the lesson on the oscilloscope, each by hand', () => {
  it('are trace, load and the power between them', () => {
    expect(scope('read')).toBe(`14.2${nb}Vpp`);
    expect(scope('load')).toBe(`49.8${nb}Ω`);
    const level = lg((1000 * 14.2 ** 2) / (8 * 49.8)) + 0.025;
    // shapes in percent have a mean in dB that lies a hair off the middle
    expect(Math.abs(Number.parseFloat(scope('level')) - level)).toBeLessThan(0.02);
    expect(scope('level')).toContain(band(twice(volts(3), eye(16), ...rest)));
    expect(scope('watts')).toMatch(/^50[89]\u00a0mW, 46\d to 55\d$/);
  });

  it('are what a third harmonic 40 dB down does to the crest, as the table rounds it', () => {
    expect(scope('harmonics')).toBe(band(20 * Math.log10(1 + 10 ** (-40 / 20))));
  });

  it('are the worst case: the sum of all limits, up and down', () => {
    const rollOff = lg(1 + (3.58 / together) ** 2);
    const load = { up: -lg(0.99), down: lg(1.01) };
    const sum = (sign: 1 | -1, ofLoad: number): number =>
      Math.abs(20 * Math.log10(1 + sign * 0.03)) +
      Math.abs(20 * Math.log10(1 + (sign * 0.2) / 14.2)) +
      0.1 +
      0.09 +
      ofLoad +
      (0.05 + rollOff) / 2;
    const [up = 0, down = 0] =
      scope('worst')
        .match(/[\d.]+/g)
        ?.map(Number) ?? [];
    // about an estimate that lies a hair off the middle
    expect(Math.abs(up - sum(1, load.up))).toBeLessThan(0.01);
    expect(Math.abs(down - sum(-1, load.down))).toBeLessThan(0.01);
  });

  it('are a verdict: the whole band within the specification', () => {
    expect(scope('specification')).toBe(`25.5 to 28.5${nb}dBm`);
    expect(scope('verdict')).toBe('inside');
  });

  it('are the gain as decibels, as power, and as the share that it has', () => {
    expect(scope('gainDb')).toMatch(/^(±0\.26|\+0\.26\/−0\.26)\u00a0dB$/);
    expect(scope('gainPower')).toBe(`+6.1/−5.9${nb}%`);
    const u = (...limits: readonly number[]): number => twice(...limits) ** 2;
    const share = u(volts(3)) / u(volts(3), eye(16), ...rest);
    expect(Math.abs(Number.parseFloat(scope('gainShare')) - 100 * share)).toBeLessThan(1.5);
    expect(scope('left')).toBe(band(twice(eye(16), ...rest)));
    expect(scope('faster')).toBe(band(twice(volts(3), eye(16), ...rest)));
    expect(scope('fastCost')).toBe(`${scope('faster')} is due, whatever its bandwidth`);
  });

  it('are a percentage of full scale as volts of the whole screen', () => {
    expect(scope('fullScalePercent')).toBe(`±${((3 * 40) / 14.2).toFixed(1)}${nb}%`);
    expect(scope('fineBand')).toBe(band(twice(volts((3 * 16) / 14.2), eye(16), ...rest)));
    const due = Number(/±([\d.]+)/.exec(scope('coarseBand'))?.[1]);
    expect(Math.abs(due - twice(volts((3 * 40) / 14.2), eye(40), ...rest))).toBeLessThan(0.03);
    expect(scope('fullScaleCost')).toMatch(/^±0\.49\u00a0dB claimed where ±0\.93\u00a0dB is due$/);
  });

  it('are the load, which counts once and the other way', () => {
    expect(scope('loadDb')).toBe(band(lg(1.01)));
    expect(scope('markedDb')).toBe(`+${(-lg(0.95)).toFixed(2)}/−${lg(1.05).toFixed(2)}${nb}dB`);
    expect(scope('probe')).toBe(`0 to 0.05${nb}dB`);
  });

  it('are bandwidths: of both together, three tenths of it, and shares of it', () => {
    expect(scope('together')).toBe(`${together.toFixed(1)}${nb}MHz`);
    expect(scope('edge')).toBe(`${(0.3 * together).toFixed(1)}${nb}MHz`);
    expect(scope('largestShare')).toBe('0.30');
    expect(scope('shareAt14')).toBe((14 / together).toFixed(2));
    expect(scope('rollOffAt14')).toBe(`${lg(1 + (14 / together) ** 2).toFixed(2)}${nb}dB`);
  });

  it('are two guesses above the bandwidth that differ by more than the whole tolerance, and hardly at the edge', () => {
    const [pole, bell] = [lg(1 + (145 / together) ** 2), lg(2) * (145 / together) ** 2];
    expect(scope('sisterShare')).toBe((145 / together).toFixed(2));
    expect(scope('sisterPole')).toBe(`${pole.toFixed(2)}${nb}dB`);
    expect(scope('sisterBell')).toBe(`${bell.toFixed(2)}${nb}dB`);
    expect(bell - pole).toBeGreaterThan(3);
    expect(scope('sisterCost')).toBe(
      `+${scope('sisterPole')} by one guess, +${scope('sisterBell')} by another`,
    );
    expect(scope('edgeApart')).toBe(`${(lg(1.09) - lg(2) * 0.09).toFixed(2)}${nb}dB`);
  });

  it('are what a wrong end of the line and a wrong probe cost', () => {
    const slow = 1 / Math.sqrt(1 / 100 ** 2 + 1 / 6 ** 2);
    expect(scope('probeCost')).toBe(
      `no number: 3.58${nb}MHz is ${(3.58 / slow).toFixed(2)} of the bandwidth that is left`,
    );
    expect(scope('openCost')).toContain(`+${(20 * Math.log10(2)).toFixed(2)}${nb}dB`);
    expect(scope('twoCost')).toContain(`${(1 / (1 / 49.8 + 1 / 50)).toFixed(1)}${nb}Ω`);
  });

  it('are the caution, at the upper limit of the specification and the least that the pad takes', () => {
    const power = 10 ** ((28.5 - 30) / 10);
    expect(scope('upper')).toBe(`28.5${nb}dBm or ${(1000 * power).toFixed(0)}${nb}mW`);
    expect(scope('heat')).toBe(`${(1000 * power).toFixed(0)}${nb}mW`);
    expect(scope('upperVolts')).toBe(`${Math.sqrt(power * 50).toFixed(2)}${nb}V RMS`);
    expect(Number.parseFloat(scope('upperVolts'))).toBeGreaterThan(5);
    expect(scope('loadVolts')).toBe(`${Math.sqrt(power * 49.8).toFixed(2)}${nb}V RMS`);
    expect(scope('upperPeak')).toBe(`${Math.sqrt(2 * power * 49.8).toFixed(1)}${nb}V`);
    expect(scope('padHeat')).toBe(`${(1000 * power * (1 - 10 ** -2.05)).toFixed(0)}${nb}mW`);
    expect(scope('padLevel')).toBe(`9.0${nb}dBm`);
    expect(scope('padVolts')).toBe(`${Math.sqrt(10 ** ((9 - 30) / 10) * 50).toFixed(2)}${nb}V RMS`);
  });
});
