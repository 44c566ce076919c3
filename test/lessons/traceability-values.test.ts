import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const rules = (name: string): string => textOfValue(`rules.${name}`);
const meter = (name: string): string => textOfValue(`meter.${name}`);

describe('the numbers of the lesson on comparing, each by hand', () => {
  it('are the misfit: a tenth of a percent of the length', () => {
    expect(rules('misfitShort')).toBe(`0.3${nb}mm`);
    expect(rules('misfitLong')).toBe(`1.5${nb}mm`);
    expect(rules('longest')).toBe(`1000${nb}mm`);
  });

  it('are the errors in a metre, with their signs', () => {
    expect(rules('firstPerMetre')).toBe(`+0.4${nb}mm`);
    expect(rules('secondPerMetre')).toBe(`\u22120.6${nb}mm`);
  });

  it('are claims at 1500 mm, times 2', () => {
    const twice = (...variances: readonly number[]): number =>
      2 * Math.sqrt(variances.reduce((a, b) => a + b));
    expect(rules('claim')).toBe(`±${twice(2 / 12).toFixed(2)}${nb}mm`);
    expect(rules('claimTenth')).toBe(`±${twice(0.02 / 12).toFixed(3)}${nb}mm`);
    expect(rules('claimPromise')).toBe(`±${twice(2 / 12, (2 * 1.2 ** 2) / 3).toFixed(1)}${nb}mm`);
    expect(rules('claimCompared')).toBe(`±${twice(0.02 / 12, 2 * 0.075 ** 2).toFixed(2)}${nb}mm`);
  });

  it('are the steel rule ten kelvin warmer: 11.5e-6 of a metre for each', () => {
    expect(rules('warmRule')).toBe(`${(1000 * 11.5e-6 * 10).toFixed(3)}${nb}mm`);
  });

  it('are what the mistakes cost', () => {
    expect(rules('finerMarks')).toBe(`${rules('claimTenth')} claimed, 1.5${nb}mm there`);
    expect(rules('bothLong')).toBe(`a misfit of 0.0${nb}mm, and every part 0.9${nb}mm too long`);
    expect(rules('promiseTaken')).toBe(
      `${rules('claimPromise')} to be allowed for where 1.5${nb}mm is there`,
    );
  });
});

describe('the numbers of the lesson on calibration, each by hand', () => {
  const byHand = (months: number): number =>
    2 * Math.sqrt(0.05 ** 2 + ((0.1 * months) / 12) ** 2 / 3 + 0.1 ** 2 / 12);
  const band = (months: number): string => `±${byHand(months).toFixed(2)}${nb}dB`;
  const percent = (db: number): string => `\u2212${(100 * (1 - 10 ** (-db / 10))).toFixed(1)}${nb}%`;

  it('are reading, correction and error: 0.36 dB less seven tenths of 0.16 dB', () => {
    expect(meter('shown')).toBe(`\u221213.0${nb}dBm`);
    expect(meter('correction')).toBe(`+0.25${nb}dB`);
    expect(meter('error')).toBe(`\u22120.25${nb}dB`);
    expect(meter('errorPower')).toBe(percent(0.248));
  });

  it('are the corrected level and its band half a year later', () => {
    expect(meter('corrected')).toBe(`\u2212${(13 - 0.248).toFixed(2)}${nb}dBm ${band(6)}`);
    expect(meter('bandNow')).toBe(band(6));
  });

  it('are bands that grow with the months', () => {
    expect([meter('bandFresh'), meter('bandYear'), meter('bandThreeYears')]).toEqual([
      band(0),
      band(12),
      band(36),
    ]);
  });

  it('are what the screw leaves: every error up by 0.05 dB', () => {
    expect(meter('errorHigh')).toBe(`+0.10${nb}dB`);
    expect(meter('adjustedHigh')).toBe(`+0.15${nb}dB`);
    expect(meter('adjustedNow')).toBe(`\u2212${(0.248 - 0.05).toFixed(2)}${nb}dB`);
    expect(meter('screw')).toBe(`+0.15${nb}dB where it was +0.10${nb}dB, and no band to go with it`);
  });

  it('are verdicts against 0.4 dB: all of the band within at six months, not all of it at 24', () => {
    expect(meter('reach')).toBe(`${(0.248 + byHand(6)).toFixed(2)}${nb}dB`);
    expect(0.248 + byHand(6)).toBeLessThan(0.4);
    expect(meter('verdictNow')).toBe('inside');
    expect(0.248 + byHand(24)).toBeGreaterThan(0.4);
    expect(meter('verdictLater')).toBe('can\u2019t tell');
  });

  it('are what a wasted certificate costs', () => {
    expect(meter('drawer')).toBe(`\u22120.36${nb}dB: ${percent(0.36)} of the power`);
    // 0.36 dB less U of half a year is still more than 0.2 dB.
    expect(0.36 - byHand(6)).toBeGreaterThan(0.2);
    expect(meter('calibratedOnly')).toBe(`outside a limit of ±0.2${nb}dB, with the certificate in hand`);
  });
});
