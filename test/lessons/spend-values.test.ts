import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const nb = '\u00a0';
const value = (name: string): string => textOfValue(`spend.${name}`);
/** Variances by hand: standards, meter, mismatch, pad, coax, four readings. */
const part = {
  standards: 0.001,
  meter: 0.25 ** 2 / 3,
  mismatch: 0.16 ** 2 / 2,
  pad: 0.25 / 3,
  coax: 0.05 ** 2 / 3,
  readings: 0.15 ** 2 / 4,
};
const all = Object.values(part).reduce((a, b) => a + b);
const band = (variance: number): string => `±${(2 * Math.sqrt(variance)).toFixed(2)}${nb}dB`;
const percent = (share: number): string => `${(100 * share).toFixed(0)}${nb}%`;
const measured = all - part.pad + 0.1 ** 2 / 3;

describe('the numbers of the lesson on where to spend, each by hand', () => {
  it('are U now, and what each link would leave', () => {
    expect(value('band')).toBe(band(all));
    expect(value('padPerfect')).toBe(band(all - part.pad));
    expect(value('padHalved')).toBe(band(all - 0.75 * part.pad));
    expect(value('meterPerfect')).toBe(band(all - part.meter));
    expect(value('coaxPerfect')).toBe(band(all - part.coax));
    expect(value('padMeasured')).toBe(band(measured));
  });

  it('are shares of the variance', () => {
    expect(value('padShare')).toBe(percent(part.pad / all));
    expect(value('coaxShare')).toBe(percent(part.coax / all));
    expect(value('afterPad')).toBe(percent(part.meter / measured));
  });

  it('are the room to the limit, and the pad that fits into it', () => {
    expect(value('needed')).toBe(`±0.60${nb}dB`);
    expect(value('closerNeeded')).toBe(`±0.20${nb}dB`);
    const pad = Math.sqrt(3 * (0.3 ** 2 - (all - part.pad)));
    expect(value('padEnough')).toBe(`±${(Math.floor(100 * pad) / 100).toFixed(2)}${nb}dB`);
  });

  it('are readings: one, thirty, endless, and how many pay', () => {
    const rest = all - part.readings;
    expect(value('oneReading')).toBe(band(rest + 0.15 ** 2));
    expect(value('thirtyReadings')).toBe(band(rest + 0.15 ** 2 / 30));
    expect(value('endlessReadings')).toBe(band(rest));
    const pays = (others: number): string => String(Math.ceil(0.15 ** 2 / others / (1.05 ** 2 - 1)));
    expect(value('worth')).toBe(pays(rest));
    expect(value('worthAfter')).toBe(pays(measured - part.readings));
  });

  it('are what the mistakes cost', () => {
    const rest = all - part.readings;
    expect(value('dividedAll')).toBe(
      `${band((rest + 0.15 ** 2) / 30)} claimed after thirty readings, where ${value('thirtyReadings')} is due`,
    );
    expect(value('meterFirst')).toContain(value('meterPerfect'));
    expect(value('coaxFirst')).toBe(`${value('band')} becomes ${value('coaxPerfect')}`);
  });

  it('are the heat in the pad at the upper limit, the pad taking half a decibel more', () => {
    expect(value('padHeat')).toBe(`${((1 - 10 ** -2.05) * 10 ** 2.85).toFixed(0)}${nb}mW`);
  });
});
