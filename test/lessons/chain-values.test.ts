import { describe, expect, it } from 'vitest';
import { textOfValue } from '../../src/lessons/values.ts';

const value = (name: string): string => textOfValue(`chain.${name}`);
const nb = '\u00a0';

/** Standard uncertainties of the club's chain by hand: U/2 of certificates, a/sqrt 3 of limits, a/sqrt 2 U-shaped (GUM 4.3). */
const U = {
  national: 0.02 / 2,
  laboratory: 0.06 / 2,
  meter: 0.25 / Math.sqrt(3),
  mismatch: 0.16 / Math.SQRT2,
  pad: 0.5 / Math.sqrt(3),
  coax: 0.05 / Math.sqrt(3),
};
const expanded = (parts: Partial<typeof U>): number => 2 * Math.hypot(...Object.values(parts));
const milliwatts = (levelDbm: number): number => 10 ** (levelDbm / 10);

describe('the numbers of the lesson on the chain, each by hand', () => {
  it('are the level and the bands on its way down', () => {
    const { national, laboratory, meter } = U;
    expect(value('level')).toBe(`27.1${nb}dBm`); // 7.0 dBm + 20.0 dB + 0.1 dB
    expect(value('nationalBand')).toBe(`±${expanded({ national }).toFixed(3)}${nb}dB`);
    expect(value('laboratoryBand')).toBe(`±${expanded({ national, laboratory }).toFixed(3)}${nb}dB`);
    expect(value('laboratoryAdds')).toBe(`±0.060${nb}dB`);
    expect(value('meterBand')).toBe(`±${expanded({ national, laboratory, meter }).toFixed(2)}${nb}dB`);
    expect(value('socketBand')).toBe(`±${expanded(U).toFixed(2)}${nb}dB`);
  });

  it('are the worst case, the sum of what has limits', () => {
    // Certificates state no limits: national standard and laboratory are left out, and the end marks open.
    const sum = 0.25 + 0.16 + 0.5 + 0.05;
    expect(value('worstCase')).toBe(`±${sum.toFixed(2)}${nb}dB`);
  });

  it('are the watts, farther up than down', () => {
    const half = expanded(U);
    const [low, middle, high] = [27.1 - half, 27.1, 27.1 + half].map(milliwatts);
    expect(value('watts')).toBe(`${middle?.toFixed(0)}${nb}mW, ${low?.toFixed(0)} to ${high?.toFixed(0)}`);
    expect(value('wattsUp')).toBe(`${((high ?? 0) - (middle ?? 0)).toFixed(0)}${nb}mW`);
    expect(value('wattsDown')).toBe(`${((middle ?? 0) - (low ?? 0)).toFixed(0)}${nb}mW`);
  });

  it('are the part that decides, and what another one would be worth', () => {
    expect(value('dominant')).toBe('20 dB pad');
    expect(value('dominantShare')).toBe(`${((100 * U.pad ** 2) / (expanded(U) / 2) ** 2).toFixed(0)}${nb}%`);
    expect(value('padMeasured')).toBe(`±${expanded({ ...U, pad: 0.1 / Math.sqrt(3) }).toFixed(2)}${nb}dB`);
    expect(value('nationalPerfect')).toBe(`±${expanded({ ...U, national: 0 }).toFixed(2)}${nb}dB`);
    expect(value('nationalPerfect'), 'no difference that anyone could see').toBe(value('socketBand'));
  });

  it('are what the classic mistakes cost: a band that is claimed beside the one that is due', () => {
    const due = `±${expanded(U).toFixed(2)}${nb}dB`;
    expect(value('certain')).toBe(`no band at all claimed where ${due} is due`);
    expect(value('padForgotten')).toBe(
      `±${expanded({ ...U, pad: 0 }).toFixed(2)}${nb}dB claimed where ${due} is due`,
    );
    const perfect = `±${expanded({ ...U, national: 0, laboratory: 0 }).toFixed(2)}${nb}dB`;
    expect(value('perfectAbove')).toBe(`${due} would become ${perfect}`);
  });

  it('are volts across 50 ohms: the root of power times resistance', () => {
    expect(value('nominalVolts')).toBe(`${Math.sqrt((milliwatts(27) / 1000) * 50).toFixed(2)}${nb}V RMS`);
    expect(value('upperVolts')).toBe(`${Math.sqrt((milliwatts(28.5) / 1000) * 50).toFixed(2)}${nb}V RMS`);
  });

  it('are the heat in the pad: all but a hundredth at the upper limit', () => {
    expect(value('padHeat')).toBe(`${((1 - 10 ** -2.05) * milliwatts(28.5)).toFixed(0)}${nb}mW`);
  });

  it('are a band by the whole distribution a little narrower than the strip', () => {
    const width = (text: string): number => Number(/[\d.]+/.exec(text)?.[0]);
    expect(width(value('wholeBand'))).toBeLessThan(width(value('socketBand')));
    expect(width(value('wholeBand'))).toBeGreaterThan(0.9 * width(value('socketBand')));
  });
});
